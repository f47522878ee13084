package piecewright.truth;

import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import piecewright.plan.InnerSchedule;
import piecewright.plan.InnerSchedule.InnerStep;
import piecewright.plan.InnerSchedule.Kind;
import piecewright.style.MaltStyle;

/**
 * A layer in an oven: trails it by a minute a millimetre, held at 100 °C while wetter than 5 %. Whoever roasts compares
 * a crushed spoonful with the swatch (one in eight off) and takes it out when it is as dark as was asked.
 */
final class Roasting {
    private static final double SWATCH_SD = 0.12;
    private static final double STEP_HOURS = 1 / 60.0;

    private final InnerSchedule schedule;
    private final double substrate;
    private final double offK;
    private final double aimEbc;
    private final SplittableRandom random;
    private final double lagHours;
    private double grainC = 20;
    private double ebc;
    private double wet;

    Roasting(InnerSchedule schedule, MaltStyle style, Hidden hidden, SplittableRandom random) {
        this.schedule = schedule;
        this.substrate = style.kiln().colourBase().substrateRatio() * hidden.colour() * hidden.roastColour();
        this.offK = Math.min(3, schedule.ovenErrorK()) * hidden.ovenSds();
        this.aimEbc = Math.sqrt(
                style.finish().colour().lowEbc() * style.finish().colour().highEbc());
        this.random = random;
        this.lagHours = schedule.depthCm() * 10 / 60;
    }

    double ebc() {
        return ebc;
    }

    double moisture() {
        return wet;
    }

    Duration done(double startEbc, double startMoisture) {
        ebc = startEbc;
        wet = startMoisture;
        double ovenC = 20;
        boolean inside = false;
        List<InnerStep> steps = schedule.steps();
        for (int i = 0; i < steps.size(); i++) {
            InnerStep step = steps.get(i);
            if (step.ovenC().isPresent()) ovenC = step.ovenC().getAsDouble() + offK;
            if (step.kind() == Kind.GOES_IN) inside = true;
            boolean ends = step.kind() == Kind.LATEST || (looks(step.kind()) && darkEnough());
            if (ends) return step.at();
            if (i + 1 < steps.size() && inside)
                heat(ovenC, steps.get(i + 1).at().minus(step.at()));
        }
        return schedule.length();
    }

    private static boolean looks(Kind kind) {
        return kind == Kind.SAMPLE || kind == Kind.STOP || kind == Kind.SAMPLE_AGAIN;
    }

    private boolean darkEnough() {
        return ebc * Math.exp(SWATCH_SD * Hidden.normal(random)) >= 0.93 * aimEbc;
    }

    private void heat(double ovenC, Duration time) {
        int minutes = (int) Math.max(0, time.toMinutes());
        for (int i = 0; i < minutes; i++) {
            double goal = wet > 0.05 ? Math.min(ovenC, 100) : ovenC;
            grainC = goal + (grainC - goal) * Math.exp(-STEP_HOURS / lagHours);
            double dries = 0.7 * 139.3 * 3600 * Math.exp(-4426 / (grainC + 273.15));
            double ratio = wet / (1 - wet);
            ratio = 0.005 + (ratio - 0.005) * Math.exp(-dries * STEP_HOURS * 0.6);
            wet = ratio / (1 + ratio);
            ebc = Browning.later(ebc, grainC, wet, substrate, STEP_HOURS);
        }
    }
}
