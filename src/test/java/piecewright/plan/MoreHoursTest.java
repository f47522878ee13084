package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import piecewright.house.House;
import piecewright.house.LocalHours;
import piecewright.house.Person;

/** Another person's hours make a plan cheaper or leave it as it was, but for a hundredth and a minute, on 200 seeds. */
class MoreHoursTest {
    private static final int HOUSEHOLDS = 200;

    private record Pair(long seed, double costMinutes, double withHelpMinutes) {
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
        List<Pair> dearer = LongStream.range(0, HOUSEHOLDS)
                .parallel()
                .mapToObj(seed -> {
                    PlanRequest request = Seeded.request(seed);
                    return new Pair(seed, cost(request), cost(helped(request)));
                })
                .filter(Pair::dearer)
                .toList();
        assertEquals(List.of(), dearer);
    }
}
