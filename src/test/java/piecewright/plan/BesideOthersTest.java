package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import piecewright.house.House;
import piecewright.plan.Availability.Stretch;
import piecewright.plan.Booking.KitKind;
import piecewright.plan.Booking.Taken;

/** Two pieces of one household on the same days: nobody and nothing is booked twice. */
class BesideOthersTest {
    private static final int HOUSEHOLDS = 24;
    private static final Planner PLANNER = new Planner(ModelParameters.defaults());

    private record Two(long seed, PlanRequest first, Booking one, PlanRequest second, Booking other) {}

    private static Optional<Booking> booking(PlanRequest request, String name) {
        return PLANNER.plan(request)
                .match(
                        planned -> PLANNER.booking(
                                name,
                                request,
                                planned.plan().outcome().rawGrainKg(),
                                planned.plan().acts()),
                        not -> Optional.empty());
    }

    private static Stream<Two> two(long seed) {
        PlanRequest first = Seeded.request(seed);
        Optional<Booking> one = booking(first, "first");
        if (one.isEmpty()) return Stream.empty();
        PlanRequest second = first.beside(List.of(one.get()));
        return booking(second, "second").map(other -> new Two(seed, first, one.get(), second, other)).stream();
    }

    private static boolean meet(Stretch one, Stretch other) {
        return one.from().isBefore(other.until()) && other.from().isBefore(one.until());
    }

    @Test
    void nobodyAndNothingIsBookedTwice() {
        List<Two> pairs = LongStream.range(0, HOUSEHOLDS)
                .parallel()
                .boxed()
                .flatMap(BesideOthersTest::two)
                .toList();
        assertTrue(pairs.size() > HOUSEHOLDS / 4, "households that can make two: " + pairs.size());
        assertTrue(pairs.stream().filter(BesideOthersTest::sameDays).count() > 2, "some must be made on the same days");
        pairs.forEach(BesideOthersTest::handsSuffice);
        pairs.forEach(BesideOthersTest::kitSuffices);
    }

    private static boolean sameDays(Two two) {
        Instant ends = two.one().hands().get(two.one().hands().size() - 1).until();
        Instant otherEnds =
                two.other().hands().get(two.other().hands().size() - 1).until();
        return meet(
                new Stretch(two.one().hands().get(0).from(), ends),
                new Stretch(two.other().hands().get(0).from(), otherEnds));
    }

    /** Where two acts meet, two different people have the hours; those of the night are one person's. */
    private static void handsSuffice(Two two) {
        Instant from = two.one().hands().get(0).from().minusSeconds(864_000);
        Availability whole = Availability.of(two.first().house(), from, from.plusSeconds(6_000_000));
        for (Stretch mine : two.one().hands()) {
            for (Stretch theirs : two.other().hands()) {
                if (!meet(mine, theirs)) continue;
                long people = two.first().house().people().stream()
                        .filter(person -> Availability.of(
                                        two.first().house().withPeople(List.of(person)),
                                        from,
                                        from.plusSeconds(6_000_000))
                                .workableUntil(theirs.from())
                                .isPresent())
                        .count();
                assertTrue(people >= 2, "seed " + two.seed() + ": " + mine + " and " + theirs);
                assertTrue(whole.workableUntil(theirs.from()).isPresent(), "not in the night");
            }
        }
    }

    private static void kitSuffices(Two two) {
        for (Taken mine : two.one().kit()) {
            for (Taken theirs : two.other().kit()) {
                boolean same = mine.kind() == theirs.kind() && mine.name().equals(theirs.name());
                if (!same || !meet(mine.stretch(), theirs.stretch())) continue;
                String told = "seed " + two.seed() + ": " + mine + " and " + theirs;
                assertTrue(mine.pieces() + theirs.pieces() <= pieces(two.first().house(), mine), told);
                assertTrue(mine.areaM2() + theirs.areaM2() <= areaM2(two.first().house(), mine) + 1e-9, told);
            }
        }
    }

    private static long pieces(House house, Taken taken) {
        if (taken.kind() == KitKind.TRAYS) return 2;
        if (taken.kind() != KitKind.VESSELS) return 1;
        return house.kit().vessels().stream()
                .filter(vessel -> vessel.place().equals(taken.name()))
                .count();
    }

    private static double areaM2(House house, Taken taken) {
        if (taken.kind() != KitKind.TRAYS) return 0;
        return house.kit().trays().stream()
                .filter(trays -> trays.place().equals(taken.name()))
                .mapToDouble(trays -> trays.totalAreaM2())
                .sum();
    }

    @Test
    void whatOnlyFitsAloneIsSaidWithWhoHoldsIt() {
        PlanRequest demo = DemoPlan.request();
        Instant from = DemoPlan.plan().startsAt().minusSeconds(40 * 86_400L);
        Stretch always = new Stretch(from, from.plusSeconds(80 * 86_400L));
        Booking hog = new Booking("the big one", List.of(), List.of(Taken.heater("plywood box kiln", always)));
        PlanResult result = PLANNER.plan(demo.beside(List.of(hog)));
        List<Obstacle> why = ((PlanResult.NotPossible) result).obstacles();
        assertEquals(new Obstacle.HeldByOthers(List.of("the big one")), why.get(0));
    }

    @Test
    void oneOfTwoPeopleIsLeftFree() {
        Instant eight = Instant.parse("2030-05-06T08:00:00Z");
        Stretch morning = new Stretch(eight, eight.plusSeconds(4 * 3600));
        List<List<Stretch>> people = new ArrayList<>(List.of(List.of(morning), List.of(morning)));
        HandsTaken hands = new HandsTaken(people, List.of());
        hands.take(new Stretch(eight.plusSeconds(3600), eight.plusSeconds(5400)));
        assertEquals(
                List.of(
                        new Stretch(eight, eight.plusSeconds(3600)),
                        new Stretch(eight.plusSeconds(5400), morning.until())),
                hands.byPerson().get(0));
        assertEquals(List.of(morning), hands.byPerson().get(1));
        hands.take(new Stretch(eight.plusSeconds(3600), eight.plusSeconds(5400)));
        assertFalse(hands.byPerson().get(1).contains(morning), "the second act at the same time takes the other one");
    }
}
