package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.LocalHours;

/**
 * Plans whose steep and growth cross the nights on which clocks change, and one zone with an odd offset. The days are
 * those of the tz database; expected offsets are asked of it, not typed.
 */
class PlanClockChangeTest {
    @ParameterizedTest
    @CsvSource(textBlock = """
                    Europe/Berlin,       2027-03-26
                    Europe/Berlin,       2027-10-29
                    America/New_York,    2027-03-12
                    America/New_York,    2027-11-05
                    Australia/Lord_Howe, 2027-04-02
                    Australia/Lord_Howe, 2027-10-01
                    Asia/Kathmandu,      2027-03-27
                    """)
    void everyActKeepsLocalHoursAndElapsedTime(ZoneId zone, LocalDate start) {
        House like = Households.house(
                "a house", new AirTemperature.Daily(8, 13), Households.officeWeek(), Households.boxKiln(false));
        House house = new House(
                like.name(), zone, like.places(), like.steepWaterC(), like.people(), like.nights(), like.kit());
        PlanResult result = new Planner(ModelParameters.defaults())
                .plan(new PlanRequest(
                        Households.pale(),
                        Households.barley(),
                        house,
                        new PlanRequest.Amount.RawGrain(4),
                        new PlanRequest.When.StartOn(start)));
        Plan plan = ((PlanResult.Planned) result).plan();
        assertTrue(crossesChange(plan, zone)
                || zone.getRules().isFixedOffset()
                || zone.getId().contains("Kathmandu"));
        for (Act act : plan.acts()) assertLocalHours(act, house);
        for (int i = 0; i + 1 < plan.acts().size(); i++) {
            Act act = plan.acts().get(i);
            if (act.kind() != ActKind.SOAK) continue;
            Duration soaked =
                    Duration.between(act.startsAt(), plan.acts().get(i + 1).startsAt());
            Phase phase = plan.phases().stream()
                    .filter(one -> one.from().equals(act.startsAt()))
                    .findFirst()
                    .orElseThrow();
            assertEquals(soaked, Duration.between(phase.from(), phase.until()));
            assertTrue(soaked.toMinutes() >= 30 && soaked.toHours() <= 40, act.id() + " " + soaked);
        }
    }

    private static boolean crossesChange(Plan plan, ZoneId zone) {
        Instant last = plan.acts().get(plan.acts().size() - 1).startsAt();
        return !zone.getRules()
                .getOffset(plan.startsAt())
                .equals(zone.getRules().getOffset(last));
    }

    private static void assertLocalHours(Act act, House house) {
        ZonedDateTime local = act.startsAt().atZone(house.zone());
        List<LocalHours> hours = house.people().get(0).hoursOn(local.toLocalDate());
        LocalTime ends = act.endsAt().atZone(house.zone()).toLocalTime();
        boolean inside = hours.stream()
                .anyMatch(one ->
                        !local.toLocalTime().isBefore(one.fromInclusive()) && !ends.isAfter(one.untilExclusive()));
        assertTrue(inside, act.id() + " at " + local);
    }
}
