package piecewright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.journal.Entry;
import piecewright.journal.Report.Tare;
import piecewright.plan.ActKind;
import piecewright.text.LineReading.Unclear;
import piecewright.text.LineReading.Understood;

class LineReaderTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    /** Saturday, 20 March 2027, 14:00 in Berlin. */
    private static final Instant NOW = Instant.parse("2027-03-20T13:00:00Z");

    private static final List<Tare> VESSELS = List.of(new Tare("blue tub", 1.84), new Tare("net", 0.06));

    private static DisplayUnits metric(String tag) {
        return new DisplayUnits(UnitSystem.METRIC, ColourUnit.EBC, Locale.forLanguageTag(tag));
    }

    private static LineReading read(DisplayUnits units, Instant now, String line) {
        var expecting = new LineReader.Expecting(now, Optional.of(ActKind.DRAIN), OptionalDouble.of(5.5));
        return new LineReader(units, BERLIN, VESSELS).read(line, expecting);
    }

    /** What was understood, read back in English; or the question and its choices. */
    private static String told(DisplayUnits units, Instant now, String line) {
        LineReading reading = read(units, now, line);
        if (reading instanceof Unclear unclear) {
            return "? " + unclear.question()
                    + unclear.choices().stream().map(one -> " | " + one).collect(Collectors.joining());
        }
        Understood understood = (Understood) reading;
        EntryWords words = new EntryWords(new DisplayUnits(units.system(), units.colour(), Locale.ENGLISH), BERLIN);
        return understood.reports().stream()
                .map(report -> words.dated(new Entry(9000, understood.at(), now, Optional.empty(), report)))
                .collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '>', textBlock = """
            drained 5.56 kg 21:40 yesterday > Fri 19 Mar 21:40: done: Drain; Fri 19 Mar 21:40: the grain weighs 5.560 kg
            couch 49 C                      > Sat 20 Mar 14:00: 49 °C in the middle of the grain
            couch 49                        > Sat 20 Mar 14:00: 49 °C in the middle of the grain
            acrospire 3 8 12 6 1            > Sat 20 Mar 14:00: 30 corns: 3 about a quarter, 8 about half, 12 about three quarters, 6 the whole corn, 1 out of the husk; mean 69 % of the corn
            acrospires 2, 3, 8, 12, 6, 1    > Sat 20 Mar 14:00: 32 corns: 2 with none to see, 3 about a quarter, 8 about half, 12 about three quarters, 6 the whole corn, 1 out of the husk; mean 65 % of the corn
            6 lb 15 oz                      > Sat 20 Mar 14:00: the grain weighs 3.147 kg
            5.56                            > Sat 20 Mar 14:00: the grain weighs 5.560 kg
            17.20 kg in the blue tub        > Sat 20 Mar 14:00: 17.200 kg on the scale in the blue tub, less its 1.840 kg: the grain weighs 15.360 kg
            chitted 41 of 50                > Sat 20 Mar 14:00: 41 of 50 corns chitted (82 %)
            41/50 chitted                   > Sat 20 Mar 14:00: 41 of 50 corns chitted (82 %)
            kiln 65 C                       > Sat 20 Mar 14:00: heat set to 65 °C
            kiln 150 F                      > Sat 20 Mar 14:00: heat set to 65.6 °C
            smells of apples                > Sat 20 Mar 14:00: seen: smells of apples
            started 13:30                   > Sat 20 Mar 13:30: begun: Drain
            started soaking at 18:30        > Fri 19 Mar 18:30: begun: Soak
            turned fri 18:30                > Fri 19 Mar 18:30: done: Turn
            turned, bed 17 C, smells of cucumber > Sat 20 Mar 14:00: 17 °C in the grain; Sat 20 Mar 14:00: done: Turn; Sat 20 Mar 14:00: seen: smells of cucumber
            sprinkled 150 mL 7:05 am        > Sat 20 Mar 07:05: done: Sprinkle, 150 mL of water
            loaded 7.1 kg 2 h ago           > Sat 20 Mar 12:00: done: Load the kiln; Sat 20 Mar 12:00: the grain weighs 7.100 kg
            air-on 61 C                     > Sat 20 Mar 14:00: 61 °C in the air below the bed
            vents half open                 > Sat 20 Mar 14:00: vents 50 % open
            moisture 43.5 %                 > Sat 20 Mar 14:00: a dried sample had 43.5 % moisture
            sample 100 g to 57 g            > Sat 20 Mar 14:00: a dried sample had 43 % moisture
            colour 3.5 EBC                  > Sat 20 Mar 14:00: colour 3.5 EBC
            water smells sour               > Sat 20 Mar 14:00: seen: water smells sour
            power out 13:00                 > Sat 20 Mar 13:00: seen: power out
            power back                      > Sat 20 Mar 14:00: seen: power back
            a few fuzzy corns               > Sat 20 Mar 14:00: seen: a few fuzzy corns
            vessel blue tub 1.84 kg         > Sat 20 Mar 14:00: the empty blue tub weighs 1.840 kg
            vessel blue tub 1484 kg         > ? No vessel weighs 1484.000 kg.
            sprinkled 0 mL                  > ? Water must be more than nothing; leave it out if there was none.
            packed 6.7 kg 13:10             > Sat 20 Mar 13:10: done: Pack the couch; Sat 20 Mar 13:10: the grain weighs 6.700 kg
            looked at the couch, couch 24 C > Sat 20 Mar 14:00: 24 °C in the middle of the grain; Sat 20 Mar 14:00: done: Look at the couch
            broke the couch 12:10           > Sat 20 Mar 12:10: done: Break the couch
            stewed 10:00                    > Sat 20 Mar 10:00: done: Stew
            roasted 1.9 kg                  > Sat 20 Mar 14:00: done: Roast; Sat 20 Mar 14:00: the grain weighs 1.900 kg
            note moved it to the cellar at 5 > Sat 20 Mar 14:00: note: moved it to the cellar at 5
            correct 7 15.36 kg              > Sat 20 Mar 14:00: entry 7 should say: the grain weighs 15.360 kg
            correct 7: drained 22:10 yesterday > Fri 19 Mar 22:10: entry 7 should say: done: Drain
            void 7                          > Sat 20 Mar 14:00: entry 7 is void
            drained 2027-03-18 06:10        > Thu 18 Mar 06:10: done: Drain
            drained 18 march 06:10          > Thu 18 Mar 06:10: done: Drain
            drained 9:40 pm yesterday       > Fri 19 Mar 21:40: done: Drain
            """)
    void aLineIsReadBackAsItWasMeant(String line, String told) {
        assertEquals(told, told(metric("en-GB"), NOW, line));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '>', textBlock = """
            drained at 9 yesterday    > ? Morning or evening? | 2027-03-19 09:00 | 2027-03-19 21:00
            drained 22:10 today       > ? Sat 20 Mar 22:10 still lies ahead. Write down what happened, with the day and hour it was.
            drained 25:10             > ? “25:10” is no time of day; write it like 21:40 or 9:40 pm.
            drained yesterday         > ? At what hour on Fri 19 Mar? Add it, such as 21:40.
            drained 3/4 18:00         > ? “3/4” could be two days. Which? | 2027-04-03 | 2027-03-04
            49                        > ? Is 49 a weight or a temperature? | 49 kg | bed 49 C
            chitted 82 %              > ? “82 %” of how many corns? | chitted 82 of 50 | chitted 82 of 100
            chitted 60 of 50          > ? 60 of 50 cannot be: more have chitted than were counted.
            acrospire 3 8 12          > ? Acrospires are counted in five classes (about a quarter, half, three quarters, the whole corn, out of the husk) or six (first those with none to see); here are 3.
            5.5 kg in the red bucket  > ? No vessel called “red bucket” is remembered. Weigh it empty and have it remembered, or set the scale to zero with it. | blue tub | net
            5.5 kg 5.6 kg             > ? There are two weights here. Which is the whole piece? | 5.5 kg | 5.6 kg
            150 mL                    > ? Was the water sprinkled, or filled in for a soak? | sprinkled | soaked
            drained gloriously        > ? What does “gloriously” mean? Nothing was kept. Write it another way, or as a note. | note drained gloriously
            1.5 kg in the blue tub    > ? 1.500 kg is less than the empty blue tub (1.840 kg).
            sample 57 g to 100 g      > ? A sample cannot gain weight by drying; write it like “sample 100 g to 57 g”.
            couch 490 C               > ? 490 °C cannot be right here.
            """)
    void whatIsUnclearIsAskedNotGuessed(String line, String asked) {
        assertEquals(asked, told(metric("en-GB"), NOW, line));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '>', textBlock = """
            de-DE > drained 5,56 kg 21:40 yesterday > 5.560 kg
            de-DE > drained 5.56 kg 21:40 yesterday > 5.560 kg
            tr-TR > DRAINED 5,56 KG 21:40 YESTERDAY > 5.560 kg
            de-DE > drained 5,560 kg 21:40 Freitag  > 5.560 kg
            tr-TR > drained 5,560 kg 21:40 Cuma     > 5.560 kg
            ar-EG > drained ٥٫٥٦ kg 21:40 yesterday > 5.560 kg
            """)
    void figuresAndDaysFollowTheLocale(String tag, String line, String weight) {
        assertEquals(
                "Fri 19 Mar 21:40: done: Drain; Fri 19 Mar 21:40: the grain weighs " + weight,
                told(metric(tag), NOW, line));
    }

    @Test
    void aThousandThatCouldBeADecimalIsAskedAbout() {
        assertTrue(told(metric("en-GB"), NOW, "drained 5,560 kg").startsWith("? "));
    }

    /** In the United States a clock time without am or pm is one of two, unless one of them still lies ahead. */
    @Test
    void halfDaysAreAskedAboutWhereClocksHaveThem() {
        DisplayUnits us = new DisplayUnits(UnitSystem.US, ColourUnit.SRM, Locale.US);
        assertEquals(
                "? Morning or evening? | 2027-03-19 09:40 | 2027-03-19 21:40", told(us, NOW, "drained 9:40 yesterday"));
        assertEquals("Sat 20 Mar 09:40: done: Drain", told(us, NOW, "drained 9:40 today"));
        assertEquals("Sat 20 Mar 14:00: 120 °F in the middle of the grain", told(us, NOW, "couch 120"));
    }

    /** Berlin, 28 March 2027: 02:00 to 03:00 never was. Source: the zone's rules, EU summer time. */
    @Test
    void anHourTheClocksSkippedIsAskedAbout() {
        assertEquals(
                "? There was no 02:30 on Sun 28 Mar: the clocks went forward over it. Which is meant?"
                        + " | 2027-03-28 01:30 | 2027-03-28 03:30",
                told(metric("en-GB"), Instant.parse("2027-03-28T10:00:00Z"), "drained 02:30"));
    }

    /** Berlin, 31 October 2027: 02:00 to 03:00 came twice. */
    @Test
    void anHourThatCameTwiceIsAskedAboutAndCanBeSaidWithItsOffset() {
        Instant noon = Instant.parse("2027-10-31T11:00:00Z");
        assertEquals(
                "? The clocks went back that night and this hour came twice. Which one?"
                        + " | 2027-10-31 02:30 +02:00 | 2027-10-31 02:30 +01:00",
                told(metric("en-GB"), noon, "drained 02:30"));
        assertEquals(
                "Sun 31 Oct 02:30 +01:00: done: Drain", told(metric("en-GB"), noon, "drained 2027-10-31 02:30 +01:00"));
    }
}
