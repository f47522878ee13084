package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.LocalHours;
import piecewright.house.NightActs;

class HouseFileTest {
    static final String HOUSE = """
            { "format": 1, "name": "home", "timeZone": "Europe/Oslo",
              "places": [ { "name": "garage", "kind": "garage", "air": { "lowC": 7, "highC": "52 F" } },
                          { "name": "fridge", "humidityPercent": 66, "air": { "constantC": 6 } } ],
              "steepWaterC": 9,
              "people": [ { "name": "the early riser",
                            "week": { "monday-wednesday": ["17:45-22:30", "06:00-07:00"], "friday": [], "weekend": ["07:30-24:00"] },
                            "exceptions": [ { "date": "2031-03-21", "hours": ["12:00-13:00"] } ] } ],
              "kit": { "vessels": [ { "name": "bucket", "place": "garage", "volumeL": 30 } ],
                       "trays": [ { "name": "trays", "place": "garage", "count": 2, "areaM2": 0.35 } ],
                       "boxes": [ { "name": "cooler", "place": "fridge", "volumeL": 48 } ],
                       "heaters": [ { "name": "kiln", "place": "garage", "holdsC": [30, 95], "airFlowM3PerHour": 16,
                         "powerW": 900, "lossWPerK": 2, "trayAreaM2": 0.5, "holdsSetPoint": true, "rampsItself": false,
                         "safeUnattended": false, "thermostatErrorK": 3 } ],
                       "scale": { "stepG": 5, "capacityKg": 20 } } }
            """;

    @TempDir
    private Path folder;

    @Test
    void readsPlacesHoursAndKit() throws StoreException {
        House house = HouseFile.parse(Path.of("house.json"), HOUSE);
        assertEquals(0.75, house.place("garage").humidityFraction(), "garage or shed 75 %, judgement of the reference");
        assertEquals(0.66, house.place("fridge").humidityFraction());
        assertEquals(20 / 1.8, ((AirTemperature.Daily) house.place("garage").air()).highC(), 1e-9);
        var person = house.people().get(0);
        List<LocalHours> weekday = List.of(hours(6, 7), new LocalHours(LocalTime.of(17, 45), LocalTime.of(22, 30)));
        assertEquals(weekday, person.week().get(DayOfWeek.TUESDAY));
        assertEquals(List.of(), person.hoursOn(LocalDate.of(2031, 3, 28)));
        assertEquals(List.of(hours(12, 13)), person.hoursOn(LocalDate.of(2031, 3, 21)));
        assertEquals(List.of(), person.hoursOn(LocalDate.of(2031, 3, 20)), "thursday is not named");
        assertEquals(
                List.of(new LocalHours(LocalTime.of(7, 30), LocalTime.MIDNIGHT)),
                person.week().get(DayOfWeek.SUNDAY));
        assertEquals(NightActs.none(), house.nights());
        assertEquals(0.7, house.kit().trays().get(0).totalAreaM2(), 1e-12);
        assertEquals(95, house.kit().heaters().get(0).air().range().highC());
    }

    private static LocalHours hours(int from, int until) {
        return new LocalHours(LocalTime.of(from, 0), LocalTime.of(until, 0));
    }

    @Test
    void aLoggerFileLiesBesideTheHouse() throws StoreException, IOException {
        Path file = folder.resolve("house.json");
        Files.writeString(file, HOUSE.replace("\"lowC\": 7, \"highC\": \"52 F\"", "\"loggerCsv\": \"air.csv\""));
        Files.writeString(folder.resolve("air.csv"), "time,airC\n2031-03-19T18:00,7.5\n");
        assertEquals(
                1,
                ((AirTemperature.Logged) HouseFile.read(file).place("garage").air())
                        .readings()
                        .size());
        Files.delete(folder.resolve("air.csv"));
        var refused = assertThrows(StoreException.class, () -> HouseFile.read(file));
        assertEquals(
                folder.resolve("air.csv") + ": there is no such file; check the name and the folder",
                refused.getMessage());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    Europe/Oslo          | Europe/Olso        | key "timeZone" "Europe/Olso" is not a time zone; did you mean "Europe/Oslo"?
                    Europe/Oslo          | +01:00             | key "timeZone" "+01:00" is not a time zone; write it like "Europe/Oslo"
                    "kind": "garage"     | "kind": "garrage"  | key "places[0].kind" is not a kind of room; did you mean "garage"?
                    "kind": "garage",    |                    | key "places[0].humidityPercent" or "kind" is missing
                    "lowC": 7, "highC": "52 F" | "lowC": 7    | key "places[0].air.highC" is missing; add it
                    "lowC": 7            | "lowC": 12         | key "places[0].air": impossible value: lowC must be at most highC
                    "52 F"               | "52"               | key "places[0].air.highC" "52" is not a temperature: the unit is missing
                    "constantC": 6       | "constantC": 6, "lowC": 4 | key "places[1].air.constantC" or "lowC" with "highC"
                    "constantC": 6       | "loggerCsv": "../x.csv" | key "places[1].air.loggerCsv" must be the plain name of a file in the same folder
                    "constantC": 6       | "loggerCsv": "/etc/passwd" | key "places[1].air.loggerCsv" must be the plain name
                    "constantC": 6       | "days": []         | key "places[1].air": impossible value: days must not be empty
                    "name": "fridge"     | "name": "garage"   | key "places[1].name" is taken by another place
                    "steepWaterC": 9     | "steepWaterC": 60  | key "steepWaterC" must be from 0 to 40, not 60
                    "monday-wednesday"   | "munday"           | key "people[0].week.munday" is not a day; did you mean "monday"?
                    "friday"             | "tuesday"          | key "people[0].week.tuesday" gives hours of tuesday a second time
                    "06:00-07:00"        | "18:00-19:00"      | key "people[0].week.monday-wednesday" has hours that overlap
                    "06:00-07:00"        | "07:00-06:00"      | "07:00-06:00" ends before it starts; write hours past midnight as two stretches
                    "06:00-07:00"        | "6-7"              | "6-7" is not a stretch of hours; write it like 17:45-22:30
                    "06:00-07:00"        | "06:00-27:00"      | "06:00-27:00" is not a stretch of hours; hours go from 00:00 to 24:00
                    "2031-03-21"         | "21 March"         | key "people[0].exceptions[0].date" "21 March" is not a day
                    "place": "fridge"    | "place": "frigde"  | key "kit.boxes[0].place" is not one of the house's places; did you mean "fridge"?
                    "name": "cooler"     | "name": "bucket"   | key "kit.boxes[0].name" is taken by another item of the kit
                    "areaM2": 0.35       | "areaM2": "35 kg"  | key "kit.trays[0].areaM2" "35 kg" is not an area
                    [30, 95]             | [95, 30]           | key "kit.heaters[0].holdsC" must be [low, high]; swap the two figures
                    [30, 95]             | 95                 | key "kit.heaters[0].holdsC" must be two figures [low, high], not 95
                    "safeUnattended": false | "safeUnattended": "no" | key "kit.heaters[0].safeUnattended" must be true or false without quotes
                    "powerW": 900        | "powerW": "900 W"  | key "kit.heaters[0].powerW" must be a plain number without quotes
                    "scale": { "stepG": 5, "capacityKg": 20 } | "boxes2": [] | key "kit.boxes2" is not known here; did you mean "boxes"?
                    """)
    void refusesInOneLineWithFileKeyAndMend(String from, String to, String part) {
        String broken = HOUSE.replace(from, to == null ? "" : to);
        assertTrue(!broken.equals(HOUSE), from);
        var refused = assertThrows(StoreException.class, () -> HouseFile.parse(Path.of("house.json"), broken));
        assertTrue(refused.getMessage().startsWith("house.json: "), refused.getMessage());
        assertTrue(refused.getMessage().contains(part), refused.getMessage());
        assertEquals(1, refused.getMessage().lines().count());
    }
}
