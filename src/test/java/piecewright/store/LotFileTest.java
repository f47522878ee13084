package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.grain.GerminationCount;
import piecewright.grain.GrainKind;
import piecewright.grain.GrainLot;
import piecewright.grain.LotMoisture;
import piecewright.grain.Treatment;
import piecewright.quantity.Moisture;
import piecewright.text.DefaultLocales;

class LotFileTest {
    private static final Path FILE = Path.of("lot.json");

    private static final String LOT = """
            { "format": 1, "name": "sack", "grain": "hull-less barley",
              "moisture": { "wetBasisPercent": "12.1 %", "sdPercent": 0.4 },
              "dishes": [ { "waterMl": 4, "corns": 100, "by24Hours": 70, "by72Hours": 97 } ],
              "thousandCornG": 44.5, "floatersPercent": 2, "treated": "no", "harvested": "2030-08-09",
              "learned": { "steepRateRatio": 1.35 } }
            """;

    static GrainLot parse(String text) {
        try {
            return LotFile.parse(FILE, text);
        } catch (StoreException refused) {
            throw new AssertionError(refused);
        }
    }

    @Test
    void readsEveryKey() {
        GrainLot lot = parse(LOT);
        assertEquals("sack", lot.name());
        assertEquals(GrainKind.HULLLESS_BARLEY, lot.kind());
        assertEquals(new LotMoisture(Moisture.ofWetBasisPercent(12.1), 0.004, true), lot.moisture());
        assertEquals(
                new GerminationCount(4, 100, OptionalInt.of(70), OptionalInt.empty(), OptionalInt.of(97)),
                lot.dishes().get(0));
        assertEquals(OptionalDouble.of(0.02), lot.size().floatersFraction());
        assertEquals(Treatment.UNTREATED, lot.treatment());
        assertEquals(OptionalDouble.of(1.35), lot.learned().steepRateRatio());
        assertEquals(OptionalDouble.empty(), lot.learned().growthRateRatio());
    }

    /** The joiners belong to the spelling of Persian, Hindi and others; nothing but joiners is no name. */
    @Test
    void namesWithJoinersAreTakenAsTheyAre() {
        for (String name : List.of("\u062c\u0648\u200c\u062f\u0648\u067e\u0631", "\u0915\u094d\u200d\u0937")) {
            assertEquals(name, parse(LOT.replace("\"sack\"", '"' + name + '"')).name());
        }
        for (String name : List.of("\u200d", "a\u202eb", "a\u0007b")) {
            assertThrows(AssertionError.class, () -> parse(LOT.replace("\"sack\"", '"' + name + '"')), name);
        }
    }

    /** Priors of the reference, judgement: 1 point guessed, 0.3 measured. */
    @Test
    void aGuessIsLessSureThanAMeasurement() {
        GrainLot guessed = parse(
                LOT.replace("\"wetBasisPercent\": \"12.1 %\", \"sdPercent\": 0.4", "\"guessedWetBasisPercent\": 12"));
        assertEquals(new LotMoisture(Moisture.ofWetBasisPercent(12), 0.01, false), guessed.moisture());
        GrainLot measured = parse(LOT.replace(", \"sdPercent\": 0.4", ""));
        assertEquals(0.003, measured.moisture().sdFraction(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "ar-EG", "th-TH-u-ca-buddhist-nu-thai", "de-DE"})
    void readsTheSameUnderEveryDefaultLocale(String tag) {
        assertEquals(parse(LOT), DefaultLocales.under(tag, () -> parse(LOT)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    "format": 1            | "format": 2             | key "format" must be 1, not 2
                    "format": 1, | | key "format" is missing; add it
                    "treated"              | "traeted"               | key "traeted" is not known here; did you mean "treated"?
                    "waterMl"              | "waterML"               | key "dishes[0].waterML" is not known here; did you mean "waterMl"?
                    "name": "sack",        |                         | key "name" is missing; add it
                    "name": "sack"         | "name": 7               | key "name" must be text in quotes, not 7
                    "name": "sack"         | "name": "  "            | key "name" must not be empty
                    "name": "sack"         | "name": "a\\nb"         | key "name" holds a line end or control character
                    "name": "sack"         | "name": null            | key "name" must not be null; give a value or leave the key out
                    "name": "sack"         | "name": "a", "name": "b" | a key stands here twice
                    hull-less barley       | barly                   | key "grain" "barly" is not a grain; did you mean "barley"?
                    hull-less barley       | maize and more          | known here: barley, hull-less barley, wheat
                    "12.1 %"               | "12.1"                  | key "moisture.wetBasisPercent" "12.1" is not a percentage: the unit is missing; write it like 12.5 %
                    "12.1 %"               | "12,345 %"              | could mean 12345 or 12.345
                    "12.1 %"               | 45                      | key "moisture.wetBasisPercent" must be from 4 to 25, not 45
                    "12.1 %"               | [12]                    | key "moisture.wetBasisPercent" must be a number, not a list of 1
                    "12.1 %"               | true                    | key "moisture.wetBasisPercent" must be a number, not true
                    "12.1 %"               | NaN                     | line 2, column
                    "12.1 %"               | 1e999                   | must be from 4 to 25, not 1E+999
                    "wetBasisPercent": "12.1 %", |                   | key "moisture.wetBasisPercent" or "guessedWetBasisPercent" must be given, one of the two
                    "corns": 100           | "corns": 100.5          | key "dishes[0].corns" must be a whole number from 1 to 10000, not 100.5
                    "corns": 100           | "corns": 0              | key "dishes[0].corns" must be from 1 to 10000, not 0
                    "by72Hours": 97        | "by72Hours": 60         | key "dishes[0]": impossible value: cumulative counts must rise
                    "by24Hours": 70, "by72Hours": 97 | "by48Hours": 101 | key "dishes[0]": impossible value: cumulative counts must rise
                    "treated": "no"        | "treated": "maybe"      | key "treated" must be "no", "yes" or "unknown", not "maybe"
                    2030-08-09             | 2030-02-30              | key "harvested" "2030-02-30" is not a day from 1990 to 2200; write it like 2031-03-19
                    44.5                   | "44.5 kg"               | key "thousandCornG" must be from 6 to 99
                    { "steepRateRatio": 1.35 } | 5                   | key "learned" must be a block { … }, not 5
                    1.35                   | 9                       | key "learned.steepRateRatio" must be from 0.4 to 3, not 9
                    1.35                   | "9 %"                   | key "learned.steepRateRatio" must be a plain number without quotes
                    1.35 } }               | 1.35 }                  | the text ends too early; close every bracket
                    1.35 } }               | 1.35 } } x              | this is not JSON
                    [ {                    | {                       | this is not JSON
                    """)
    void refusesInOneLineWithFileKeyAndMend(String from, String to, String part) {
        String broken = LOT.replace(from, to == null ? "" : to);
        assertTrue(!broken.equals(LOT), from);
        var refused = assertThrows(StoreException.class, () -> LotFile.parse(FILE, broken));
        assertTrue(refused.getMessage().startsWith("lot.json: "), refused.getMessage());
        assertTrue(refused.getMessage().contains(part), refused.getMessage());
        assertEquals(1, refused.getMessage().lines().count());
        assertEquals(FILE, refused.path());
    }
}
