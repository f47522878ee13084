package piecewright.process.steep;

import java.util.OptionalDouble;

/** How much later a lot chits that suffers from too much water. */
final class WaterSensitivity {
    /** Judgement: below this the dishes differ by chance or too little to matter. */
    private static final double SLIGHT_FRACTION = 0.10;
    /** Judgement: class limit, from memory. */
    private static final double SENSITIVE_FRACTION = 0.25;
    /** Judgement: class limit of very sensitive lots, from memory. */
    private static final double VERY_SENSITIVE_FRACTION = 0.45;
    /** Judgement: delay at 10 %, hours at 15 °C. */
    private static final double SLIGHT_DELAY_HOURS = 6;
    /** Judgement: delay at 25 %. */
    private static final double SENSITIVE_DELAY_HOURS = 12;
    /** Judgement: delay at 45 % and above. */
    private static final double VERY_SENSITIVE_DELAY_HOURS = 24;
    /** Judgement: usual hours to chit at 15 °C, which the delays are measured against. */
    private static final double CHIT_HOURS = 36;

    private WaterSensitivity() {}

    /** χ at first wetting, 0 or less; 0 when nothing was tested. */
    static double startChitRatio(OptionalDouble sensitivityFraction) {
        return sensitivityFraction.isEmpty() ? 0 : 0 - delayHours(sensitivityFraction.getAsDouble()) / CHIT_HOURS;
    }

    private static double delayHours(double sensitivityFraction) {
        if (sensitivityFraction < SLIGHT_FRACTION) return 0;
        if (sensitivityFraction <= SENSITIVE_FRACTION) {
            double share = (sensitivityFraction - SLIGHT_FRACTION) / (SENSITIVE_FRACTION - SLIGHT_FRACTION);
            return SLIGHT_DELAY_HOURS + share * (SENSITIVE_DELAY_HOURS - SLIGHT_DELAY_HOURS);
        }
        double share = (Math.min(sensitivityFraction, VERY_SENSITIVE_FRACTION) - SENSITIVE_FRACTION)
                / (VERY_SENSITIVE_FRACTION - SENSITIVE_FRACTION);
        return SENSITIVE_DELAY_HOURS + share * (VERY_SENSITIVE_DELAY_HOURS - SENSITIVE_DELAY_HOURS);
    }
}
