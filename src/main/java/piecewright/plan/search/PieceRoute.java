package piecewright.plan.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import piecewright.plan.ActKind;

/** The route of one piece from raw grain to de-rooted or roasted malt. */
final class PieceRoute implements Route {
    /** Judgement: labels whose core differs by less than this are taken for equal; about a tenth of a point. */
    private static final double WATER_BUCKET_RATIO = 0.003;
    /** Judgement: the same for χ and P. */
    private static final double GROWTH_BUCKET_RATIO = 0.01;

    /** Judgement: the same for the warmth of a piece packed for the couch. */
    private static final double WARMTH_BUCKET_K = 0.5;

    /** Judgement: rivals in the steep differ by less than this in core water; about a third of a point. */
    private static final double CELL_RATIO = 0.01;
    /** Judgement: nor are those that chit so much sooner or later; before a hot couch there would be too many. */
    private static final double CHIT_CELL_RATIO = 0.2;

    private final Space space;
    private final List<Label> starts;
    private final SteepLegs steep;
    private final Optional<HeapLegs> heap;
    private final FloorLegs floor;
    private final Optional<CouchLegs> couch;
    private final KilnLegs kiln;
    private final KilnLegs.EndCost endCost;
    private final Bound bound;
    private final int goal;
    private final Effort effort;
    private final double belowMinutes;
    private final KitFree kit;
    private long unique;

    PieceRoute(Space space, Legs legs, List<Label> starts, Bound bound, Ending ending, KitFree kit) {
        this.kit = kit;
        this.space = space;
        this.starts = List.copyOf(starts);
        this.steep = legs.steep();
        this.heap = legs.heap();
        this.floor = legs.floor();
        this.couch = legs.couch();
        this.kiln = legs.kiln();
        this.endCost = legs.endCost();
        this.bound = bound;
        this.goal = ending.goal();
        this.effort = ending.effort();
        this.belowMinutes = ending.belowMinutes();
    }

    /** The stop that ends a plan, how hard to look for it, and what it must cost less than, cost-minutes. */
    record Ending(int goal, Effort effort, double belowMinutes) {}

    /** The ways on from each stage. */
    record Legs(
            SteepLegs steep,
            Optional<HeapLegs> heap,
            FloorLegs floor,
            Optional<CouchLegs> couch,
            KilnLegs kiln,
            KilnLegs.EndCost endCost) {}

    @Override
    public List<Label> starts() {
        return starts;
    }

    /** The labels of raw grain put to steep at these candidates. */
    static List<Label> starts(Space space, Grain raw, List<Integer> startAts) {
        List<Label> starts = new ArrayList<>();
        for (int at : startAts) {
            if (!space.canBegin(0, at)) continue;
            int nights = space.grid().night(at) ? 1 : 0;
            starts.add(new Label(0, at, raw, space.actCostMinutes(0, at), nights, null));
        }
        return starts;
    }

    @Override
    public void expand(Label label, Consumer<Label> sink) {
        follow(
                label,
                kit.always()
                        ? sink
                        : next -> {
                            if (kit.lets(label, next)) sink.accept(next);
                        });
    }

    private void follow(Label label, Consumer<Label> sink) {
        switch (space.stops().kind(label.stop())) {
            case SOAK -> steep.fromSoak(label, sink);
            case DRAIN -> steep.fromDrain(label, sink);
            case HEAP -> heap.orElseThrow().fromHeap(label, sink);
            case FLOOR -> floor.fromFloor(label, sink);
            case WITHER -> floor.fromWither(label, sink);
            case PACK -> couch.orElseThrow().fromPack(label, sink);
            case BREAK -> couch.orElseThrow().fromBreak(label, sink);
            case LOAD, RAISE -> kiln.fromDrying(label, sink);
            case CURE -> kiln.fromCure(label, endCost, sink);
            case OFF -> kiln.fromOff(label, sink);
            case DEROOT, ROAST -> kiln.fromLoose(label, endCost, sink);
            case LOWER, STEW, LOOK, TURN, SPRINKLE, STIR, CHECK -> {
                // nothing follows
            }
        }
    }

    @Override
    public boolean isGoal(Label label) {
        return label.stop() == goal;
    }

    @Override
    public double boundMinutes(Label label) {
        boolean onlyStart = label.before() == null && starts.size() == 1;
        double least = onlyStart ? 0 : bound.minutes(label);
        return label.costMinutes() + least < belowMinutes ? least : Double.POSITIVE_INFINITY;
    }

    @Override
    public long bucket(Label label) {
        if (effort.bucketRatio() == 0) return unique++;
        Grain grain = label.grain();
        ActKind kind = space.stops().kind(label.stop());
        long water = 0;
        long growth = 0;
        switch (kind) {
            case SOAK, DRAIN, HEAP -> {
                water = bucketOf(grain.coreRatio(), WATER_BUCKET_RATIO);
                growth = bucketOf(grain.chitRatio() + grain.growthRatio(), GROWTH_BUCKET_RATIO);
            }
            case FLOOR, WITHER -> {
                water = bucketOf(grain.waterRatio(), WATER_BUCKET_RATIO);
                growth = bucketOf(grain.growthRatio(), GROWTH_BUCKET_RATIO);
            }
            case PACK -> {
                water = bucketOf(grain.waterRatio(), WATER_BUCKET_RATIO);
                growth = bucketOf(grain.grainC(), WARMTH_BUCKET_K);
            }
            case BREAK -> water = bucketOf(grain.waterRatio(), WATER_BUCKET_RATIO);
            case LOAD, RAISE, CURE -> {
                water = bucketOf(grain.slowWaterRatio(), WATER_BUCKET_RATIO / 2);
                growth = bucketOf(grain.waterRatio(), WATER_BUCKET_RATIO);
            }
            default -> {
                // after the cure only time counts
            }
        }
        return (((label.stop() * 8192L + label.at()) * 4096 + (water & 4095)) * 4096 + (growth & 4095)) * 32
                + label.nights();
    }

    @Override
    public long cell(Label label) {
        long water = 0;
        long chit = 0;
        if (label.stop() < space.stops().floor()) {
            water = bucketOf(label.grain().coreRatio(), CELL_RATIO);
            if (couch.isEmpty()) chit = bucketOf(label.grain().chitRatio(), CHIT_CELL_RATIO);
        }
        return ((label.stop() * 8192L + label.at()) * 4096 + (water & 4095)) * 4096 + (chit & 4095);
    }

    @Override
    public Effort effort() {
        return effort;
    }

    private static long bucketOf(double value, double width) {
        return (long) Math.floor(value / width) + 1024;
    }
}
