package piecewright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import piecewright.assess.LotJudge;
import piecewright.grain.GrainLot;
import piecewright.grain.Treatment;
import piecewright.process.kiln.OvenLimit;
import piecewright.style.MaltStyle;
import piecewright.style.RoastSchedule;

/** What forbids a plan before any search: the lot itself. One method per rule. */
final class Screening {
    private Screening() {}

    static List<Obstacle> of(GrainLot lot, MaltStyle style) {
        List<Obstacle> obstacles = new ArrayList<>();
        treatedSeedIsNeverMalted(lot, obstacles);
        grainSuitsTheStyle(lot, style, obstacles);
        enoughCornsLive(lot, obstacles);
        noKitchenRoastsAsHotAsADrum(style, obstacles);
        return obstacles;
    }

    private static void treatedSeedIsNeverMalted(GrainLot lot, List<Obstacle> obstacles) {
        if (lot.safeTreatment() == Treatment.TREATED) obstacles.add(new Obstacle.TreatedSeed(lot.name()));
    }

    private static void grainSuitsTheStyle(GrainLot lot, MaltStyle style, List<Obstacle> obstacles) {
        if (!style.grains().contains(lot.kind())) {
            obstacles.add(new Obstacle.GrainNotForStyle(style.title(), lot.kind()));
        }
    }

    private static void noKitchenRoastsAsHotAsADrum(MaltStyle style, List<Obstacle> obstacles) {
        double hottestC = style.oven().roast().map(RoastSchedule::hottestC).orElse(0.0);
        if (hottestC > OvenLimit.CEILING_C) {
            obstacles.add(new Obstacle.RoastTooHot(style.title(), hottestC, OvenLimit.CEILING_C));
        }
    }

    private static void enoughCornsLive(GrainLot lot, List<Obstacle> obstacles) {
        OptionalDouble energy = lot.germinativeEnergyFraction();
        if (energy.isPresent() && energy.getAsDouble() < LotJudge.LEAST_FRACTION) {
            obstacles.add(new Obstacle.TooFewGrow(lot.name(), energy.getAsDouble(), LotJudge.LEAST_FRACTION));
        }
    }
}
