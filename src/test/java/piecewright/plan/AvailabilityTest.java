package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.LocalHours;
import piecewright.house.NightActs;
import piecewright.house.Person;

class AvailabilityTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

    private static House house(List<Person> people, NightActs nights) {
        House like = Households.house(
                "a house", new AirTemperature.Constant(12), Households.officeWeek(), Households.boxKiln(false));
        return new House(like.name(), BERLIN, like.places(), 12, people, nights, like.kit());
    }

    private static LocalHours hours(int from, int until) {
        return new LocalHours(LocalTime.of(from, 0), LocalTime.of(until % 24, 0));
    }

    private static Instant at(String local) {
        return ZonedDateTime.of(java.time.LocalDateTime.parse(local), BERLIN).toInstant();
    }

    private static Availability march(House house) {
        return Availability.of(house, at("2027-03-26T00:00"), at("2027-03-31T00:00"));
    }

    @Test
    void theNightTheClocksChangeIsAnHourShorter() {
        Person one = new Person("one", Map.of(DayOfWeek.SUNDAY, List.of(hours(0, 6))), Map.of());
        Availability availability = march(house(List.of(one), NightActs.none()));
        Availability.Stretch sunday = availability.stretches().get(0);
        assertEquals(Duration.ofHours(5), Duration.between(sunday.from(), sunday.until()));
    }

    @Test
    void oneAfterTheOtherAttendTogetherButNobodyWorksThrough() {
        Person one = new Person("one", Map.of(DayOfWeek.FRIDAY, List.of(hours(8, 12))), Map.of());
        Person two = new Person("two", Map.of(DayOfWeek.FRIDAY, List.of(hours(11, 15))), Map.of());
        Availability availability = march(house(List.of(one, two), NightActs.none()));
        Instant ten = at("2027-03-26T10:00");
        assertEquals(Optional.of(at("2027-03-26T12:00")), availability.workableUntil(ten));
        assertEquals(Optional.of(at("2027-03-26T15:00")), availability.attendedUntil(ten));
    }

    @Test
    void aDatedExceptionReplacesTheDay() {
        Person one = new Person(
                "one", Map.of(DayOfWeek.FRIDAY, List.of(hours(8, 12))), Map.of(LocalDate.of(2027, 3, 26), List.of()));
        assertEquals(List.of(), march(house(List.of(one), NightActs.none())).stretches());
    }

    @Test
    void midnightAsAnEndMeansTheEndOfTheDay() {
        Person one = new Person("one", Map.of(DayOfWeek.FRIDAY, List.of(hours(20, 24))), Map.of());
        Availability.Stretch friday =
                march(house(List.of(one), NightActs.none())).stretches().get(0);
        assertEquals(at("2027-03-27T00:00"), friday.until());
    }

    @Test
    void nightsReachOverMidnight() {
        NightActs nights = new NightActs(1, LocalTime.of(22, 30), LocalTime.of(6, 0));
        Availability availability = march(house(List.of(), nights));
        assertEquals(Optional.of(at("2027-03-27T06:00")), availability.nightUntil(at("2027-03-27T01:00")));
        assertEquals(Optional.empty(), availability.nightUntil(at("2027-03-27T12:00")));
    }
}
