package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.text.DefaultLocales;
import piecewright.text.DisplayUnits;
import piecewright.text.PlanSamples;
import piecewright.text.SurenessSamples;
import piecewright.text.Wording;
import tools.jackson.databind.JsonNode;

class PlanJsonTest {
    @TempDir
    private Path folder;

    private static String write() {
        return new PlanJson(new Wording(DisplayUnits.metric(), PlanSamples.OSLO)).write(PlanSamples.plan());
    }

    @Test
    void carriesEveryKeyOfTheDocument() throws StoreException {
        JsonNode root = JsonText.parse(Path.of("plan.json"), write());
        assertEquals(1, root.get("format").intValue());
        JsonNode plan = root.get("plan");
        assertEquals(
                "[style, title, lot, timeZone, startsAt, readyAt, rawGrainKg, finishedMaltKg, scaleMaltKg, colourEbc, checks, acts,"
                        + " phases, findings]",
                plan.propertyNames().toString());
        assertEquals("2031-03-21T18:00:00+01:00", plan.get("startsAt").stringValue());
        assertEquals("2031-04-21T00:00:00+02:00", plan.get("readyAt").stringValue());
        assertEquals("5.100", plan.get("rawGrainKg").toString(), "to the gram");
        assertEquals("4.001", plan.get("finishedMaltKg").toString());
        JsonNode raise = plan.get("acts").get(1);
        assertEquals(
                "[id, kind, title, startsAt, minutes, earliest, latest, hardLatest, place, setC,"
                        + " gateMoistureWetBasisFraction, expect, whatToDo, lookFor, why, cautions, cautionKinds]",
                raise.propertyNames().toString());
        assertEquals("raise", raise.get("kind").stringValue());
        assertEquals(30, raise.get("minutes").intValue());
        assertEquals(
                "{\"massKg\":4.500,\"moistureWetBasisFraction\":0.1300,\"grainC\":38.0,\"acrospireFraction\":0.754}",
                raise.get("expect").toString());
        assertEquals(2, raise.get("cautions").size());
        assertTrue(raise.get("cautions").get(0).stringValue().startsWith("Fire: "));
        assertEquals(
                "6.270", plan.get("acts").get(0).get("expect").get("massKg").toString());
        assertEquals("10.00", plan.get("acts").get(0).get("waterL").toString());
        assertEquals("resting", plan.get("phases").get(0).get("kind").stringValue());
        assertEquals("warning", plan.get("findings").get(0).get("severity").stringValue());
    }

    @Test
    void bandsStandUnderTheKeyOfTheirFigureWithASuffix() throws StoreException {
        String text = new PlanJson(new Wording(DisplayUnits.metric(), PlanSamples.OSLO))
                .write(PlanSamples.plan(), SurenessSamples.sureness());
        JsonNode plan = JsonText.parse(Path.of("plan.json"), text).get("plan");
        assertEquals("[2.10,2.60,3.40]", plan.get("colourEbcBand").toString());
        assertEquals("[3.900,4.000,4.100]", plan.get("finishedMaltKgBand").toString());
        JsonNode raise = plan.get("acts").get(1);
        assertEquals(
                "[4.410,4.500,4.622]", raise.get("expect").get("massKgBand").toString());
        assertEquals(
                "[0.651,0.754,0.860]",
                raise.get("expect").get("acrospireFractionBand").toString());
        assertEquals(
                "2031-03-22T14:00:00+01:00", raise.get("startsAtBand").get(0).stringValue());
        assertEquals("0.830", raise.get("happensFraction").toString());
        JsonNode sureness = plan.get("sureness");
        assertEquals(
                "[members, softWindowsFraction, hardLimitsFraction, weakest, help, endMoistureWetBasisFractionBand,"
                        + " chitAtBand, breakAtBand]",
                sureness.propertyNames().toString());
        assertEquals("late", sureness.get("weakest").get("fault").stringValue());
        assertEquals("chilled-water", sureness.get("help").get("what").stringValue());
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "ar-EG", "th-TH-u-ca-buddhist-nu-thai", "de-DE"})
    void isTheSameUnderEveryDefaultLocale(String tag) {
        assertEquals(write(), DefaultLocales.under(tag, PlanJsonTest::write));
    }

    private static SavedBatch batch() {
        return new SavedBatch(
                UUID.fromString("0b2f6f0e-92a1-4f0e-8d39-3f5a1c1f7f11"),
                new SavedBatch.RequestTexts(
                        "pale",
                        "{ \"lot\": \"größe\" }\n",
                        "{\r\n}",
                        Map.of("finishedMaltKg", "4", "readyBy", "2031-05-01")),
                write(),
                Map.of("steep-1.soak", UUID.fromString("7d444840-9dc0-41d1-b245-5ffdce74fad2")));
    }

    @Test
    void aSavedBatchIsReadBackEqual() throws StoreException {
        Path file = folder.resolve("batch.json");
        BatchFile.write(file, batch());
        assertEquals(batch(), BatchFile.read(file));
        BatchFile.write(file, BatchFile.read(file));
        assertEquals(batch(), BatchFile.read(file));
    }

    @Test
    void aDamagedBatchIsRefused() throws StoreException, IOException {
        Path file = folder.resolve("batch.json");
        BatchFile.write(file, batch());
        String text = Files.readString(file);
        Files.writeString(file, text.replace("7d444840-9dc0-41d1-b245-5ffdce74fad2", "7d444840"));
        assertEquals(
                file + ": key \"calendarUids.steep-1.soak\" \"7d444840\" is not a UUID; take the file from a copy",
                assertThrows(StoreException.class, () -> BatchFile.read(file)).getMessage());
        Files.writeString(file, text.substring(0, text.length() / 2));
        assertTrue(assertThrows(StoreException.class, () -> BatchFile.read(file))
                .getMessage()
                .contains("ends too early"));
    }
}
