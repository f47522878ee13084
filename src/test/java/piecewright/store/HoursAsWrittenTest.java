package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.plan.Availability;

/**
 * Somebody is there when the clock on the wall shows one of the hours as they are written in the house's file, and never
 * else: compared as text with what java.time says the wall shows, minute by minute over each change of the clock.
 */
class HoursAsWrittenTest {
    private static final int HOUSES = 60;

    @Test
    void whatEndsInsideTheSkippedHourEndsAsTheClockJumps() throws StoreException {
        Availability there =
                there("Europe/Berlin", LocalDate.of(2027, 3, 28), List.of("00:30-02:30"), "01:00", "01:01");
        assertTrue(there.stretches()
                .contains(new Availability.Stretch(
                        Instant.parse("2027-03-27T23:30:00Z"), Instant.parse("2027-03-28T01:00:00Z"))));
    }

    @Test
    void whatBeginsInsideTheSkippedHourBeginsAsTheClockJumps() throws StoreException {
        Availability there =
                there("Europe/Berlin", LocalDate.of(2027, 3, 28), List.of("02:30-04:00"), "01:00", "01:01");
        assertTrue(there.stretches()
                .contains(new Availability.Stretch(
                        Instant.parse("2027-03-28T01:00:00Z"), Instant.parse("2027-03-28T02:00:00Z"))));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
                    Europe/Berlin,        2027-03-28
                    Europe/Berlin,        2027-10-31
                    America/New_York,     2027-03-14
                    America/New_York,     2027-11-07
                    Australia/Lord_Howe,  2027-04-04
                    Australia/Lord_Howe,  2027-10-03
                    America/Sao_Paulo,    2018-11-04
                    America/Sao_Paulo,    2018-02-17
                    Asia/Beirut,          2021-03-28
                    Antarctica/Troll,     2027-03-28
                    Pacific/Apia,         2011-12-30
                    Asia/Kathmandu,       2027-03-28
                    """)
    void somebodyIsThereExactlyWhenTheWallShowsTheirHours(String zone, LocalDate day) throws StoreException {
        Random random = new Random(day.toEpochDay());
        for (int house = 0; house < HOUSES; house++) {
            List<String> hours = hours(random);
            String nightFrom = clock(random.nextInt(24 * 60));
            String nightUntil = clock(random.nextInt(24 * 60));
            if (nightFrom.equals(nightUntil)) continue;
            Availability there = there(zone, day, hours, nightFrom, nightUntil);
            String told = zone + " " + day + " " + hours + " night " + nightFrom + "-" + nightUntil;
            Instant noon = day.atTime(12, 0).atZone(ZoneId.of(zone)).toInstant();
            for (int minute = -36 * 60; minute <= 36 * 60; minute += 5) {
                Instant at = noon.plus(Duration.ofMinutes(minute));
                String wall = LocalDateTime.ofInstant(at, ZoneId.of(zone))
                        .toLocalTime()
                        .toString();
                boolean shown = hours.stream().anyMatch(one -> inside(wall, one.substring(0, 5), one.substring(6)));
                assertEquals(shown, there.workableUntil(at).isPresent(), told + " at " + at + " " + wall);
                boolean night = nightFrom.compareTo(nightUntil) < 0
                        ? inside(wall, nightFrom, nightUntil)
                        : wall.compareTo(nightFrom) >= 0 || wall.compareTo(nightUntil) < 0;
                assertEquals(night, there.nightUntil(at).isPresent(), told + " night at " + at + " " + wall);
                there.workableUntil(at).ifPresent(until -> assertTrue(until.isAfter(at), told));
            }
        }
    }

    private static boolean inside(String wall, String from, String until) {
        return wall.compareTo(from) >= 0 && wall.compareTo(until) < 0;
    }

    /** One to three stretches, apart by a quarter of an hour or more, in steps of five minutes. */
    private static List<String> hours(Random random) {
        List<String> hours = new ArrayList<>();
        int from = 5 * random.nextInt(40);
        while (from < 24 * 60 && hours.size() < 3) {
            int until = Math.min(24 * 60, from + 5 * (1 + random.nextInt(60)));
            hours.add(clock(from) + "-" + clock(until));
            from = until + 15 + 5 * random.nextInt(80);
        }
        return hours;
    }

    private static String clock(int minutes) {
        return String.format("%02d:%02d", minutes / 60, minutes % 60 / 5 * 5);
    }

    private static Availability there(
            String zone, LocalDate day, List<String> hours, String nightFrom, String nightUntil) throws StoreException {
        String written = "[\"" + String.join("\",\"", hours) + "\"]";
        String house = """
                {"format":1,"name":"h","timeZone":"%s","places":[{"name":"room","humidityPercent":70,"air":{"constantC":12}}],
                 "steepWaterC":10,"people":[{"name":"me","week":{"weekdays":%s,"weekend":["03:00-03:05"]},
                 "exceptions":[%s]}],"nightActs":{"most":1,"from":"%s","until":"%s"},
                 "kit":{"vessels":[],"trays":[],"boxes":[],"heaters":[],"scale":{"stepG":1,"capacityKg":10}}}
                """.formatted(zone, written, exceptions(day, written), nightFrom, nightUntil);
        ZoneId there = ZoneId.of(zone);
        return Availability.of(
                HouseFile.parse(Path.of("house.json"), house),
                day.minusDays(3).atStartOfDay(there).toInstant(),
                day.plusDays(3).atStartOfDay(there).toInstant());
    }

    /** Dated hours win over the week's: the same around the day, so that both kinds are read. */
    private static String exceptions(LocalDate day, String written) {
        List<String> dated = new ArrayList<>();
        for (int by = -4; by <= 4; by++) {
            dated.add("{\"date\":\"" + day.plusDays(by) + "\",\"hours\":" + written + "}");
        }
        return String.join(",", dated);
    }
}
