package piecewright.truth;

import java.util.SplittableRandom;

/**
 * What the planner is not told: factors on the usual, drawn once a batch. Spreads are those the reference priors of the
 * craft give (drinking 0.30 less what a lot of one kind shares, growth 0.20, chitting 0.20, kiln air 0.35 unmeasured,
 * kernels 0.3, colour 80 % within 1.3, couch heat 0.35, box 0.40 or 0.10 tested); rests dry by 0 (covered) to 0.002 an hour.
 */
record Hidden(
        double drinks,
        double film,
        double husk,
        double chits,
        double grows,
        double respires,
        double bedLoss,
        double floorDries,
        double rawMoistureSds,
        double floaters,
        double leaches,
        double airFlow,
        double kernels,
        double colour,
        double roastColour,
        double couchColour,
        double couchHeat,
        double boxLossSds,
        double dryerSds,
        double ovenSds,
        double weatherK,
        double evenness,
        double restDriesPerHour) {
    static Hidden drawn(SplittableRandom random) {
        return new Hidden(
                factor(random, 0.25),
                factor(random, 0.25),
                factor(random, 0.20),
                factor(random, 0.18),
                factor(random, 0.18),
                factor(random, 0.25),
                factor(random, 0.20),
                factor(random, 0.35),
                normal(random),
                factor(random, 0.40),
                factor(random, 0.30),
                factor(random, 1),
                factor(random, 0.25),
                factor(random, 0.18),
                factor(random, 0.25),
                factor(random, 0.35),
                factor(random, 0.25),
                normal(random),
                normal(random),
                normal(random),
                normal(random),
                0.15 + 0.10 * random.nextDouble(),
                0.002 * random.nextDouble());
    }

    /** A draw from the normal distribution, cut at two and a half standard deviations. */
    static double normal(SplittableRandom random) {
        while (true) {
            double radius = Math.sqrt(-2 * Math.log(1 - random.nextDouble()));
            double drawn = radius * Math.cos(2 * Math.PI * random.nextDouble());
            if (Math.abs(drawn) <= 2.5) return drawn;
        }
    }

    private static double factor(SplittableRandom random, double sd) {
        return Math.exp(sd * normal(random));
    }
}
