package piecewright.plan;

import java.util.List;
import java.util.Optional;
import piecewright.plan.Simulation.Course;
import piecewright.plan.Simulation.Station;
import piecewright.quantity.FractionRange;
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

    private Leniency() {}

    /** @param course of the acts done or certain */
    static MaltStyle of(MaltStyle style, Course course) {
        List<Station> stations = course.stations();
        Optional<Station> load = first(stations, ActKind.LOAD);
        MaltStyle lenient = style.withSteep(steep(style.steep(), stations));
        FractionRange growth = style.growth().acceptable();
        double grown = load.map(Station::before)
                .orElse(stations.get(stations.size() - 1).after())
                .growth()
                .growthRatio();
        boolean past = load.isPresent() || grown > growth.highFraction();
        return past
                ? lenient.withGrowth(lenient.growth()
                        .withAcceptable(growth.with(grown - ROOM_FRACTION).with(grown + ROOM_FRACTION)))
                : lenient;
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

    private static Optional<Station> first(List<Station> stations, ActKind kind) {
        return stations.stream()
                .filter(station -> station.visit().kind() == kind)
                .findFirst();
    }
}
