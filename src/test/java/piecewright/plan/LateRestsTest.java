package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import piecewright.house.Heater;
import piecewright.house.House;
import piecewright.house.LocalHours;
import piecewright.house.NightActs;
import piecewright.house.Person;
import piecewright.plan.Timetable.Visit;

/**
 * Made-up batches of every style in the hands of people who come late, leave acts out and stay away for days: after
 * every act the rest is planned anew. Checked by the acts of the plan and the house alone.
 */
class LateRestsTest {
    private static final long SEEDS = Long.getLong("piecewright.lateRests", 8);
    private static final long FIRST = Long.getLong("piecewright.lateRests.first", 0);
    private static final int MOST_ACTS = 40;
    private static final double STILL_MALT_RATIO = 0.75;
    private static final double UNTOLD_RATIO = 0.02;
    private static final Continuation CONTINUATION = new Continuation(ModelParameters.defaults());

    @Test
    void aBatchUnderWayAlwaysHasAPlanThatHurtsNobodyAndKeepsTheOrderOfGrowth() {
        int followed = 0;
        for (long seed = FIRST; seed < FIRST + SEEDS; seed++) {
            PlanRequest wish = seed % 2 == 0 ? Styled.request(seed) : Seeded.request(seed);
            if (new Planner(ModelParameters.defaults()).plan(wish) instanceof PlanResult.Planned planned) {
                follow(wish, planned.plan(), seed);
                followed++;
            }
        }
        assertTrue(followed >= SEEDS / 2, "most can be begun: " + followed);
    }

    /**
     * Everybody is called away soon after the grain was spread, and comes back days after it has grown: between too
     * little and too much it is never the ungrown grain that is packed, stewed or loaded.
     */
    @Test
    void whoIsAwayWhileItGrowsLoadsNothingUngrown() {
        int followed = 0;
        for (long seed = FIRST; seed < FIRST + SEEDS; seed++) {
            PlanRequest wish = seed % 2 == 0 ? Styled.request(seed) : Seeded.request(seed);
            if (!(new Planner(ModelParameters.defaults()).plan(wish) instanceof PlanResult.Planned planned)) continue;
            Plan plan = planned.plan();
            List<Visit> all = Timetable.of(plan).visits();
            int spread = all.indexOf(Timetable.of(plan).first(ActKind.FLOOR)) + 1;
            Instant now = all.get(spread - 1).at().plus(Duration.ofMinutes(20));
            for (int days : new int[] {4, 7, 10}) {
                PlanRequest away = wish.withHouse(away(wish.house(), now.plus(Duration.ofHours(30)), days));
                Begun begun = new Begun(plan.outcome().rawGrainKg(), all.subList(0, spread), Found.nothing(), all, now);
                String told = "seed " + seed + " " + wish.style().key() + ", away for " + days + " days";
                Plan rest = CONTINUATION.continued(away, begun).match(PlanResult.Planned::plan, not -> {
                    throw new AssertionError(told + ": " + not.obstacles());
                });
                check(away, rest, begun, told);
            }
            followed++;
        }
        assertTrue(followed >= SEEDS / 2, "most can be begun: " + followed);
    }

    private static House away(House house, Instant from, int days) {
        LocalDate first = LocalDate.ofInstant(from, house.zone());
        List<Person> people = new ArrayList<>();
        for (Person person : house.people()) {
            Map<LocalDate, List<LocalHours>> exceptions = new HashMap<>(person.exceptions());
            for (int day = 0; day < days; day++) exceptions.put(first.plusDays(day), List.of());
            people.add(new Person(person.name(), person.week(), exceptions));
        }
        return new House(
                house.name(), house.zone(), house.places(), house.steepWaterC(), people, NightActs.none(), house.kit());
    }

    private static void follow(PlanRequest wish, Plan first, long seed) {
        Random random = new Random(seed);
        Plan plan = first;
        List<Visit> done = new ArrayList<>();
        Instant now = plan.startsAt();
        for (int acts = 0; acts < MOST_ACTS; acts++) {
            List<Visit> all = Timetable.of(plan).visits();
            Optional<Visit> next = nextDone(all.subList(done.size(), all.size()), random);
            if (next.isEmpty()) return;
            Visit act = next.get();
            Instant at = act.at().plus(lateness(random));
            done.add(new Visit(act.id(), act.kind(), act.number(), at));
            now = at.plus(Duration.ofMinutes(random.nextInt(3) == 0 ? random.nextInt(600) : 1));
            String told = "seed " + seed + " " + wish.style().key() + " after " + act.id() + " at " + now;
            Begun begun = new Begun(first.outcome().rawGrainKg(), done, Found.nothing(), all, now);
            PlanResult rest = CONTINUATION.continued(wish, begun);
            plan = rest.match(PlanResult.Planned::plan, not -> {
                throw new AssertionError(told + ": " + not.obstacles());
            });
            check(wish, plan, begun, told);
            assertEquals(
                    times(plan),
                    times(((PlanResult.Planned) CONTINUATION.continued(wish, begun)).plan()),
                    told + ": same input, same plan");
        }
    }

    /** The next act, or, one time in three, the first one that cannot be left out. */
    private static Optional<Visit> nextDone(List<Visit> toCome, Random random) {
        boolean leavesOut = random.nextInt(3) == 0;
        return toCome.stream()
                .filter(visit -> !leavesOut || piecewright.plan.search.UnderWay.bounds(visit.kind()))
                .findFirst();
    }

    private static Duration lateness(Random random) {
        return switch (random.nextInt(8)) {
            case 0 -> Duration.ofMinutes(random.nextInt(36 * 60));
            case 1, 2 -> Duration.ofMinutes(random.nextInt(8 * 60));
            case 3, 4 -> Duration.ofMinutes(random.nextInt(60));
            default -> Duration.ZERO;
        };
    }

    private static List<String> times(Plan plan) {
        return plan.acts().stream().map(act -> act.id() + " " + act.startsAt()).toList();
    }

    private static void check(PlanRequest wish, Plan plan, Begun begun, String told) {
        List<Act> toCome =
                plan.acts().subList(begun.visits().size(), plan.acts().size());
        Availability hours =
                Availability.of(wish.house(), begun.now(), begun.now().plus(Duration.ofDays(60)));
        Set<String> ids = new HashSet<>();
        for (Act act : plan.acts()) assertTrue(ids.add(act.id()), told + ": twice " + act.id());
        int rank = 0;
        for (Act act : toCome) {
            String says = told + ": " + act.id() + " " + act.startsAt() + "\n" + times(plan);
            assertFalse(act.startsAt().isBefore(begun.now()), says);
            assertTrue(somebody(hours, act), says);
            grown(wish, act, says);
            if (piecewright.plan.search.UnderWay.bounds(act.kind())) {
                assertTrue(rank(act) >= rank, says + " comes too late");
                rank = rank(act);
            }
        }
        for (int i = 1; i < toCome.size(); i++) {
            assertTrue(!toCome.get(i - 1).endsAt().isAfter(toCome.get(i).startsAt()), told + ": " + times(plan));
        }
        heat(wish, plan, begun, hours, told);
    }

    private static boolean somebody(Availability hours, Act act) {
        return hours.nightUntil(act.startsAt()).isPresent()
                || hours.workableUntil(act.startsAt())
                        .filter(until -> !act.endsAt().isAfter(until))
                        .isPresent();
    }

    /** Grain that has not grown is neither packed nor stewed nor loaded. */
    private static void grown(PlanRequest wish, Act act, String told) {
        boolean ends = act.kind() == ActKind.PACK || act.kind() == ActKind.STEW || act.kind() == ActKind.LOAD;
        if (!ends) return;
        double least = STILL_MALT_RATIO * wish.style().growth().acceptable().lowFraction() - UNTOLD_RATIO;
        assertTrue(act.expect().acrospireFraction().orElse(0) >= least, told);
    }

    private static int rank(Act act) {
        return switch (act.kind()) {
            case SOAK -> 2 * Timetable.numberIn(act.id());
            case DRAIN -> 2 * Timetable.numberIn(act.id()) + 1;
            case HEAP -> 50;
            case FLOOR -> 51;
            case WITHER -> 52;
            case PACK -> 53;
            case BREAK -> 54;
            case STEW -> 55;
            case LOAD -> 56;
            case RAISE, LOWER, CURE -> 57;
            case OFF -> 58;
            case DEROOT -> 59;
            default -> 60;
        };
    }

    /** Between two settings of the heat somebody is there for all of it, or it may be left; the past is past. */
    private static void heat(PlanRequest wish, Plan plan, Begun begun, Availability hours, String told) {
        Instant firstThere = begun.now();
        Instant end = begun.now().plus(Duration.ofDays(20));
        while (hours.attendedUntil(firstThere).isEmpty() && firstThere.isBefore(end)) {
            firstThere = firstThere.plus(Duration.ofMinutes(1));
        }
        Act setting = null;
        for (Act act : plan.acts()) {
            boolean sets = switch (act.kind()) {
                case LOAD, RAISE, LOWER, CURE, OFF -> true;
                default -> false;
            };
            if (!sets) continue;
            if (setting != null && act.startsAt().isAfter(firstThere) && hot(wish, setting)) {
                Instant from = setting.startsAt().isBefore(firstThere) ? firstThere : setting.startsAt();
                Instant stays = hours.attendedUntil(from).orElse(from);
                assertFalse(
                        act.startsAt().isAfter(stays),
                        told + ": heat of " + setting.id() + " alone from " + from + " (stays until " + stays
                                + ") until " + act.startsAt() + "\n" + times(plan) + hours.stretches());
            }
            setting = act.kind() == ActKind.OFF ? null : act;
        }
    }

    private static boolean hot(PlanRequest wish, Act act) {
        if (act.kind() == ActKind.LOWER && act.setting().setC().isEmpty()) return false;
        String name = act.setting().place().orElseThrow();
        Heater heater = wish.house().kit().heaters().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
        boolean over = act.setting().setC().orElse(0) > 60 && !heater.control().safeUnattended();
        return over || !heater.control().holdsSetPoint();
    }
}
