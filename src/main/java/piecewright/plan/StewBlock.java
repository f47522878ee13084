package piecewright.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.house.Heater;
import piecewright.plan.InnerSchedule.InnerStep;
import piecewright.plan.InnerSchedule.Inside;
import piecewright.plan.InnerSchedule.Kind;
import piecewright.process.PieceState;
import piecewright.process.kiln.StewCourse;
import piecewright.style.StewSchedule;

/**
 * The stew of one piece: one attended block, the whole piece at once, because wet green malt cannot wait for a second
 * load. It ends as the malt is spread to dry.
 */
public final class StewBlock {
    /** Judgement: minutes to weigh the green malt into tins, cover them and heat the empty oven. */
    private static final int PREPARE_MINUTES = 15;
    /** Judgement: corns are squeezed so often, minutes. */
    private static final int SAMPLE_MINUTES = 15;
    /** Judgement: and stirred so often before, minutes. */
    private static final int STIR_MINUTES = 30;
    /** Judgement: corns are first squeezed so long before the planned end, minutes. */
    private static final int SAMPLES_BEFORE_MINUTES = 45;

    private final StewSchedule schedule;
    private final Outfit.Stewing stewing;
    private final StewCourse course;

    private StewBlock(Setup setup, StewSchedule schedule, Outfit.Stewing stewing) {
        this.schedule = schedule;
        this.stewing = stewing;
        this.course = StewCourse.of(setup.models().kiln(), setup.style(), schedule, stewing.depthCm());
    }

    /** The stew of this piece; empty when its style has none. */
    public static Optional<StewBlock> of(Setup setup) {
        Optional<StewSchedule> schedule = setup.style().oven().stew();
        Optional<Outfit.Stewing> stewing = setup.outfit().ovens().stewing();
        return schedule.isEmpty() || stewing.isEmpty()
                ? Optional.empty()
                : Optional.of(new StewBlock(setup, schedule.get(), stewing.get()));
    }

    /** The longest that block of a style can be. */
    public static Duration longest(StewSchedule schedule) {
        return Duration.ofMinutes(PREPARE_MINUTES + (long) Math.ceil(schedule.longestMinutes()));
    }

    /** How long the block keeps one person until the malt is ready to be spread, minutes. */
    public int minutes() {
        return PREPARE_MINUTES + course.minutes();
    }

    Heater oven() {
        return stewing.oven();
    }

    double depthCm() {
        return stewing.depthCm();
    }

    /** The piece after its stew, hot and wet. */
    public PieceState stewed(PieceState green) {
        return course.stewed(green);
    }

    InnerSchedule inner(PieceState green) {
        List<InnerStep> steps = new ArrayList<>();
        int end = course.minutes();
        OptionalDouble ovenC = OptionalDouble.of(schedule.ovenC());
        OptionalDouble dialC =
                OptionalDouble.of(schedule.ovenC() - oven().control().dialOffsetK());
        steps.add(new InnerStep(Duration.ZERO, Kind.PREPARE, ovenC, dialC, inside(green, 0)));
        steps.add(new InnerStep(Duration.ofMinutes(PREPARE_MINUTES), Kind.GOES_IN, ovenC, dialC, inside(green, 0)));
        for (int at = STIR_MINUTES; at < end - SAMPLES_BEFORE_MINUTES; at += STIR_MINUTES) {
            steps.add(plain(green, at, Kind.STIR));
        }
        for (int at = Math.max(SAMPLE_MINUTES, end - SAMPLES_BEFORE_MINUTES); at < end; at += SAMPLE_MINUTES) {
            steps.add(plain(green, at, Kind.SAMPLE));
        }
        steps.add(plain(green, end, Kind.STOP));
        return new InnerSchedule(
                green.mass().totalKg(),
                stewing.depthCm(),
                Duration.ofSeconds(Math.round(3600 * course.lagHours())),
                oven().control().thermostatErrorK(),
                steps);
    }

    private InnerStep plain(PieceState green, int inOven, Kind kind) {
        OptionalDouble none = OptionalDouble.empty();
        return new InnerStep(Duration.ofMinutes(PREPARE_MINUTES + inOven), kind, none, none, inside(green, inOven));
    }

    private Inside inside(PieceState green, int inOven) {
        PieceState state = course.after(green, inOven);
        return new Inside(
                state.grainC(),
                state.mass().moisture().wetBasisFraction(),
                state.kiln().colourEbc());
    }
}
