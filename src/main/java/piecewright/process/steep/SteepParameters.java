package piecewright.process.steep;

import java.util.Objects;

/** What may be moved about the steep; lots override saturation, burst and rate by what they taught. */
public record SteepParameters(Uptake uptake, Leaching leaching, Warming warming) {
    public SteepParameters {
        Objects.requireNonNull(uptake);
        Objects.requireNonNull(leaching);
        Objects.requireNonNull(warming);
    }

    public static SteepParameters defaults() {
        return new SteepParameters(Uptake.defaults(), Leaching.defaults(), Warming.defaults());
    }

    public SteepParameters withUptake(Uptake changed) {
        return new SteepParameters(changed, leaching, warming);
    }

    public SteepParameters withLeaching(Leaching changed) {
        return new SteepParameters(uptake, changed, warming);
    }

    /**
     * How corns drink; ratios are kg of water per kg of dry matter as steeped.
     *
     * @param saturationRatio Xe, all the corn can hold, above burstRatio
     * @param burstRatio B, what husk and embryo take up at once, 0 or more
     * @param filmRatio F, film that stays on drained grain at a weigh-in, 0 or more; burst and film together above 0
     * @param ratePerHour k15, rate at 15 °C for a lot multiplier of 1, per (kg/kg) and hour, above 0
     * @param activationJPerMol how the rate depends on temperature, J/mol, 0 or more
     * @param chitGainRatio g, how much faster chitted grain drinks, 0 or more
     * @param evaporationPerHour e, water lost in an uncovered air rest, kg/kg per hour, 0 or more
     */
    public record Uptake(
            double saturationRatio,
            double burstRatio,
            double filmRatio,
            double ratePerHour,
            double activationJPerMol,
            double chitGainRatio,
            double evaporationPerHour) {
        /** Judgement: hand compromise; 1.05 to 1.20 fit a remembered table alike, published weighings prefer less. */
        public static final double SATURATION_RATIO = 1.10;
        /** Judgement: hand compromise between the same two; wheat takes 0.045 at once (Becker 1960, abstract). */
        public static final double BURST_RATIO = 0.13;
        /** Judgement: 0.03 to 0.08 with the manner of draining. */
        public static final double FILM_RATIO = 0.05;
        /** Judgement: fitted to a remembered table of continuous immersion, 9 to 21 °C. */
        public static final double RATE_PER_HOUR = 0.0363;
        /** Source: Mok, Lee, Nam and Min 1983 (abstract): 11.6 kcal/mol for whole barley, at 20 to 60 °C. */
        public static final double ACTIVATION_J_PER_MOL = 48500;
        /** Judgement: picked after seeing one practice lot. */
        public static final double CHIT_GAIN_RATIO = 0.5;
        /** Judgement: covered grain loses nothing worth counting. */
        public static final double EVAPORATION_PER_HOUR = 0;

        public Uptake {
            if (!(saturationRatio > burstRatio)) {
                throw new IllegalArgumentException("saturationRatio must be above burstRatio: " + saturationRatio);
            }
            notNegative("burstRatio", burstRatio);
            notNegative("filmRatio", filmRatio);
            notNegative("activationJPerMol", activationJPerMol);
            notNegative("chitGainRatio", chitGainRatio);
            notNegative("evaporationPerHour", evaporationPerHour);
            if (!(burstRatio + filmRatio > 0)) throw new IllegalArgumentException("burst and film must be above 0");
            if (!(ratePerHour > 0)) throw new IllegalArgumentException("ratePerHour must be above 0: " + ratePerHour);
        }

        public static Uptake defaults() {
            return new Uptake(
                    SATURATION_RATIO,
                    BURST_RATIO,
                    FILM_RATIO,
                    RATE_PER_HOUR,
                    ACTIVATION_J_PER_MOL,
                    CHIT_GAIN_RATIO,
                    EVAPORATION_PER_HOUR);
        }

        public Uptake withSaturationRatio(double changedRatio) {
            return new Uptake(
                    changedRatio,
                    burstRatio,
                    filmRatio,
                    ratePerHour,
                    activationJPerMol,
                    chitGainRatio,
                    evaporationPerHour);
        }

        public Uptake withBurstRatio(double changedRatio) {
            return new Uptake(
                    saturationRatio,
                    changedRatio,
                    filmRatio,
                    ratePerHour,
                    activationJPerMol,
                    chitGainRatio,
                    evaporationPerHour);
        }

        public Uptake withChitGainRatio(double changedRatio) {
            return new Uptake(
                    saturationRatio,
                    burstRatio,
                    filmRatio,
                    ratePerHour,
                    activationJPerMol,
                    changedRatio,
                    evaporationPerHour);
        }

        public Uptake withEvaporationPerHour(double changedPerHour) {
            return new Uptake(
                    saturationRatio,
                    burstRatio,
                    filmRatio,
                    ratePerHour,
                    activationJPerMol,
                    chitGainRatio,
                    changedPerHour);
        }
    }

    /**
     * What the steep water washes out.
     *
     * @param soakFraction share of dry matter that long soaking takes, [0, 0.1]
     * @param soakHours hours, as if at 15 °C, after which 63 % of that is gone, above 0
     * @param changeFraction share of dry matter gone with each water, [0, 0.01]
     */
    public record Leaching(double soakFraction, double soakHours, double changeFraction) {
        /** Judgement: rule calibrated to remembered steep losses of 0.5 to 1.5 %. */
        public static final double SOAK_FRACTION = 0.009;
        /** Judgement: the same rule. */
        public static final double SOAK_HOURS = 12;
        /** Judgement: the same rule. */
        public static final double CHANGE_FRACTION = 0.001;

        public Leaching {
            if (!(soakFraction >= 0 && soakFraction <= 0.1)) {
                throw new IllegalArgumentException("soakFraction must be in [0, 0.1]: " + soakFraction);
            }
            if (!(soakHours > 0)) throw new IllegalArgumentException("soakHours must be above 0: " + soakHours);
            if (!(changeFraction >= 0 && changeFraction <= 0.01)) {
                throw new IllegalArgumentException("changeFraction must be in [0, 0.01]: " + changeFraction);
            }
        }

        public static Leaching defaults() {
            return new Leaching(SOAK_FRACTION, SOAK_HOURS, CHANGE_FRACTION);
        }

        /** Nothing is washed out. */
        public static Leaching none() {
            return new Leaching(0, SOAK_HOURS, 0);
        }
    }

    /**
     * How fast a vessel follows the air.
     *
     * @param bucketHoursPerL time constant of a plain bucket per litre of water and grain, h/L, above 0
     * @param insulatedRatio how many times slower in an insulated box, above 0
     * @param spreadHours time constant of drained grain spread thin, whatever its amount, h, above 0
     */
    public record Warming(double bucketHoursPerL, double insulatedRatio, double spreadHours) {
        /** Judgement: plastic bucket of 10 to 25 L. */
        public static final double BUCKET_HOURS_PER_L = 0.75;
        /** Judgement: insulated box around the bucket. */
        public static final double INSULATED_RATIO = 3;
        /** Judgement: heat content over loss of a 5 cm bed on the floor. */
        public static final double SPREAD_HOURS = 1.6;

        public Warming {
            if (!(bucketHoursPerL > 0 && insulatedRatio > 0 && spreadHours > 0)) {
                throw new IllegalArgumentException("time constants must be above 0: " + bucketHoursPerL + ", "
                        + insulatedRatio + ", " + spreadHours);
            }
        }

        public static Warming defaults() {
            return new Warming(BUCKET_HOURS_PER_L, INSULATED_RATIO, SPREAD_HOURS);
        }

        /** Time constant, hours, of the given litres of water and grain. */
        public double hours(Standing standing, double volumeL) {
            return switch (standing) {
                case BUCKET -> bucketHoursPerL * volumeL;
                case INSULATED -> insulatedRatio * bucketHoursPerL * volumeL;
                case SPREAD -> spreadHours;
            };
        }
    }

    private static void notNegative(String name, double value) {
        if (!(value >= 0)) throw new IllegalArgumentException(name + " must be 0 or more: " + value);
    }
}
