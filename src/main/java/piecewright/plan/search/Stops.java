package piecewright.plan.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.plan.ActKind;
import piecewright.plan.Outfit;
import piecewright.plan.RoastBlock;
import piecewright.plan.Setup;
import piecewright.plan.StewBlock;
import piecewright.plan.Timetable.Visit;
import piecewright.style.KilnSchedule.Rung;
import piecewright.style.MaltStyle;

/**
 * The acts that bound the phases of one style, numbered in the order they can happen. Optional ones (later immersions,
 * wither, rungs of heat) may be passed over; turnings and stirrings lie inside phases and have no number.
 */
public final class Stops {
    /** Ends the logical names of loading and curing malt that was stewed. */
    public static final String STEWED_SUFFIX = "-stewed";
    /** Logical name of the stew. */
    public static final String STEW_ID = "oven.stew";
    /** Goes on the logical name of an act done once more after the heat was turned down. */
    private static final String AGAIN = "-again";

    /** Judgement: minutes of work, practice estimates: washing and first steep. */
    private static final int FIRST_SOAK_MINUTES = 30;
    /** Judgement: minutes to fill again. */
    private static final int SOAK_MINUTES = 10;
    /** Judgement: minutes to bring ice or hot water, stir it in and measure, where the water is chilled or warmed. */
    private static final int TEMPER_MINUTES = 5;
    /** Judgement: minutes to drain and weigh. */
    private static final int DRAIN_MINUTES = 15;
    /** Judgement: minutes to heap, cover and set the thermometer. */
    static final int HEAP_MINUTES = 15;
    /** Judgement: minutes to spread on trays. */
    private static final int FLOOR_MINUTES = 15;
    /** Judgement: minutes to spread thin for the wither. */
    private static final int WITHER_MINUTES = 15;
    /** Judgement: minutes to weigh, pack the box, lay the cloths and set the thermometer. */
    static final int PACK_MINUTES = 30;
    /** Judgement: minutes to unpack, spread and weigh. */
    private static final int BREAK_MINUTES = 20;
    /** Judgement: minutes to weigh and load the kiln. */
    public static final int LOAD_MINUTES = 30;
    /** Judgement: minutes to weigh and set the heat. */
    private static final int RAISE_MINUTES = 10;
    /** Judgement: a dial is turned down in a minute. */
    private static final int LOWER_MINUTES = 1;
    /** Judgement: minutes to unload and spread to cool. */
    private static final int OFF_MINUTES = 20;
    /** Judgement: minutes to rub, clean and weigh. */
    public static final int DEROOT_MINUTES = 40;

    private final int immersions;
    private final Couches couches;
    private final List<Rung> rungs;
    private final int stewMinutes;
    private final int roasts;
    private final int roastMinutes;
    private final int temperMinutes;

    /** Which couches can lie between steep and kiln. */
    private record Couches(boolean wet, boolean hot) {}

    /** Immersions at most, and whether their water is chilled or warmed. */
    private record Steeping(int immersions, boolean tempered) {}

    private Stops(
            Steeping steeping,
            Couches couches,
            List<Rung> rungs,
            Optional<StewBlock> stew,
            Optional<RoastBlock> roast) {
        this.immersions = steeping.immersions();
        this.temperMinutes = steeping.tempered() ? TEMPER_MINUTES : 0;
        this.couches = couches;
        this.rungs = List.copyOf(rungs);
        this.stewMinutes = stew.map(StewBlock::minutes).orElse(0);
        this.roasts = roast.map(RoastBlock::loads).orElse(0);
        this.roastMinutes = roast.map(RoastBlock::minutes).orElse(0);
    }

    /** Stops of a piece: rungs that its dryer reaches below the cure, a roast for each load of its oven. */
    public static Stops of(Setup setup) {
        Outfit.Drying drying = setup.outfit().drying();
        List<Rung> below = new ArrayList<>();
        for (Rung rung : setup.style().kiln().ladder()) {
            boolean first = below.isEmpty();
            if (first || (rung.airOnC() <= drying.hottestDryC() && rung.airOnC() < drying.cureC())) below.add(rung);
        }
        MaltStyle style = setup.style();
        Couches couches =
                new Couches(setup.heaping().isPresent(), style.couches().hot().isPresent());
        Steeping steeping =
                new Steeping(style.steep().mostImmersions(), setup.lot().water().tempered());
        return new Stops(steeping, couches, below, StewBlock.of(setup), RoastBlock.of(setup));
    }

    int soak(int immersion) {
        return 2 * (immersion - 1);
    }

    int drain(int immersion) {
        return 2 * immersion - 1;
    }

    /** Stops of the steep, each soak and drain one. */
    int steeps() {
        return 2 * immersions;
    }

    /** Heaping to chit, of styles that may. */
    int heap() {
        return steeps();
    }

    int floor() {
        return steeps() + (couches.wet() ? 1 : 0);
    }

    int wither() {
        return floor() + 1;
    }

    /** Whether a hot couch lies between growth and kiln. */
    boolean couched() {
        return couches.hot();
    }

    /** Packing the hot couch, of styles that have one. */
    int pack() {
        return floor() + 2;
    }

    /** Breaking it. */
    int breakCouch() {
        return floor() + 3;
    }

    /** The act that ends growth: packing the couch, or else loading the kiln. */
    int growthEnds() {
        return floor() + 2;
    }

    int load() {
        return floor() + (couches.hot() ? 4 : 2);
    }

    /** The last stop whose candidates are those of the coarse grid. */
    int lastCoarse() {
        return couches.hot() ? breakCouch() : load();
    }

    /** Raising to rung 1, 2, …; rung 0 is set at loading. */
    int raise(int rung) {
        return load() + rung;
    }

    int cure() {
        return load() + rungs.size();
    }

    int off() {
        return cure() + 1;
    }

    int deroot() {
        return cure() + 2;
    }

    /** Roasting load 1, 2, … */
    int roast(int load) {
        return deroot() + load;
    }

    /** The last stop. */
    public int last() {
        return deroot() + roasts;
    }

    /** The stop from which the malt rests: off the kiln, or the last roast. */
    int restFrom() {
        return roasts == 0 ? off() : last();
    }

    /** Minutes from when that stop begins until the malt can rest. */
    int busyBeforeRestMinutes() {
        return roastMinutes;
    }

    int count() {
        return last() + 1;
    }

    /** Minutes from when loading begins, with a stew before it, until the bed dries. */
    int stewMinutes() {
        return stewMinutes;
    }

    /** Whether this stop holds a block that one person attends throughout: a stew or a roast. */
    boolean attendedBlock(int stop) {
        return stop > deroot() || (stop == load() && stewMinutes > 0);
    }

    int immersions() {
        return immersions;
    }

    /** Rungs of heat before curing, the first open from loading. */
    public List<Rung> rungs() {
        return rungs;
    }

    /** The immersion a soak or drain belongs to, the rung of a raise, the load of a roast; 0 for the others. */
    public int number(int stop) {
        if (stop < steeps()) return stop / 2 + 1;
        if (stop > deroot()) return stop - deroot();
        return stop > load() && stop < cure() ? stop - load() : 0;
    }

    public ActKind kind(int stop) {
        if (stop < steeps()) return stop % 2 == 0 ? ActKind.SOAK : ActKind.DRAIN;
        if (stop < floor()) return ActKind.HEAP;
        if (stop == floor()) return ActKind.FLOOR;
        if (stop == wither()) return ActKind.WITHER;
        if (couches.hot() && stop == pack()) return ActKind.PACK;
        if (couches.hot() && stop == breakCouch()) return ActKind.BREAK;
        if (stop == load()) return ActKind.LOAD;
        if (stop < cure()) return ActKind.RAISE;
        if (stop == cure()) return ActKind.CURE;
        if (stop == off()) return ActKind.OFF;
        return stop == deroot() ? ActKind.DEROOT : ActKind.ROAST;
    }

    /** Logical name that survives re-plans. */
    public String id(int stop) {
        return switch (kind(stop)) {
            case SOAK -> "steep-" + number(stop) + ".soak";
            case DRAIN -> "steep-" + number(stop) + ".drain";
            case HEAP -> "wetcouch.heap";
            case FLOOR -> "floor.spread";
            case WITHER -> "floor.wither";
            case PACK -> "couch.pack";
            case BREAK -> "couch.break";
            case LOAD -> "kiln.load" + afterStew();
            case RAISE -> "kiln.raise-" + number(stop);
            case CURE -> "kiln.cure" + afterStew();
            case OFF -> "kiln.off";
            case DEROOT -> "finish.deroot";
            case ROAST -> roasts == 1 ? "oven.roast" : "oven.roast-" + number(stop);
            case LOWER, STEW, LOOK, TURN, SPRINKLE, STIR, CHECK ->
                throw new IllegalStateException("lies inside a phase: " + stop);
        };
    }

    /** What is loaded and dried after a stew is another thing to look at: its acts have names of their own. */
    private String afterStew() {
        return stewMinutes > 0 ? STEWED_SUFFIX : "";
    }

    /** Logical name of the act that must begin for this stop to happen: the stew, where one goes before loading. */
    String firstId(int stop) {
        return stop == load() && stewMinutes > 0 ? STEW_ID : id(stop);
    }

    /** The name such an act had the first time. */
    public static String first(String id) {
        int again = id.indexOf(AGAIN);
        return again < 0 ? id : id.substring(0, again);
    }

    /** The name of an act that may have been done before: lasting, and its own. */
    public static String own(String id, List<Visit> done) {
        String own = id;
        for (int times = 2; isIn(own, done); times++) own = id + AGAIN + (times > 2 ? "-" + times : "");
        return own;
    }

    private static boolean isIn(String id, List<Visit> done) {
        return done.stream().anyMatch(visit -> visit.id().equals(id));
    }

    /** Minutes this act takes by itself. */
    public int minutes(Visit visit) {
        return switch (visit.kind()) {
            case LOAD -> LOAD_MINUTES;
            case STEW -> stewMinutes;
            case LOWER -> LOWER_MINUTES;
            case CHECK, LOOK -> Search.CHECK_MINUTES;
            case TURN, SPRINKLE, STIR -> Search.TURN_MINUTES;
            default -> workMinutes(stop(visit));
        };
    }

    private int stop(Visit visit) {
        String id = first(visit.id());
        for (int stop = 0; stop < count(); stop++) if (id(stop).equals(id)) return stop;
        for (int stop = 0; stop < count(); stop++) if (kind(stop) == visit.kind()) return stop;
        throw new IllegalArgumentException("no stop of this style: " + visit.id());
    }

    /** Minutes somebody is busy in one go, a stew before loading included. */
    public int workMinutes(int stop) {
        return switch (kind(stop)) {
            case SOAK -> temperMinutes + (stop == 0 ? FIRST_SOAK_MINUTES : SOAK_MINUTES);
            case DRAIN -> DRAIN_MINUTES;
            case HEAP -> HEAP_MINUTES;
            case FLOOR -> FLOOR_MINUTES;
            case WITHER -> WITHER_MINUTES;
            case PACK -> PACK_MINUTES;
            case BREAK -> BREAK_MINUTES;
            case LOAD -> stewMinutes + LOAD_MINUTES;
            case RAISE, CURE -> RAISE_MINUTES;
            case OFF -> OFF_MINUTES;
            case DEROOT -> DEROOT_MINUTES;
            case ROAST -> roastMinutes;
            case LOWER, STEW, LOOK, TURN, SPRINKLE, STIR, CHECK ->
                throw new IllegalStateException("lies inside a phase: " + stop);
        };
    }
}
