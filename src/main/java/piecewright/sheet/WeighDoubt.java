package piecewright.sheet;

import piecewright.grain.LotMoisture;
import piecewright.house.Scale;

/**
 * How far the moisture that a weight means may be off. With a kitchen scale the first moisture and the dry matter lost
 * decide, not the scale: good to a point while wet, useless to tell 4 % from 6 % off the kiln.
 *
 * @param rawKg skimmed grain that went into the steep, kg
 */
record WeighDoubt(double rawKg, LotMoisture lot, Scale scale) {
    /** Judgement: estimates of practice; share of the dry matter lost so far, and its standard deviation. */
    private static final double[][] LOSS_AND_SD_FRACTION = {
        {0, 0.003}, {0.01, 0.005}, {0.05, 0.012}, {0.055, 0.015}, {0.06, 0.02}, {0.12, 0.03}
    };

    /**
     * Standard deviation of the moisture, share of the wet weight.
     *
     * @param lostFraction share of the first dry matter that is gone
     */
    double sdFraction(double moistureFraction, double lostFraction) {
        double dryKg = rawKg * (1 - lot.moisture().wetBasisFraction()) * (1 - lostFraction);
        double stepKg = scale.stepG() / 1000 / Math.sqrt(12);
        double weight = stepKg / (dryKg / (1 - moistureFraction));
        double first = stepKg / rawKg;
        double moisture = lot.sdFraction() / (1 - lot.moisture().wetBasisFraction());
        double loss = lossSdFraction(lostFraction) / (1 - lostFraction);
        return (1 - moistureFraction) * Math.sqrt(weight * weight + first * first + moisture * moisture + loss * loss);
    }

    private static double lossSdFraction(double lostFraction) {
        double[][] table = LOSS_AND_SD_FRACTION;
        for (int i = 1; i < table.length; i++) {
            if (lostFraction > table[i][0]) continue;
            double share = (lostFraction - table[i - 1][0]) / (table[i][0] - table[i - 1][0]);
            return table[i - 1][1] + Math.max(0, share) * (table[i][1] - table[i - 1][1]);
        }
        return table[table.length - 1][1];
    }
}
