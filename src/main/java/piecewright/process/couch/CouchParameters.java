package piecewright.process.couch;

import java.util.Objects;

/** What may be moved about the hot couch. */
public record CouchParameters(Heat heat, Decay decay, Box box) {
    public CouchParameters {
        Objects.requireNonNull(heat);
        Objects.requireNonNull(decay);
        Objects.requireNonNull(box);
    }

    public static CouchParameters defaults() {
        return new CouchParameters(Heat.defaults(), Decay.defaults(), Box.defaults());
    }

    public CouchParameters withHeat(Heat changed) {
        return new CouchParameters(changed, decay, box);
    }

    public CouchParameters withDecay(Decay changed) {
        return new CouchParameters(heat, changed, box);
    }

    public CouchParameters withBox(Box changed) {
        return new CouchParameters(heat, decay, changed);
    }

    /**
     * Heat of the pile.
     *
     * @param at20WPerKg heat of dry matter at 20 °C and 40 % moisture, W/kg, 0 or more
     * @param q10Ratio factor per 10 K, above 0
     * @param cutC Th, temperature at which heat has fallen by half, °C
     * @param cutWidthK s, width of that fall, K, above 0
     * @param lotRatio h, multiplier of this lot, 0 or more
     */
    public record Heat(double at20WPerKg, double q10Ratio, double cutC, double cutWidthK, double lotRatio) {
        /** Judgement: fitted to two heating curves of one practice; not separable from the box's loss. */
        public static final double AT_20_W_PER_KG = 1.32;
        /** Judgement: the same fit. */
        public static final double Q10_RATIO = 2.30;
        /** Judgement: the same fit; well determined by the peak. */
        public static final double CUT_C = 50.9;
        /** Judgement: the same fit; not identified, kept fixed. */
        public static final double CUT_WIDTH_K = 1.0;

        public Heat {
            if (!(at20WPerKg >= 0 && q10Ratio > 0 && cutWidthK > 0 && lotRatio >= 0)) {
                throw new IllegalArgumentException("heat figures out of range: " + at20WPerKg + ", " + q10Ratio + ", "
                        + cutWidthK + ", " + lotRatio);
            }
        }

        public static Heat defaults() {
            return new Heat(AT_20_W_PER_KG, Q10_RATIO, CUT_C, CUT_WIDTH_K, 1);
        }

        public Heat withLotRatio(double changedRatio) {
            return new Heat(at20WPerKg, q10Ratio, cutC, cutWidthK, changedRatio);
        }

        public Heat withCutC(double changedC) {
            return new Heat(at20WPerKg, q10Ratio, changedC, cutWidthK, lotRatio);
        }
    }

    /**
     * How heat kills the source of heat.
     *
     * @param at50PerHour k50, share of the capacity lost per hour at 50 °C, 0 or more
     * @param decadeK z, kelvin for ten times that, above 0
     */
    public record Decay(double at50PerHour, double decadeK) {
        /** Judgement: fitted to two heating curves; half gone in 12 h. */
        public static final double AT_50_PER_HOUR = 0.057;
        /** Judgement: the same fit, weakly determined. */
        public static final double DECADE_K = 5.2;

        public Decay {
            if (!(at50PerHour >= 0 && decadeK > 0)) {
                throw new IllegalArgumentException("decay figures out of range: " + at50PerHour + ", " + decadeK);
            }
        }

        public static Decay defaults() {
            return new Decay(AT_50_PER_HOUR, DECADE_K);
        }
    }

    /**
     * The box around the pile.
     *
     * @param lossWPerK UA when 4.5 kg of barley lie in it, W/K, above 0
     * @param linerKJPerK heat content of liner and cloths, kJ/K, 0 or more
     * @param evaporationAt50W heat carried off as vapour at 50 °C, W, 0 or more
     */
    public record Box(double lossWPerK, double linerKJPerK, double evaporationAt50W) {
        /** Judgement: fitted together with the heat; a water test settles it. */
        public static final double LOSS_W_PER_K = 0.424;
        /** Judgement: liner and a few cloths. */
        public static final double LINER_KJ_PER_K = 3.0;
        /** Judgement: as much vapour as the oxygen's air carries off, uncertain by a factor of 3. */
        public static final double EVAPORATION_AT_50_W = 1.5;

        public Box {
            if (!(lossWPerK > 0 && linerKJPerK >= 0 && evaporationAt50W >= 0)) {
                throw new IllegalArgumentException(
                        "box figures out of range: " + lossWPerK + ", " + linerKJPerK + ", " + evaporationAt50W);
            }
        }

        public static Box defaults() {
            return new Box(LOSS_W_PER_K, LINER_KJ_PER_K, EVAPORATION_AT_50_W);
        }

        public Box withLossWPerK(double changedWPerK) {
            return new Box(changedWPerK, linerKJPerK, evaporationAt50W);
        }
    }
}
