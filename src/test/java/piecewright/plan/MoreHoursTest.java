package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import piecewright.house.House;
import piecewright.house.LocalHours;
import piecewright.house.Person;
import piecewright.plan.Styled.Family;

/** Another person's hours make a plan cheaper or leave it as it was, but for a hundredth and a minute, on 200 seeds of every style. */
class MoreHoursTest {
    private static final int HOUSEHOLDS = 200;

    /** Wishes of each family that must come to a plan, or nothing would be shown of it. */
    private static final Map<Family, Integer> LEAST =
            Map.of(Family.FLOOR, 85, Family.HEAPED, 15, Family.COUCHED, 15, Family.STEWED, 15, Family.ROASTED, 24);

    private record Pair(long seed, double costMinutes, double withHelpMinutes) {
        boolean solvable() {
            return costMinutes < Double.POSITIVE_INFINITY;
        }

        boolean dearer() {
            return withHelpMinutes > 1.01 * costMinutes + 1;
        }
    }

    private static PlanRequest helped(PlanRequest request) {
        House like = request.house();
        LocalHours afternoon = new LocalHours(LocalTime.of(13, 0), LocalTime.of(19, 0));
        List<Person> people = new ArrayList<>(like.people());
        people.add(new Person(
                "a helper",
                Map.of(DayOfWeek.TUESDAY, List.of(afternoon), DayOfWeek.FRIDAY, List.of(afternoon)),
                Map.of()));
        House house = new House(
                like.name(), like.zone(), like.places(), like.steepWaterC(), people, like.nights(), like.kit());
        return new PlanRequest(request.style(), request.lot(), house, request.amount(), request.when());
    }

    private static double cost(PlanRequest request) {
        return new Planner(ModelParameters.defaults())
                .plan(request)
                .match(planned -> planned.plan().costMinutes(), notPossible -> Double.POSITIVE_INFINITY);
    }

    @Test
    void moreHoursNeverCostMore() {
        List<Pair> pairs = LongStream.range(0, HOUSEHOLDS)
                .parallel()
                .mapToObj(seed -> {
                    PlanRequest request = Styled.request(seed);
                    return new Pair(seed, cost(request), cost(helped(request)));
                })
                .toList();
        assertEquals(List.of(), pairs.stream().filter(Pair::dearer).toList());
        Map<Family, Long> solvable = pairs.stream()
                .filter(Pair::solvable)
                .collect(Collectors.groupingBy(
                        pair -> Styled.family(pair.seed()), () -> new EnumMap<>(Family.class), Collectors.counting()));
        LEAST.forEach(
                (family, least) -> assertTrue(solvable.getOrDefault(family, 0L) >= least, family + " in " + solvable));
    }
}
