package piecewright.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import piecewright.ensemble.ActBands;
import piecewright.ensemble.Band;
import piecewright.ensemble.Fault;
import piecewright.ensemble.Figure;
import piecewright.ensemble.Help;
import piecewright.ensemble.Milestone;
import piecewright.ensemble.Sureness;
import piecewright.ensemble.TimeBand;
import piecewright.ensemble.Verdict;
import piecewright.remedy.Change;

/** Made-up bands of {@link PlanSamples#plan}. */
public final class SurenessSamples {
    private SurenessSamples() {}

    private static TimeBand hours(int early, int late) {
        return new TimeBand(
                PlanSamples.START.plusSeconds(3600L * early),
                PlanSamples.START.plusSeconds(1800L * (early + late)),
                PlanSamples.START.plusSeconds(3600L * late));
    }

    public static Sureness sureness() {
        ActBands soak = new ActBands(
                "steep-1.soak",
                1,
                hours(0, 0),
                new Band(6.1, 6.27, 6.4),
                new Band(0.42, 0.44, 0.46),
                new Band(14, 15.3, 17),
                Optional.empty());
        ActBands raise = new ActBands(
                "kiln.raise-2",
                0.83,
                hours(20, 30),
                new Band(4.41, 4.5, 4.622),
                new Band(0.11, 0.13, 0.14),
                new Band(36, 38, 40),
                Optional.of(new Band(0.651, 0.754, 0.86)));
        return new Sureness(
                200,
                List.of(soak, raise),
                Map.of(Milestone.CHIT, hours(30, 40), Milestone.BREAK, hours(100, 120)),
                Map.of(
                        Figure.COLOUR_EBC, new Band(2.1, 2.6, 3.4),
                        Figure.MALT_KG, new Band(3.9, 4, 4.1),
                        Figure.SCALE_MALT_KG, new Band(4, 4.1, 4.2),
                        Figure.END_MOISTURE_FRACTION, new Band(0.032, 0.036, 0.041)),
                new Verdict(0.86, 0.985, Optional.of(new Verdict.Weakest("kiln.raise-2", Fault.LATE, 0.12))),
                Optional.of(new Help.Arranged(new Change.ChilledWater(7), 0.93)));
    }
}
