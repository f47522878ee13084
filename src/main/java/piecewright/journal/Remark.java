package piecewright.journal;

import java.util.Objects;
import java.util.OptionalDouble;
import piecewright.plan.ActKind;

/** What the words of a {@link Report.Remarked} say, for those who make use of it. */
public sealed interface Remark {
    /** A step was left out. */
    record Skipped(ActKind act) implements Remark {
        public Skipped {
            Objects.requireNonNull(act);
        }
    }

    /** A step was not done until then. */
    record NotYet(ActKind act) implements Remark {
        public NotYet {
            Objects.requireNonNull(act);
        }
    }

    /** A sign was looked for and not found. */
    record Absent(Sign sign) implements Remark {
        public Absent {
            Objects.requireNonNull(sign);
        }
    }

    /** The heater was switched off. */
    record HeaterOff() implements Remark {}

    /** The fan was set: 0 off, 1 full on; empty: on, nobody said how far. */
    record FanSet(OptionalDouble speedFraction) implements Remark {
        public FanSet {
            speedFraction.ifPresent(speed -> inside("speedFraction", speed, 0, 1));
        }
    }

    /** How deep the bed lies, cm, (0, 200]. */
    record BedDepth(double depthCm) implements Remark {
        public BedDepth {
            inside("depthCm", depthCm, 1e-6, 200);
        }
    }

    /** Share of the kernels with the root tip, by eye, [0, 1]. */
    record ChittedShare(double chittedFraction) implements Remark {
        public ChittedShare {
            inside("chittedFraction", chittedFraction, 0, 1);
        }
    }

    /** Mean length of the acrospire, by eye, share of the kernel, [0, 1.3]. */
    record AcrospireShare(double acrospireFraction) implements Remark {
        /** Judgement: no acrospire of malt is longer, share of the kernel. */
        public static final double LONGEST_FRACTION = 1.3;

        public AcrospireShare {
            inside("acrospireFraction", acrospireFraction, 0, LONGEST_FRACTION);
        }
    }

    /** The rootlets rubbed off weigh this, kg, more than 0. */
    record RootletsWeighed(double rootletsKg) implements Remark {
        public RootletsWeighed {
            inside("rootletsKg", rootletsKg, 1e-9, 1000);
        }
    }

    private static void inside(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(name + " must be in [" + least + ", " + most + "]: " + value);
        }
    }
}
