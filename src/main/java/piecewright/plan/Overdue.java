package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import piecewright.plan.Ahead.Moment;
import piecewright.plan.Continuation.Bench;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.Search;
import piecewright.plan.search.Stops;
import piecewright.plan.search.UnderWay;
import piecewright.style.HotCouchSchedule;

/**
 * The way on to the next phase when no timetable keeps every limit of time: what practice does then. The grain's own
 * order is kept: an act comes when the grain is ready for it and somebody is there, not because the clock asks.
 */
final class Overdue {
    /** Judgement: a bed moved so lately need not be moved first. */
    private static final double JUST_MOVED_HOURS = 3;
    /** Judgement: grain that has not chitted enough four days after it was drained will not; it is spread as it is. */
    private static final double LONGEST_REST_HOURS = 96;
    /** Judgement: nor in a wet couch after two. */
    private static final double LONGEST_HEAP_HOURS = 48;
    /** Judgement: the wither goes on growing by about so much acrospire. */
    private static final double WITHER_GROWS_RATIO = 0.1;
    /** Judgement: nobody tells two moments apart whose figures differ by less than this share of the corn. */
    private static final double SAME_RATIO = 0.01;
    /** Judgement: a hot couch that has not caught in a day will not. */
    private static final double CATCHES_HOURS = 24;
    /** Judgement: whoever loads stays a while after, to see the heat take or to turn it down. */
    private static final int SEEN_ON_MINUTES = 10;
    /** Judgement: looks at a couch, wet or hot. */
    private static final double LOOK_HOURS = 8;

    private final Bench bench;
    private final Begun going;
    private final Stops stops;
    private final Rules rules;
    private final Instant last;
    private final Visit began;
    private final Ahead ahead;

    /** @param done so many of its acts are done, those after them certain */
    Overdue(Bench bench, Begun going, int done) {
        this.bench = bench;
        this.going = going;
        this.stops = Stops.of(bench.setup());
        this.rules = new Rules(bench.setup().style(), bench.setup().lot().waterSensitiveFraction());
        this.last = going.visits().get(going.visits().size() - 1).at();
        this.began = UnderWay.began(going.visits());
        Instant from = last.isAfter(going.now()) ? last.plusSeconds(1) : going.now();
        this.ahead = Ahead.of(bench, going, from, free(bench, going, done));
    }

    /** When whoever does the last act that is certain, but not done yet, is free again; now if all were done. */
    static Instant free(Bench bench, Begun going, int done) {
        if (going.visits().size() <= done) return going.now();
        Visit last = going.visits().get(going.visits().size() - 1);
        return last.at().plus(Duration.ofMinutes(Stops.of(bench.setup()).minutes(last)));
    }

    /** The turning, stirring or look that a bed or heap left alone for long gets first; empty when it is none or was moved. */
    Optional<Visit> tended() {
        ActKind kind = switch (began.kind()) {
            case HEAP -> ActKind.LOOK;
            case FLOOR, WITHER -> ActKind.TURN;
            case PACK -> ActKind.CHECK;
            case LOAD -> ActKind.STIR;
            default -> began.kind();
        };
        if (kind == began.kind() || kind == ActKind.STIR && dry()) return Optional.empty();
        Tending tending = Tending.of(going, ahead, kind, 0);
        return tending.moments().stream()
                .findFirst()
                .filter(at -> Tending.hours(last, at) >= JUST_MOVED_HOURS)
                .map(at -> standing(kind, at).orElseGet(() -> tending.visit(tending.number(), at)));
    }

    private boolean dry() {
        return ahead.first()
                .filter(moment -> moment.read().held().mass().moisture().wetBasisFraction() > KilnOn.LOOSE_FRACTION)
                .isEmpty();
    }

    /** The act of that kind that stands at this moment, or else the first to come, now at this moment. */
    private Optional<Visit> standing(ActKind kind, Instant at) {
        List<Visit> standing =
                going.toCome().stream().filter(visit -> visit.kind() == kind).toList();
        return standing.stream()
                .filter(visit -> visit.at().equals(at))
                .findFirst()
                .or(() -> standing.stream().findFirst())
                .map(visit -> new Visit(visit.id(), kind, visit.number(), at));
    }

    /** The acts up to and with the one that begins the next phase; empty when nothing can be done. */
    List<Visit> next() {
        return switch (began.kind()) {
            case SOAK -> alone("steep-" + began.number() + ".drain", soaked());
            case DRAIN -> afterDrain();
            case HEAP -> within("floor.spread", this::castable, ActKind.LOOK, LOOK_HOURS);
            case FLOOR -> afterGrowth();
            case WITHER -> ending(kindAfterGrowth(), grown(0, witheredWell()), ActKind.TURN, turnHours());
            case PACK -> afterCouch();
            case BREAK, STEW -> alone(idOf(ActKind.LOAD), rested());
            case LOAD, RAISE, LOWER, CURE -> new KilnOn(bench.setup(), going, stops, ahead).next();
            case OFF -> alone("finish.deroot", moment -> moment.hoursSince(began.at()) >= Rules.DEROOT_SHORTEST_HOURS);
            case DEROOT, ROAST -> roast();
            default -> List.of();
        };
    }

    private Predicate<Moment> soaked() {
        Slip slip = rules.immersionSlip(began.number(), bench.setup().fillC());
        return moment -> moment.hoursSince(began.at()) >= slip.earlyHours();
    }

    private Predicate<Moment> rested() {
        double stewed = StewBlock.of(bench.setup()).map(StewBlock::minutes).orElse(0) / 60.0;
        double hours = began.kind() == ActKind.STEW ? stewed : CouchRules.LOAD_SHORTEST_HOURS;
        return moment -> moment.hoursSince(began.at()) >= hours;
    }

    private List<Visit> afterDrain() {
        double wet = ahead.first()
                .map(moment -> moment.read().held().mass().moisture().wetBasisFraction())
                .orElse(0.0);
        var steep = bench.setup().style().steep();
        boolean wetEnough = wet >= steep.acceptable().lowFraction() && began.number() >= steep.fewestImmersions();
        if (wetEnough || began.number() >= steep.mostImmersions()) return alone("floor.spread", this::castable);
        Slip rest = rules.restSlip(bench.rawC());
        return alone(
                "steep-" + (began.number() + 1) + ".soak",
                moment -> moment.hoursSince(began.at()) >= rest.earlyHours());
    }

    private boolean castable(Moment moment) {
        double chit = moment.read().held().steep().chitRatio();
        boolean ripe = rules.ripe(bench.setup().models().metabolism().chittedFraction(chit));
        double longest = began.kind() == ActKind.HEAP ? LONGEST_HEAP_HOURS : LONGEST_REST_HOURS;
        double shortest = began.kind() == ActKind.HEAP ? 0 : Rules.LAST_REST_SHORTEST_HOURS;
        double hours = moment.hoursSince(began.at());
        return hours >= longest || ripe && hours >= shortest;
    }

    private List<Visit> afterGrowth() {
        double aim = bench.setup().style().growth().acrospireFraction();
        boolean couched = bench.setup().couching().isPresent();
        double end = couched ? aim - WITHER_GROWS_RATIO : aim;
        String id = couched ? "floor.wither" : idOf(ActKind.LOAD);
        ToDoubleFunction<Moment> misses = moment -> Math.abs(grown(moment) - end);
        return ending(id, grown(couched ? WITHER_GROWS_RATIO : 0, misses), ActKind.TURN, turnHours());
    }

    /** What a moment misses; beyond anything where the grain has not grown to what may still be made into malt. */
    private ToDoubleFunction<Moment> grown(double growsOnRatio, ToDoubleFunction<Moment> misses) {
        double least = bench.setup().style().growth().acceptable().lowFraction() - growsOnRatio - SAME_RATIO;
        return moment -> grown(moment) < least ? Double.POSITIVE_INFINITY : misses.applyAsDouble(moment);
    }

    private static double grown(Moment moment) {
        return moment.read().held().growth().growthRatio();
    }

    private String kindAfterGrowth() {
        return bench.setup().couching().isPresent() ? "couch.pack" : idOf(ActKind.LOAD);
    }

    private ToDoubleFunction<Moment> witheredWell() {
        var couching = bench.setup().couching();
        double aim = bench.setup().style().growth().acrospireFraction();
        if (couching.isEmpty()) return moment -> Math.abs(grown(moment) - aim);
        double packing = couching.get().schedule().packingFraction();
        return moment -> Math.abs(moment.read().held().mass().moisture().wetBasisFraction() - packing);
    }

    private double turnHours() {
        var outfit = bench.setup().outfit();
        return Practice.preferredTurnHours(
                began.kind() == ActKind.WITHER
                        ? outfit.withering().depthCm()
                        : outfit.growing().depthCm());
    }

    /** At its index; at once when it is too hot to wait; after a day when it does not catch. */
    private List<Visit> afterCouch() {
        HotCouchSchedule schedule = bench.setup().couching().orElseThrow().schedule();
        double index = schedule.acceptableIndex().lowHours();
        return within(
                "couch.break",
                moment -> {
                    double hours = moment.hoursSince(began.at());
                    double reached = moment.read().held().couch().indexHours();
                    boolean hot = moment.read().held().grainC() >= schedule.spreadAboveC();
                    boolean cold = reached < index / 2 && hours >= CATCHES_HOURS;
                    return hot || cold || reached >= schedule.indexHours() || hours >= schedule.longestHours();
                },
                ActKind.CHECK,
                LOOK_HOURS);
    }

    private List<Visit> roast() {
        int number = began.kind() == ActKind.ROAST ? Math.max(1, began.number()) + 1 : 1;
        return IntStream.rangeClosed(0, stops.last())
                .filter(stop -> stops.kind(stop) == ActKind.ROAST && stops.number(stop) == number)
                .mapToObj(stops::id)
                .findFirst()
                .map(id -> alone(id, moment -> moment.hoursSince(began.at()) >= JUST_MOVED_HOURS))
                .orElse(List.of());
    }

    /** What this style calls its loading. */
    private String idOf(ActKind kind) {
        return IntStream.rangeClosed(0, stops.last())
                .filter(stop -> stops.kind(stop) == kind)
                .mapToObj(stops::id)
                .findFirst()
                .orElseThrow();
    }

    private int stop(String id) {
        return IntStream.rangeClosed(0, stops.last())
                .filter(stop -> stops.id(stop).equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The act at the first moment that is let. */
    private List<Visit> alone(String id, Predicate<Moment> let) {
        return ahead.fitting(work(id)).stream()
                .filter(let)
                .findFirst()
                .map(moment -> acts(id, moment.at()))
                .orElse(List.of());
    }

    /** The same with what is done every so many hours until then. */
    private List<Visit> within(String id, Predicate<Moment> let, ActKind inner, double everyHours) {
        return ahead.fitting(work(id)).stream()
                .filter(let)
                .findFirst()
                .map(moment -> tended(id, moment.at(), inner, everyHours))
                .orElse(List.of());
    }

    /** The act at the moment that misses least, the earliest of those that miss as much; none where every one is too soon. */
    private List<Visit> ending(String id, ToDoubleFunction<Moment> misses, ActKind inner, double everyHours) {
        List<Moment> fitting = ahead.fitting(work(id));
        double least = fitting.stream().mapToDouble(misses).min().orElse(0);
        return fitting.stream()
                .filter(moment ->
                        least < Double.POSITIVE_INFINITY && misses.applyAsDouble(moment) <= least + SAME_RATIO)
                .findFirst()
                .map(moment -> tended(id, moment.at(), inner, everyHours))
                .orElse(List.of());
    }

    private List<Visit> tended(String id, Instant end, ActKind inner, double everyHours) {
        List<Visit> visits =
                new ArrayList<>(Tending.of(going, ahead, inner, everyHours).until(end));
        visits.addAll(acts(id, end));
        return visits;
    }

    private int work(String id) {
        int minutes = stops.workMinutes(stop(id));
        boolean stewed = began.kind() == ActKind.STEW && stops.kind(stop(id)) == ActKind.LOAD;
        int own = stewed ? Stops.LOAD_MINUTES : minutes;
        return stops.kind(stop(id)) == ActKind.LOAD ? own + SEEN_ON_MINUTES : own;
    }

    /** The act of that name; with the stew before it where its loading begins with one that was not done. */
    private List<Visit> acts(String id, Instant at) {
        int stop = stop(id);
        Visit act = new Visit(id, stops.kind(stop), stops.number(stop), at);
        int stew = StewBlock.of(bench.setup()).map(StewBlock::minutes).orElse(0);
        if (act.kind() != ActKind.LOAD || stew == 0 || began.kind() == ActKind.STEW) return List.of(act);
        return List.of(
                new Visit(Stops.STEW_ID, ActKind.STEW, 0, at),
                new Visit(id, ActKind.LOAD, 0, at.plus(Duration.ofMinutes(stew))));
    }

    /** Turnings, stirrings or looks every so many hours, as people's hours let. */
    record Tending(Begun going, ActKind kind, double everyHours, List<Instant> moments, Instant last) {
        static Tending of(Begun going, Ahead ahead, ActKind kind, double everyHours) {
            int work = minutes(kind);
            Instant last = going.visits().get(going.visits().size() - 1).at();
            return new Tending(
                    going,
                    kind,
                    everyHours,
                    ahead.fitting(work).stream()
                            .map(Moment::at)
                            .sorted(Comparator.naturalOrder())
                            .toList(),
                    last);
        }

        private static int minutes(ActKind kind) {
            return kind == ActKind.LOOK || kind == ActKind.CHECK ? Search.CHECK_MINUTES : Search.TURN_MINUTES;
        }

        /** Those that are over by then. */
        List<Visit> until(Instant end) {
            List<Visit> tended = new ArrayList<>();
            Instant moved = last;
            Optional<Instant> before = Optional.empty();
            int number = number();
            for (Instant at : moments) {
                if (at.plus(Duration.ofMinutes(minutes(kind))).isAfter(end)) break;
                boolean late = hours(moved, at) > everyHours;
                Instant moves =
                        late && before.isPresent() && hours(moved, before.get()) >= everyHours / 2 ? before.get() : at;
                if (late && hours(moved, moves) >= JUST_MOVED_HOURS) {
                    tended.add(visit(number++, moves));
                    moved = moves;
                }
                before = Optional.of(at);
            }
            return tended;
        }

        static double hours(Instant from, Instant until) {
            return Duration.between(from, until).toMinutes() / 60.0;
        }

        int number() {
            return going.visits().stream()
                            .filter(visit ->
                                    visit.kind() == kind || kind == ActKind.TURN && visit.kind() == ActKind.SPRINKLE)
                            .mapToInt(Visit::number)
                            .max()
                            .orElse(0)
                    + 1;
        }

        Visit visit(int number, Instant at) {
            String name = switch (kind) {
                case TURN -> "floor.turn-";
                case LOOK -> "wetcouch.look-";
                case CHECK -> "couch.check-";
                default -> "kiln.stir-";
            };
            return new Visit(name + number, kind, number, at);
        }
    }
}
