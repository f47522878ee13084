package piecewright.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.house.AirTemperature;
import piecewright.house.AirTemperature.Daily;
import piecewright.house.AirTemperature.Reading;
import piecewright.house.Place;

class ClimateTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

    private static Place place(AirTemperature air) {
        return new Place("shed", air, 0.75);
    }

    private static double at(Surroundings air, ZoneId zone, LocalDateTime local) {
        Duration since = Duration.between(air.origin(), local.atZone(zone).toInstant());
        return air.airC(since.toSeconds() / 3600.0);
    }

    /** By definition: low at five, high at three in the afternoon, half a cosine between, on any clock. */
    @ParameterizedTest
    @ValueSource(strings = {"Europe/Berlin", "America/New_York", "Asia/Kathmandu", "Australia/Lord_Howe", "UTC"})
    void everyDayHasItsLowAtFiveAndItsHighAtThreeAcrossClockChanges(String zoneName) {
        ZoneId zone = ZoneId.of(zoneName);
        LocalDate first = LocalDate.of(2030, 3, 1);
        Surroundings air = Climate.of(
                place(new Daily(8, 16)),
                zone,
                first.atStartOfDay(zone).toInstant(),
                first.plusDays(260).atStartOfDay(zone).toInstant());
        for (int day = 0; day < 259; day++) {
            LocalDate date = first.plusDays(day);
            assertEquals(8, at(air, zone, date.atTime(5, 0)), 1e-9, date.toString());
            assertEquals(16, at(air, zone, date.atTime(15, 0)), 1e-9, date.toString());
            assertEquals(12, at(air, zone, date.atTime(10, 0)), 1e-9, date.toString());
        }
        assertEquals(Optional.empty(), air.repeatsAfter());
        assertEquals(0.75, air.humidityFraction());
    }

    /** By hand: the night of 30 to 31 March 2030 has 13 instead of 14 hours from high to low; its middle is 12 °C. */
    @Test
    void theShortNightOfTheSpringChangeIsShorter() {
        Instant from = LocalDate.of(2030, 3, 30).atStartOfDay(BERLIN).toInstant();
        Surroundings air = Climate.of(place(new Daily(8, 16)), BERLIN, from, from.plus(Duration.ofDays(3)));
        assertEquals(16, air.airC(15), 1e-9);
        assertEquals(12, air.airC(15 + 6.5), 1e-9);
        assertEquals(8, air.airC(15 + 13), 1e-9);
        assertEquals(16, air.airC(15 + 13 + 10), 1e-9);
    }

    /** By definition: a whole local day that a zone skips does not upset the curve. */
    @Test
    void aSkippedDayIsPassedOver() {
        ZoneId apia = ZoneId.of("Pacific/Apia");
        Instant from = LocalDate.of(2011, 12, 28).atStartOfDay(apia).toInstant();
        Surroundings air = Climate.of(place(new Daily(20, 30)), apia, from, from.plus(Duration.ofDays(4)));
        for (int step = 0; step < 4 * 288; step++) {
            double airC = air.airC(step / 12.0);
            assertTrue(airC >= 20 - 1e-9 && airC <= 30 + 1e-9, airC + " at step " + step);
        }
    }

    @Test
    void aConstantPlaceIsConstant() {
        Instant from = Instant.parse("2031-01-10T09:13:00Z");
        Surroundings air =
                Climate.of(place(new AirTemperature.Constant(4)), BERLIN, from, from.plus(Duration.ofDays(9)));
        assertEquals(4, air.airC(0));
        assertEquals(4, air.airC(100.3));
        assertEquals(from, air.origin());
    }

    /** By definition: dated days hold on their date, the first before, the last after, and it says from when. */
    @Test
    void datedDaysHoldAndTheLastRepeats() {
        TreeMap<LocalDate, Daily> days = new TreeMap<>();
        days.put(LocalDate.of(2030, 10, 26), new Daily(2, 10));
        days.put(LocalDate.of(2030, 10, 27), new Daily(4, 14));
        Instant from = LocalDate.of(2030, 10, 25).atStartOfDay(BERLIN).toInstant();
        Surroundings air =
                Climate.of(place(new AirTemperature.Dated(days)), BERLIN, from, from.plus(Duration.ofDays(6)));
        assertEquals(2, at(air, BERLIN, LocalDateTime.of(2030, 10, 25, 5, 0)), 1e-9);
        assertEquals(10, at(air, BERLIN, LocalDateTime.of(2030, 10, 26, 15, 0)), 1e-9);
        assertEquals(4, at(air, BERLIN, LocalDateTime.of(2030, 10, 27, 5, 0)), 1e-9);
        assertEquals(4, at(air, BERLIN, LocalDateTime.of(2030, 10, 30, 5, 0)), 1e-9);
        assertEquals(14, at(air, BERLIN, LocalDateTime.of(2030, 10, 30, 15, 0)), 1e-9);
        assertEquals(Optional.of(Instant.parse("2030-10-27T23:00:00Z")), air.repeatsAfter());
    }

    @Test
    void datedDaysThatReachFarEnoughRepeatNothing() {
        TreeMap<LocalDate, Daily> days = new TreeMap<>();
        days.put(LocalDate.of(2030, 6, 9), new Daily(2, 10));
        Instant from = LocalDate.of(2030, 6, 9).atStartOfDay(BERLIN).toInstant();
        Surroundings air =
                Climate.of(place(new AirTemperature.Dated(days)), BERLIN, from, from.plus(Duration.ofHours(24)));
        assertEquals(Optional.empty(), air.repeatsAfter());
    }

    /** By hand: readings every three hours over two days that rise by 1 °C each. */
    @Test
    void readingsAreJoinedByLinesAndTheirLastDayRepeats() {
        Instant first = Instant.parse("2031-05-01T00:00:00Z");
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i <= 16; i++) readings.add(new Reading(first.plus(Duration.ofHours(3L * i)), 10 + i));
        Surroundings air = Climate.of(
                place(new AirTemperature.Logged(readings)),
                ZoneId.of("UTC"),
                first.minus(Duration.ofHours(24)),
                first.plus(Duration.ofDays(5)));
        assertEquals(10.5, air.airC(24 + 1.5), 1e-9);
        assertEquals(26, air.airC(24 + 48), 1e-9);
        assertEquals(22, air.airC(24 + 48 + 12), 1e-9, "twelve hours on is like twelve hours after the day began");
        assertEquals(22, air.airC(24 + 48 + 60), 1e-9);
        assertEquals(14, air.airC(12), 1e-9, "the day before is like the first day");
        assertEquals(Optional.of(first.plus(Duration.ofHours(48))), air.repeatsAfter());
    }

    /** By definition: repeated by local time, so an hour's clock change moves the pattern by an hour. */
    @Test
    void repeatedReadingsKeepLocalTimeOverAClockChange() {
        Instant noon = LocalDateTime.of(2030, 10, 25, 12, 0).atZone(BERLIN).toInstant();
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i <= 24; i++) {
            readings.add(new Reading(noon.plus(Duration.ofHours(i)), i == 6 ? 20 : 10));
        }
        Surroundings air =
                Climate.of(place(new AirTemperature.Logged(readings)), BERLIN, noon, noon.plus(Duration.ofDays(4)));
        assertEquals(20, at(air, BERLIN, LocalDateTime.of(2030, 10, 25, 18, 0)), 1e-9);
        assertEquals(20, at(air, BERLIN, LocalDateTime.of(2030, 10, 26, 18, 0)), 1e-9);
        assertEquals(20, at(air, BERLIN, LocalDateTime.of(2030, 10, 28, 18, 0)), 1e-9);
        assertEquals(10, at(air, BERLIN, LocalDateTime.of(2030, 10, 28, 20, 0)), 1e-9);
    }

    /** By definition: less than a day of readings leaves a gap, which a straight line closes. */
    @Test
    void aShortLogIsClosedToADay() {
        Instant first = Instant.parse("2031-05-01T00:00:00Z");
        List<Reading> readings = List.of(new Reading(first, 10), new Reading(first.plus(Duration.ofHours(12)), 22));
        Surroundings air = Climate.of(
                place(new AirTemperature.Logged(readings)),
                ZoneId.of("UTC"),
                first.minus(Duration.ofHours(6)),
                first.plus(Duration.ofDays(3)));
        assertEquals(16, air.airC(0), 1e-9);
        assertEquals(16, air.airC(6 + 18), 1e-9);
        assertEquals(16, air.airC(6 + 24 + 6), 1e-9);
        assertEquals(22, air.airC(6 + 24 + 12), 1e-9);
    }

    @Test
    void oneReadingIsAConstant() {
        Instant first = Instant.parse("2031-05-01T00:00:00Z");
        Surroundings air = Climate.of(
                place(new AirTemperature.Logged(List.of(new Reading(first, 13)))),
                BERLIN,
                first.minus(Duration.ofDays(2)),
                first.plus(Duration.ofDays(2)));
        assertEquals(13, air.airC(1), 1e-9);
        assertEquals(13, air.airC(48), 1e-9);
        assertEquals(13, air.airC(77.7), 1e-9);
    }

    @Test
    void anEmptyStretchIsRefused() {
        Instant from = Instant.parse("2031-05-01T00:00:00Z");
        Place place = place(new Daily(1, 2));
        assertThrows(IllegalArgumentException.class, () -> Climate.of(place, BERLIN, from, from));
    }
}
