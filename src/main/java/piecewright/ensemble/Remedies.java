package piecewright.ensemble;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import piecewright.house.House;
import piecewright.house.Kit;
import piecewright.house.LocalHours;
import piecewright.house.NightActs;
import piecewright.house.Person;
import piecewright.house.Trays;
import piecewright.plan.Blueprint;
import piecewright.plan.KilnDoubt;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.plan.Rooms;

/** Finds what would make a plan surer, by planning with each change and following that plan too. */
public final class Remedies {
    /** Judgement: less than three chances in a hundred more is no help. */
    private static final double LEAST_GAIN_FRACTION = 0.03;
    /** Judgement: a plan this sure needs no help. */
    private static final double SURE_FRACTION = 0.95;
    /** Judgement: standard deviation of ln steep rate after a test soak of 100 g. */
    private static final double SOAKED_SD = 0.10;
    /** Judgement: standard deviation of ln raw moisture after a meter or an oven: 0.3 points of twelve. */
    private static final double METERED_SD = 0.025;
    /** Judgement: ice in the bucket cools the water by so much. */
    public static final double CHILLED_K = 3;
    /** Judgement: and never below. */
    private static final double COLDEST_WATER_C = 4;
    /** Judgement: growth hardly goes on in a colder place. */
    private static final double COLDEST_PLACE_C = 8;

    private final Planner planner;
    private final Instant asOf;
    private final int members;

    public Remedies(Planner planner, Instant asOf, int members) {
        this.planner = planner;
        this.asOf = asOf;
        this.members = members;
    }

    /** The change that helps most; empty when the plan is sure enough or nothing helps by much. */
    public Optional<Help> best(Blueprint blueprint, Belief belief, Verdict now) {
        if (now.softFraction() >= SURE_FRACTION) return Optional.empty();
        return Stream.of(Remedy.values())
                .flatMap(remedy -> tried(remedy, blueprint, belief).stream())
                .filter(help -> help.softFraction() >= now.softFraction() + LEAST_GAIN_FRACTION)
                .max(Comparator.comparingDouble(Help::softFraction));
    }

    /** What one change makes of the plan; empty where it cannot be made or leaves no plan. */
    public Optional<Help> tried(Remedy remedy, Blueprint blueprint, Belief belief) {
        return switch (remedy) {
            case TEST_SOAK -> known(remedy, blueprint, belief, Doubt.STEEP_RATE);
            case WEIGH_THE_KILN -> known(remedy, blueprint, belief, Doubt.AIR_FLOW);
            case MEASURE_MOISTURE -> known(remedy, blueprint, belief, Doubt.RAW_MOISTURE);
            case CHILLED_WATER, COLDER_PLACE, NIGHT_ACT, HOUR_EARLIER ->
                changed(remedy, blueprint)
                        .flatMap(house -> planned(blueprint.request(), house))
                        .flatMap(plan -> soft(plan, belief))
                        .map(soft -> new Help(remedy, soft));
        };
    }

    private Optional<Help> known(Remedy remedy, Blueprint blueprint, Belief belief, Doubt doubt) {
        double sd = switch (doubt) {
            case STEEP_RATE -> SOAKED_SD;
            case RAW_MOISTURE -> METERED_SD;
            default -> KilnDoubt.MEASURED_LN_RATIO;
        };
        if (belief.sd(doubt) <= sd * 1.01) return Optional.empty();
        return soft(blueprint, belief.known(doubt, sd)).map(soft -> new Help(remedy, soft));
    }

    private Optional<Double> soft(Blueprint blueprint, Belief belief) {
        return Ensemble.of(blueprint, asOf)
                .map(ensemble -> ensemble.sureness(belief, members).verdict().softFraction());
    }

    private Optional<Blueprint> planned(PlanRequest request, House house) {
        PlanRequest wish = new PlanRequest(request.style(), request.lot(), house, request.amount(), request.when());
        return planner.plan(wish)
                .match(
                        planned -> Optional.of(planner.blueprint(wish, planned.plan())),
                        (PlanResult.NotPossible none) -> Optional.empty());
    }

    private static Optional<House> changed(Remedy remedy, Blueprint blueprint) {
        House house = blueprint.request().house();
        return switch (remedy) {
            case CHILLED_WATER ->
                house.steepWaterC() > COLDEST_WATER_C
                        ? Optional.of(watered(house, Math.max(COLDEST_WATER_C, house.steepWaterC() - CHILLED_K)))
                        : Optional.empty();
            case NIGHT_ACT ->
                house.nights().most() == 0
                        ? Optional.of(nights(house, new NightActs(1, LocalTime.of(22, 30), LocalTime.of(6, 0))))
                        : Optional.empty();
            case HOUR_EARLIER ->
                Optional.of(peopled(
                        house,
                        house.people().stream().map(Remedies::homeEarlier).toList()));
            case COLDER_PLACE -> colder(blueprint);
            case TEST_SOAK, WEIGH_THE_KILN, MEASURE_MOISTURE -> Optional.empty();
        };
    }

    private static House watered(House house, double steepWaterC) {
        return new House(
                house.name(), house.zone(), house.places(), steepWaterC, house.people(), house.nights(), house.kit());
    }

    private static House nights(House house, NightActs nights) {
        return new House(
                house.name(), house.zone(), house.places(), house.steepWaterC(), house.people(), nights, house.kit());
    }

    private static House peopled(House house, List<Person> people) {
        return new House(
                house.name(), house.zone(), house.places(), house.steepWaterC(), people, house.nights(), house.kit());
    }

    /** Every stretch that begins after noon begins an hour sooner. */
    private static Person homeEarlier(Person person) {
        Map<DayOfWeek, List<LocalHours>> week = new EnumMap<>(DayOfWeek.class);
        person.week()
                .forEach((day, hours) -> week.put(
                        day,
                        hours.stream()
                                .map(each -> each.fromInclusive().isAfter(LocalTime.NOON.plusHours(1))
                                        ? new LocalHours(each.fromInclusive().minusHours(1), each.untilExclusive())
                                        : each)
                                .toList()));
        return new Person(person.name(), week, person.exceptions());
    }

    /** The trays moved to the coldest other place that growth still goes on in; empty when there is none colder. */
    private static Optional<House> colder(Blueprint blueprint) {
        House house = blueprint.request().house();
        Instant end = blueprint.plan().subject().readyAt();
        Rooms rooms = new Rooms(house, blueprint.origin(), end);
        String now = blueprint.setup().outfit().growing().place();
        return house.places().stream()
                .map(place -> place.name())
                .filter(name -> rooms.meanC(name) < rooms.meanC(now) - 1 && rooms.meanC(name) >= COLDEST_PLACE_C)
                .min(Comparator.comparingDouble(rooms::meanC))
                .map(place -> moved(house, place));
    }

    private static House moved(House house, String place) {
        List<Trays> trays = house.kit().trays().stream()
                .map(each -> new Trays(each.name(), place, each.count(), each.areaM2()))
                .toList();
        Kit kit = new Kit(
                house.kit().vessels(),
                trays,
                house.kit().boxes(),
                house.kit().heaters(),
                house.kit().scale());
        return new House(
                house.name(), house.zone(), house.places(), house.steepWaterC(), house.people(), house.nights(), kit);
    }
}
