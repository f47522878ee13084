package piecewright.plan;

import java.util.List;
import java.util.Optional;
import piecewright.plan.Simulation.Course;
import piecewright.plan.Simulation.Station;
import piecewright.quantity.FractionRange;
import piecewright.quantity.HoursRange;
import piecewright.style.Couches;
import piecewright.style.HotCouchSchedule;
import piecewright.style.MaltStyle;
import piecewright.style.SteepSchedule;

/**
 * The style of a piece whose course has already left what the style accepts: what happened cannot be forbidden any
 * more, only cost. Aims stay; a further immersion is allowed to a piece that is short of water after its last one.
 */
final class Leniency {
    private static final int MOST_IMMERSIONS = 6;
    /** Judgement: what the quick forms and the last half point of a weighing may add. */
    private static final double ROOM_FRACTION = 0.005;

    /** Judgement: a couch with two thirds or half as much again of its index is paler or darker malt, not lost. */
    private static final double INDEX_RATIO = 1.5;
    /** Judgement: no living pile gets hotter; what was read above is the kiln's, °C. */
    private static final double HOTTEST_PILE_C = 60;
    /** Judgement: what a pile found hot may still rise before somebody opens it, K. */
    private static final double ROOM_K = 1.5;

    private Leniency() {}

    /** Judgement: a piece so near its longest acrospire may be past it at the next hour anybody has. */
    private static final double NEARLY_PAST_RATIO = 0.15;

    /** @param course of the acts done or certain */
    static MaltStyle of(MaltStyle style, Course course) {
        List<Station> stations = course.stations();
        Optional<Station> load = first(stations, ActKind.LOAD);
        MaltStyle lenient = style.withSteep(steep(style.steep(), stations)).withCouches(couches(style, course));
        FractionRange growth = style.growth().acceptable();
        double grown = load.map(Station::before)
                .orElse(stations.get(stations.size() - 1).after())
                .growth()
                .growthRatio();
        boolean nearlyPast = grown > growth.highFraction() - NEARLY_PAST_RATIO;
        if (load.isPresent()) {
            return lenient.withGrowth(lenient.growth()
                    .withAcceptable(growth.with(grown - ROOM_FRACTION).with(grown + ROOM_FRACTION)));
        }
        double low = Math.min(growth.lowFraction(), grown - ROOM_FRACTION);
        return nearlyPast
                ? lenient.withGrowth(
                        lenient.growth().withAcceptable(growth.with(low).with(grown + MORE_GROWN_RATIO)))
                : lenient;
    }

    /** Judgement: what may be lost of a steep before the grain is lost, wet basis. */
    private static final double WIDER_STEEP_FRACTION = 0.08;
    /** Judgement: grown three quarters of the least the style takes, it still is malt of a kind; short of it, grain. */
    private static final double LESS_GROWN_RATIO = 0.75;
    /** Judgement: overgrown by so much of the corn it still is malt. */
    private static final double MORE_GROWN_RATIO = 0.4;
    /** Judgement: wetter or drier by so much a pile is packed rather than given up, wet basis. */
    private static final double WIDER_PACKING_FRACTION = 0.08;
    /** Judgement: a couch broken with a fifth of its index makes a pale malt, with twice its index a dark one. */
    private static final double[] WIDER_INDEX_RATIO = {0.2, 2};

    /** The same where nothing keeps the limits of quality either: the aims stay, the limits are wider. */
    static MaltStyle widened(MaltStyle style) {
        SteepSchedule steep = style.steep();
        FractionRange out = steep.acceptable();
        FractionRange grown = style.growth().acceptable();
        Couches couches = style.couches();
        return style.withSteep(new SteepSchedule(
                        steep.targetFraction(),
                        wider(out, WIDER_STEEP_FRACTION, WIDER_STEEP_FRACTION),
                        1,
                        steep.mostImmersions(),
                        steep.soaks()))
                .withGrowth(style.growth()
                        .withAcceptable(wider(grown, (1 - LESS_GROWN_RATIO) * grown.lowFraction(), MORE_GROWN_RATIO)))
                .withCouches(new Couches(couches.wet(), couches.hot().map(Leniency::widened)));
    }

    private static FractionRange wider(FractionRange range, double less, double more) {
        return range.with(Math.max(0, range.lowFraction() - less)).with(range.highFraction() + more);
    }

    private static HotCouchSchedule widened(HotCouchSchedule hot) {
        HoursRange index = hot.acceptableIndex();
        return hot.accepting(
                wider(hot.packing(), WIDER_PACKING_FRACTION, WIDER_PACKING_FRACTION),
                new HoursRange(WIDER_INDEX_RATIO[0] * index.lowHours(), WIDER_INDEX_RATIO[1] * index.highHours()),
                hot.spreadAboveC());
    }

    private static SteepSchedule steep(SteepSchedule steep, List<Station> stations) {
        List<Station> drains = stations.stream()
                .filter(station -> station.visit().kind() == ActKind.DRAIN)
                .toList();
        if (drains.isEmpty()) return steep;
        double wet = drains.get(drains.size() - 1).before().mass().moisture().wetBasisFraction();
        FractionRange acceptable = steep.acceptable();
        boolean cast = first(stations, ActKind.FLOOR).isPresent();
        int most = steep.mostImmersions();
        int fewest = steep.fewestImmersions();
        if (cast || wet > acceptable.highFraction())
            acceptable = acceptable.with(wet - ROOM_FRACTION).with(wet + ROOM_FRACTION);
        if (wet >= steep.acceptable().lowFraction()) fewest = Math.min(fewest, drains.size());
        else if (drains.size() >= most) most = Math.min(MOST_IMMERSIONS, drains.size() + 1);
        return new SteepSchedule(
                steep.targetFraction(), acceptable, fewest, Math.max(most, drains.size()), steep.soaks());
    }

    private static Couches couches(MaltStyle style, Course course) {
        Optional<Station> pack = first(course.stations(), ActKind.PACK);
        return new Couches(
                style.couches().wet(),
                style.couches()
                        .hot()
                        .map(hot ->
                                pack.map(packed -> lenient(hot, packed, course)).orElse(hot)));
    }

    /** What is packed is made into malt: as wet as it went in, as hot as it got, with more or less of its index. */
    private static HotCouchSchedule lenient(HotCouchSchedule hot, Station packed, Course course) {
        double wet = packed.before().mass().moisture().wetBasisFraction();
        FractionRange packing = hot.packing().with(wet - ROOM_FRACTION).with(wet + ROOM_FRACTION);
        double reachedHours = first(course.stations(), ActKind.BREAK)
                .map(broken -> broken.before().couch().indexHours())
                .orElse(hot.indexHours());
        HoursRange index = new HoursRange(
                Math.min(hot.acceptableIndex().lowHours() / INDEX_RATIO, reachedHours),
                Math.max(hot.acceptableIndex().highHours() * INDEX_RATIO, reachedHours));
        double hottestC = course.samples().stream()
                .filter(sample -> !sample.at().isBefore(packed.visit().at()))
                .mapToDouble(sample -> sample.state().grainC())
                .max()
                .orElse(0);
        double readC = course.reads().stream()
                .mapToDouble(read -> read.held().grainC())
                .max()
                .orElse(0);
        double allowedC = Math.max(hot.spreadAboveC(), Math.min(HOTTEST_PILE_C, Math.max(hottestC, readC)) + ROOM_K);
        return hot.accepting(packing, index, allowedC);
    }

    private static Optional<Station> first(List<Station> stations, ActKind kind) {
        return stations.stream()
                .filter(station -> station.visit().kind() == kind)
                .findFirst();
    }
}
