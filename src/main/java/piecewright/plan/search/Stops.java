package piecewright.plan.search;

import java.util.ArrayList;
import java.util.List;
import piecewright.plan.ActKind;
import piecewright.style.KilnSchedule.Rung;
import piecewright.style.MaltStyle;

/**
 * The acts that bound the phases of one style, numbered in the order they can happen. Optional ones (later immersions,
 * wither, rungs of heat) may be passed over; turnings and stirrings lie inside phases and have no number.
 */
public final class Stops {
    /** Judgement: minutes of work, practice estimates: washing and first steep. */
    private static final int FIRST_SOAK_MINUTES = 30;
    /** Judgement: minutes to fill again. */
    private static final int SOAK_MINUTES = 10;
    /** Judgement: minutes to drain and weigh. */
    private static final int DRAIN_MINUTES = 15;
    /** Judgement: minutes to spread on trays. */
    private static final int FLOOR_MINUTES = 15;
    /** Judgement: minutes to spread thin for the wither. */
    private static final int WITHER_MINUTES = 15;
    /** Judgement: minutes to weigh, pack the box, lay the cloths and set the thermometer. */
    private static final int PACK_MINUTES = 30;
    /** Judgement: minutes to unpack, spread and weigh. */
    private static final int BREAK_MINUTES = 20;
    /** Judgement: minutes to weigh and load the kiln. */
    private static final int LOAD_MINUTES = 30;
    /** Judgement: minutes to weigh and set the heat. */
    private static final int RAISE_MINUTES = 10;
    /** Judgement: minutes to unload and spread to cool. */
    private static final int OFF_MINUTES = 20;
    /** Judgement: minutes to rub, clean and weigh. */
    private static final int DEROOT_MINUTES = 40;

    private final int immersions;
    private final boolean couched;
    private final List<Rung> rungs;

    private Stops(int immersions, boolean couched, List<Rung> rungs) {
        this.immersions = immersions;
        this.couched = couched;
        this.rungs = List.copyOf(rungs);
    }

    /** Stops of a style whose dryer reaches hottestDryC before the malt is cured at cureC. */
    public static Stops of(MaltStyle style, double hottestDryC, double cureC) {
        List<Rung> below = new ArrayList<>();
        for (Rung rung : style.kiln().ladder()) {
            boolean first = below.isEmpty();
            if (first || (rung.airOnC() <= hottestDryC && rung.airOnC() < cureC)) below.add(rung);
        }
        boolean couched = style.couches().hot().isPresent();
        return new Stops(style.steep().mostImmersions(), couched, below);
    }

    int soak(int immersion) {
        return 2 * (immersion - 1);
    }

    int drain(int immersion) {
        return 2 * immersion - 1;
    }

    int floor() {
        return 2 * immersions;
    }

    int wither() {
        return floor() + 1;
    }

    /** Whether a hot couch lies between growth and kiln. */
    boolean couched() {
        return couched;
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
        return floor() + (couched ? 4 : 2);
    }

    /** The last stop whose candidates are those of the coarse grid. */
    int lastCoarse() {
        return couched ? breakCouch() : load();
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

    /** The last stop. */
    public int deroot() {
        return cure() + 2;
    }

    int count() {
        return deroot() + 1;
    }

    int immersions() {
        return immersions;
    }

    /** Rungs of heat before curing, the first open from loading. */
    public List<Rung> rungs() {
        return rungs;
    }

    /** The immersion a soak or drain belongs to, or the rung of a raise; 0 for the others. */
    public int number(int stop) {
        if (stop < floor()) return stop / 2 + 1;
        return stop > load() && stop < cure() ? stop - load() : 0;
    }

    public ActKind kind(int stop) {
        if (stop < floor()) return stop % 2 == 0 ? ActKind.SOAK : ActKind.DRAIN;
        if (stop == floor()) return ActKind.FLOOR;
        if (stop == wither()) return ActKind.WITHER;
        if (couched && stop == pack()) return ActKind.PACK;
        if (couched && stop == breakCouch()) return ActKind.BREAK;
        if (stop == load()) return ActKind.LOAD;
        if (stop < cure()) return ActKind.RAISE;
        if (stop == cure()) return ActKind.CURE;
        return stop == off() ? ActKind.OFF : ActKind.DEROOT;
    }

    /** Logical name that survives re-plans. */
    public String id(int stop) {
        return switch (kind(stop)) {
            case SOAK -> "steep-" + number(stop) + ".soak";
            case DRAIN -> "steep-" + number(stop) + ".drain";
            case FLOOR -> "floor.spread";
            case WITHER -> "floor.wither";
            case PACK -> "couch.pack";
            case BREAK -> "couch.break";
            case LOAD -> "kiln.load";
            case RAISE -> "kiln.raise-" + number(stop);
            case CURE -> "kiln.cure";
            case OFF -> "kiln.off";
            case DEROOT -> "finish.deroot";
            case TURN, SPRINKLE, STIR, CHECK -> throw new IllegalStateException("lies inside a phase: " + stop);
        };
    }

    /** Minutes somebody is busy. */
    public int workMinutes(int stop) {
        return switch (kind(stop)) {
            case SOAK -> stop == 0 ? FIRST_SOAK_MINUTES : SOAK_MINUTES;
            case DRAIN -> DRAIN_MINUTES;
            case FLOOR -> FLOOR_MINUTES;
            case WITHER -> WITHER_MINUTES;
            case PACK -> PACK_MINUTES;
            case BREAK -> BREAK_MINUTES;
            case LOAD -> LOAD_MINUTES;
            case RAISE, CURE -> RAISE_MINUTES;
            case OFF -> OFF_MINUTES;
            case DEROOT -> DEROOT_MINUTES;
            case TURN, SPRINKLE, STIR, CHECK -> throw new IllegalStateException("lies inside a phase: " + stop);
        };
    }
}
