package piecewright.plan;

import piecewright.grain.GrainKind;
import piecewright.grain.LotTraits;
import piecewright.house.KitTraits;
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

    /**
     * These parameters for one lot in one kit, with what earlier batches taught. Air flow and loss stand in the kit
     * itself, uptake and growth with the lot.
     */
    ModelParameters taughtBy(LotTraits lot, KitTraits kit, Outfit outfit) {
        double heat = metabolism.heatAt20WPerKg() * lot.respirationRatio().orElse(1);
        double drying = kit.floorDryingRatios().getOrDefault(outfit.growing().place(), 1.0);
        double colour = kit.colourRatios().getOrDefault(outfit.colours().name(), 1.0);
        double kernels = lot.kernelRatio().orElse(kiln.drying().kernelRatio());
        return new ModelParameters(
                steep,
                metabolism.withHeatAt20WPerKg(heat),
                growth.withWitherPerHourKPa(growth.witherPerHourKPa() * drying),
                couch,
                kiln.withDrying(kiln.drying().withKernelRatio(kernels))
                        .withColour(kiln.colour().withRateRatio(kiln.colour().rateRatio() * colour)));
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
