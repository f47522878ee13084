package piecewright.plan;

import piecewright.grain.GrainKind;
import piecewright.process.MetabolismParameters;
import piecewright.process.couch.CouchParameters;
import piecewright.process.germination.GrowthParameters;
import piecewright.process.kiln.KilnParameters;
import piecewright.process.steep.SteepParameters;
import piecewright.process.steep.SteepParameters.Warming;

/** Parameters of every stage, editable in one place. */
public record ModelParameters(
        SteepParameters steep,
        MetabolismParameters metabolism,
        GrowthParameters growth,
        CouchParameters couch,
        KilnParameters kiln) {
    public static ModelParameters defaults() {
        return new ModelParameters(
                SteepParameters.defaults(),
                MetabolismParameters.defaults(),
                GrowthParameters.defaults(),
                CouchParameters.defaults(),
                KilnParameters.defaults());
    }

    /** The same for a grain that lies denser or looser than barley. */
    ModelParameters forGrain(GrainKind grain) {
        return new ModelParameters(steep, metabolism, growth.withBulkRatio(GrainBulk.denserRatio(grain)), couch, kiln);
    }

    /** Steep parameters for a piece shared among equal vessels: each follows the air as fast as its own litres do. */
    SteepParameters steepIn(int vessels) {
        Warming warming = steep.warming();
        return new SteepParameters(
                steep.uptake(),
                steep.leaching(),
                new Warming(warming.bucketHoursPerL() / vessels, warming.insulatedRatio(), warming.spreadHours()));
    }
}
