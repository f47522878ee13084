package piecewright.plan;

import java.time.Duration;
import java.util.Optional;
import piecewright.house.Heater;
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
    /** Judgement: blocks last whole five minutes. */
    private static final int ROUND_MINUTES = 5;

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
        Duration over = inOven().plusMinutes(PREPARE_MINUTES + longerMinutes() + COOL_MINUTES);
        return (int) Math.ceil(over.toSeconds() / (60.0 * ROUND_MINUTES)) * ROUND_MINUTES;
    }

    Heater oven() {
        return roasting.oven();
    }

    private Duration inOven() {
        return schedule.steps().stream().map(HeatStep::planned).reduce(Duration.ZERO, Duration::plus);
    }

    /** Minutes the last step may run over what is planned. */
    private int longerMinutes() {
        HeatStep last = schedule.last();
        double slips = 60 * Practice.ROAST_END.hardHours(last.ovenC());
        double plannedMinutes = last.planned().toSeconds() / 60.0;
        return (int) Math.ceil(Math.max(slips, last.longestMinutes() - plannedMinutes));
    }

    /**
     * The piece once so many of its loads are roasted, the rest as it was, all cooled to the room.
     *
     * @param malt the piece before its first load
     */
    public PieceState after(PieceState malt, int roastedLoads, double roomC) {
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
        RoastMinutes written =
                new RoastMinutes(schedule, oven().control().dialOffsetK(), Duration.ofMinutes(PREPARE_MINUTES));
        Duration longer = Duration.ofMinutes(longerMinutes());
        return new InnerSchedule(
                malt.mass().totalKg() / loads(),
                schedule.depthCm(),
                Duration.ofSeconds(Math.round(3600 * course.lagHours())),
                oven().control().thermostatErrorK(),
                written.steps(course, malt, new RoastMinutes.Ends(inOven(), longer, Duration.ofMinutes(minutes()))));
    }

    /** Malt of which a share, [0, 1], went through the roast and the rest did not. */
    public static PieceState mixed(PieceState before, PieceState roasted, double share) {
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
