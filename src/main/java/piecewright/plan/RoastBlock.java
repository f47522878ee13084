package piecewright.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.house.Heater;
import piecewright.plan.InnerSchedule.InnerStep;
import piecewright.plan.InnerSchedule.Inside;
import piecewright.plan.InnerSchedule.Kind;
import piecewright.process.GrainMass;
import piecewright.process.KilnState;
import piecewright.process.Ledgers;
import piecewright.process.PieceState;
import piecewright.process.kiln.KilnParameters;
import piecewright.process.kiln.RoastCourse;
import piecewright.quantity.EbcRange;
import piecewright.style.RoastSchedule;
import piecewright.style.RoastSchedule.HeatStep;

/**
 * The roast of one piece: one attended block for each oven load. A load is a block by itself, because a block must fit
 * into one person's hours and dry malt keeps: the second load may wait for another evening, and profits from what the
 * first one showed.
 */
public final class RoastBlock {
    /** Judgement: minutes to weigh a load, spread it and heat the empty oven. */
    private static final int PREPARE_MINUTES = 15;
    /** Judgement: minutes to dump the malt on a cold tray, stir it below 30 °C and weigh it. */
    private static final int COOL_MINUTES = 15;
    /** Judgement: a layer is stirred at least so often, minutes. */
    private static final int STIR_MINUTES = 15;
    /** Judgement: blocks last whole five minutes. */
    private static final int ROUND_MINUTES = 5;
    /** Judgement: samples are pulled from so many intervals before the planned end. */
    private static final int SAMPLES_BEFORE = 3;

    private final RoastSchedule schedule;
    private final Outfit.Roasting roasting;
    private final RoastCourse course;
    private final RoastCourse hotter;
    private final RoastCourse cooler;

    private RoastBlock(Setup setup, RoastSchedule schedule, Outfit.Roasting roasting) {
        this.schedule = schedule;
        this.roasting = roasting;
        KilnParameters parameters = setup.models().kiln();
        double errorK = roasting.oven().control().thermostatErrorK();
        this.course = RoastCourse.of(parameters, setup.style(), schedule);
        this.hotter = RoastCourse.of(parameters, setup.style(), schedule.hotter(errorK));
        this.cooler = RoastCourse.of(parameters, setup.style(), schedule.hotter(-errorK));
    }

    /** The roast of this piece; empty when its style has none. */
    public static Optional<RoastBlock> of(Setup setup) {
        Optional<RoastSchedule> schedule = setup.style().oven().roast();
        Optional<Outfit.Roasting> roasting = setup.outfit().ovens().roasting();
        return schedule.isEmpty() || roasting.isEmpty()
                ? Optional.empty()
                : Optional.of(new RoastBlock(setup, schedule.get(), roasting.get()));
    }

    /** Blocks needed: oven loads. */
    public int loads() {
        return roasting.loads();
    }

    /** How long one block keeps one person, minutes. */
    public int minutes() {
        int over = PREPARE_MINUTES + ovenMinutes() + longerMinutes() + COOL_MINUTES;
        return (over + ROUND_MINUTES - 1) / ROUND_MINUTES * ROUND_MINUTES;
    }

    Heater oven() {
        return roasting.oven();
    }

    private int ovenMinutes() {
        return schedule.steps().stream().mapToInt(HeatStep::plannedMinutes).sum();
    }

    /** Minutes the last step may run over what is planned. */
    private int longerMinutes() {
        HeatStep last = schedule.last();
        double slips = 60 * Practice.ROAST_END.hardHours(last.ovenC());
        return (int) Math.ceil(Math.max(slips, last.longestMinutes() - last.plannedMinutes()));
    }

    /**
     * The piece once so many of its loads are roasted, the rest as it was, all cooled to the room.
     *
     * @param malt the piece before its first load
     */
    PieceState after(PieceState malt, int roastedLoads, double roomC) {
        double share = roastedLoads / (double) loads();
        return mixed(malt, course.roasted(malt), share).withGrainC(roomC);
    }

    /** Colours of a roast by the clock in an oven one standard deviation off its dial, cooler and hotter. */
    EbcRange byTheClock(PieceState malt) {
        return new EbcRange(
                cooler.roasted(malt).kiln().colourEbc(),
                hotter.roasted(malt).kiln().colourEbc());
    }

    /** The schedule of one load of that piece, as it is before its first load. */
    InnerSchedule inner(PieceState malt) {
        int longer = longerMinutes();
        List<PieceState> byMinute = course.byMinute(malt, longer);
        List<InnerStep> steps = new ArrayList<>();
        steps.add(set(0, Kind.PREPARE, schedule.steps().get(0), malt));
        int from = 0;
        for (HeatStep step : schedule.steps()) {
            int minute = PREPARE_MINUTES + from;
            steps.add(set(minute, from == 0 ? Kind.GOES_IN : Kind.SET, step, byMinute.get(from)));
            int until = from + step.plannedMinutes();
            for (int at = from + STIR_MINUTES; at < until - STIR_MINUTES / 2; at += STIR_MINUTES) {
                steps.add(plain(at, Kind.STIR, byMinute));
            }
            from = until;
        }
        samples(from, from + longer, steps, byMinute);
        steps.add(plain(from, Kind.STOP, byMinute));
        steps.add(plain(from + longer, Kind.LATEST, byMinute));
        steps.add(new InnerStep(
                minutes(), Kind.OVER, OptionalDouble.empty(), OptionalDouble.empty(), cooled(byMinute, from)));
        steps.sort(Comparator.comparingInt(InnerStep::minute));
        return new InnerSchedule(
                malt.mass().totalKg() / loads(),
                schedule.depthCm(),
                Duration.ofSeconds(Math.round(3600 * course.lagHours())),
                oven().control().thermostatErrorK(),
                steps);
    }

    private void samples(int end, int latest, List<InnerStep> steps, List<PieceState> byMinute) {
        int every = (int) Math.max(
                1, Math.round(60 * Practice.ROAST_END.softHours(schedule.last().ovenC())));
        int lastFrom = end - schedule.last().plannedMinutes();
        for (int at = end - SAMPLES_BEFORE * every; at < latest; at += every) {
            if (at > lastFrom && at != end) {
                steps.add(plain(at, at < end ? Kind.SAMPLE : Kind.SAMPLE_AGAIN, byMinute));
            }
        }
        steps.removeIf(
                step -> step.kind() == Kind.STIR && step.minute() > PREPARE_MINUTES + end - SAMPLES_BEFORE * every);
    }

    private InnerStep set(int minute, Kind kind, HeatStep step, PieceState state) {
        double dialC = step.ovenC() - oven().control().dialOffsetK();
        return new InnerStep(minute, kind, OptionalDouble.of(step.ovenC()), OptionalDouble.of(dialC), inside(state));
    }

    private static InnerStep plain(int inOven, Kind kind, List<PieceState> byMinute) {
        OptionalDouble none = OptionalDouble.empty();
        return new InnerStep(PREPARE_MINUTES + inOven, kind, none, none, inside(byMinute.get(inOven)));
    }

    private static Inside cooled(List<PieceState> byMinute, int end) {
        Inside hot = inside(byMinute.get(end));
        return new Inside(byMinute.get(0).grainC(), hot.moistureFraction(), hot.colourEbc());
    }

    private static Inside inside(PieceState state) {
        return new Inside(
                state.grainC(),
                state.mass().moisture().wetBasisFraction(),
                state.kiln().colourEbc());
    }

    private static PieceState mixed(PieceState before, PieceState roasted, double share) {
        GrainMass from = before.mass();
        GrainMass to = roasted.mass();
        KilnState pale = before.kiln();
        KilnState dark = roasted.kiln();
        double burntKg = share * (from.dryMatterKg() - to.dryMatterKg());
        double vapourKg = share * (from.waterKg() - to.waterKg());
        Ledgers.Water water = before.ledgers().water();
        Ledgers booked = new Ledgers(
                new Ledgers.Water(
                        water.absorbedKg(),
                        water.sprinkledKg(),
                        water.formedKg(),
                        water.evaporatedKg() + vapourKg,
                        water.removedKg()),
                before.ledgers().dryMatter().roasted(burntKg),
                before.ledgers().gas());
        return before.withMass(new GrainMass(
                        from.initialDryMatterKg(), from.dryMatterKg() - burntKg, from.waterKg() - vapourKg))
                .withLedgers(booked)
                .withKiln(new KilnState(
                        between(pale.colourEbc(), dark.colourEbc(), share),
                        between(pale.diastaticFraction(), dark.diastaticFraction(), share),
                        between(pale.smmFraction(), dark.smmFraction(), share)));
    }

    private static double between(double from, double to, double share) {
        return from + share * (to - from);
    }
}
