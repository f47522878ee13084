package piecewright.remedy;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import piecewright.house.House;
import piecewright.house.Trays;
import piecewright.plan.Obstacle;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.plan.Rooms;

/** The changes worth trying for one wish, by kind: kinds that ask little first, in each the smallest step first. */
public final class Steps {
    /** Judgement: ice or a night in the fridge cools the water by so much, K. */
    private static final double[] CHILLED_K = {2, 4, 6};
    /** Judgement: never below. */
    private static final double COLDEST_WATER_C = 4;
    /** Judgement: growth hardly goes on in a place colder than this. */
    private static final double COLDEST_PLACE_C = 8;
    /** Judgement: less colder than this is no change, K. */
    private static final double COLDER_K = 1;
    /** Judgement: warmer than this a bed is hard to keep cool. */
    private static final double WARMEST_PLACE_C = 20;
    /** Judgement: as beds are spread where nobody says. */
    private static final double USUAL_BED_CM = 5;
    /** Judgement: beds a person can still spread evenly, cm. */
    private static final double[] SHALLOWER_CM = {4, 3, 2};
    /** Judgement: days that make another season of it, the nearest first. */
    private static final int[] SEASON_DAYS = {7, 14, 21, 28, 42, 56, 84, 112};
    /** Judgement: steps of hours that somebody might find. */
    private static final int[] LONGER_MINUTES = {30, 60, 120};
    /** Judgement: days later that a brew day might move. */
    private static final int[] LATER_DAYS = {1, 2, 3, 5, 7, 10, 14, 21, 28};
    /** Judgement: days the first steep might move. */
    private static final int[] START_DAYS = {1, 2, 3, 4, 5, 6};
    /** Judgement: shares of the style's rest that still let the malt mellow. */
    private static final double[] REST_RATIOS = {0.8, 2.0 / 3, 0.5, 1.0 / 3};
    /** Judgement: shares of a piece still worth the work. */
    private static final double[] PIECE_RATIOS = {0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3, 0.2, 0.1};
    /** Judgement: nobody buys more than three times the trays. */
    private static final int MOST_TRAYS_RATIO = 3;
    /** Judgement: nobody gets up more often. */
    private static final int MOST_NIGHTS = 2;

    private final PlanRequest request;
    private final House house;

    public Steps(PlanRequest request) {
        this.request = request;
        this.house = request.house();
    }

    /** What may help against these obstacles; empty where nothing here would. */
    List<List<Change>> against(List<Obstacle> obstacles) {
        List<List<Change>> kinds = new ArrayList<>();
        if (obstacles.stream().anyMatch(Steps::ofTime)) {
            kinds.add(chilled());
            kinds.add(longer());
            kinds.add(request.when() instanceof When.ReadyBy ready ? later(ready.day()) : starts());
            kinds.add(traysC(day()) < COLDEST_PLACE_C ? frostFree() : colder());
            kinds.add(nights());
            if (request.when() instanceof When.ReadyBy) kinds.add(rests());
        }
        if (obstacles.stream().anyMatch(Obstacle.BedTooWarm.class::isInstance)) {
            kinds.add(shallower());
            kinds.add(colder());
            kinds.add(frostFree());
            kinds.add(starts(later -> later <= -COLDER_K));
        }
        if (obstacles.stream().anyMatch(Obstacle.WouldFreeze.class::isInstance)) {
            kinds.add(frostFree());
            kinds.add(starts(later -> later >= COLDER_K));
        }
        if (obstacles.stream().anyMatch(Obstacle::ofSize)) kinds.add(smaller());
        if (obstacles.stream().anyMatch(Obstacle.BedTooDeep.class::isInstance)) kinds.add(trays());
        return kinds.stream().filter(kind -> !kind.isEmpty()).toList();
    }

    /** The smallest step of each kind that leaves wish, day and kit as they are: what may make a plan surer. */
    public List<Change> easiest() {
        return Stream.of(chilled(), longer(), colder(), nights())
                .flatMap(kind -> kind.stream().limit(1))
                .toList();
    }

    private static boolean ofTime(Obstacle obstacle) {
        return obstacle instanceof Obstacle.NobodyThere
                || obstacle instanceof Obstacle.HeldByOthers
                || obstacle instanceof Obstacle.NothingFits
                || obstacle instanceof Obstacle.TooSoon;
    }

    private List<Change> chilled() {
        return java.util.Arrays.stream(CHILLED_K)
                .map(chilledK -> house.steepWaterC() - chilledK)
                .filter(fillC -> fillC >= COLDEST_WATER_C)
                .<Change>mapToObj(Change.ChilledWater::new)
                .toList();
    }

    private static List<Change> longer() {
        return IntStream.of(LONGER_MINUTES)
                .<Change>mapToObj(Change.LongerHours::new)
                .toList();
    }

    private static List<Change> later(LocalDate day) {
        return IntStream.of(LATER_DAYS)
                .<Change>mapToObj(days -> new Change.LaterDay(day.plusDays(days)))
                .toList();
    }

    private List<Change> starts() {
        LocalDate day = ((When.StartOn) request.when()).day();
        return IntStream.of(START_DAYS)
                .<Change>mapToObj(days -> new Change.OtherStart(day.plusDays(days)))
                .toList();
    }

    /** Places for the trays, the least colder first. */
    private List<Change> colder() {
        Rooms rooms = rooms();
        double nowC = house.kit().trays().stream()
                .mapToDouble(trays -> rooms.meanC(trays.place()))
                .min()
                .orElse(COLDEST_PLACE_C);
        return house.places().stream()
                .map(place -> place.name())
                .filter(place -> rooms.meanC(place) >= COLDEST_PLACE_C && rooms.meanC(place) <= nowC - COLDER_K)
                .sorted(Comparator.comparingDouble((String place) -> -rooms.meanC(place)))
                .<Change>map(Change.ColderPlace::new)
                .toList();
    }

    /** Beds thinner than it would lie, the least thin first. */
    private List<Change> shallower() {
        double nowCm = request.arrangement().bedCm().orElse(USUAL_BED_CM);
        return java.util.Arrays.stream(SHALLOWER_CM)
                .filter(bedCm -> bedCm < nowCm)
                .<Change>mapToObj(Change.ShallowerBed::new)
                .toList();
    }

    /** Other days on which the air of the trays is so much warmer or colder than now, K. */
    private List<Change> starts(DoublePredicate changed) {
        LocalDate day = day();
        double nowC = traysC(day);
        return IntStream.of(SEASON_DAYS)
                .filter(days -> changed.test(traysC(day.plusDays(days)) - nowC))
                .<Change>mapToObj(days -> request.when() instanceof When.ReadyBy ready
                        ? new Change.LaterDay(ready.day().plusDays(days))
                        : new Change.OtherStart(day.plusDays(days)))
                .toList();
    }

    private double traysC(LocalDate day) {
        Rooms rooms = rooms(day);
        return house.kit().trays().stream()
                .mapToDouble(trays -> rooms.meanC(trays.place()))
                .min()
                .orElse(COLDEST_PLACE_C);
    }

    /** Places where grain grows, the coolest first. */
    private List<Change> frostFree() {
        Rooms rooms = rooms();
        return house.places().stream()
                .map(place -> place.name())
                .filter(place -> rooms.meanC(place) >= COLDEST_PLACE_C && rooms.meanC(place) <= WARMEST_PLACE_C)
                .sorted(Comparator.comparingDouble(rooms::meanC))
                .<Change>map(Change.OtherPlace::new)
                .toList();
    }

    private Rooms rooms() {
        return rooms(day());
    }

    private LocalDate day() {
        return request.when() instanceof When.StartOn start
                ? start.day()
                : ((When.ReadyBy) request.when())
                        .day()
                        .minusDays(Math.round(request.style().finish().restDays()) + 10);
    }

    private Rooms rooms(LocalDate day) {
        Instant from = day.atStartOfDay(house.zone()).toInstant();
        return new Rooms(house, from, from.plus(Duration.ofDays(10)));
    }

    private List<Change> nights() {
        int most = house.nights().most();
        return IntStream.rangeClosed(most + 1, Math.max(most, MOST_NIGHTS))
                .<Change>mapToObj(Change.NightActs::new)
                .toList();
    }

    private List<Change> rests() {
        double restDays = request.style().finish().restDays();
        return java.util.Arrays.stream(REST_RATIOS)
                .map(ratio -> Math.floor(ratio * restDays))
                .filter(days -> days >= 1 && days < restDays)
                .distinct()
                .<Change>mapToObj(Change.ShorterRest::new)
                .toList();
    }

    private List<Change> smaller() {
        double massKg = request.amount() instanceof Amount.RawGrain raw
                ? raw.grainKg()
                : ((Amount.FinishedMalt) request.amount()).maltKg();
        return java.util.Arrays.stream(PIECE_RATIOS)
                .map(ratio -> Math.floor(ratio * massKg * 20 + 1e-9) / 20)
                .filter(kg -> kg > 0)
                .distinct()
                .<Change>mapToObj(Change.SmallerPiece::new)
                .toList();
    }

    private List<Change> trays() {
        return house.kit().trays().stream().flatMap(this::more).toList();
    }

    private Stream<Change> more(Trays trays) {
        return IntStream.rangeClosed(trays.count() + 1, MOST_TRAYS_RATIO * trays.count())
                .mapToObj(count -> new Change.MoreTrays(trays.name(), count));
    }
}
