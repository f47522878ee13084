package piecewright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityParserTest {
    private static double read(String measure, QuantityParser parser, String typed) throws UnreadableException {
        return switch (measure) {
            case "mass" -> parser.massKg(typed);
            case "temperature" -> parser.temperatureC(typed);
            case "colour" -> parser.colourEbc(typed);
            case "share" -> parser.shareFraction(typed);
            case "volume" -> parser.volumeL(typed);
            case "area" -> parser.areaM2(typed);
            case "length" -> parser.lengthCm(typed);
            case "time" -> parser.timeHours(typed);
            default -> throw new IllegalArgumentException(measure);
        };
    }

    /** Factors: avoirdupois pound and US gallon, exact; SRM and Lovibond lines of the units page, published. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    mass        | 5.2 kg         | 5.2
                    mass        | 5,2kg          | 5.2
                    mass        | 850 g          | 0.85
                    mass        | 6 lb 15 oz     | 3.146797
                    mass        | 6lb15oz        | 3.146797
                    mass        | 6 LBS          | 2.721554
                    mass        | 15 oz          | 0.425243
                    mass        | 1 kg 250 g     | 1.25
                    mass        | 1,234.5 g      | 1.2345
                    mass        | 1.234,5 g      | 1.2345
                    mass        | 1,234,567 g    | 1234.567
                    mass        | 0,125 kg       | 0.125
                    mass        | ٥٫٥ kg         | 5.5
                    mass        | ๕.๕ kg         | 5.5
                    temperature | 64 F           | 17.777778
                    temperature | 64°F           | 17.777778
                    temperature | -4 °C          | -4
                    temperature | −4 c           | -4
                    temperature | 18.5 deg C     | 18.5
                    colour      | 3.5 EBC        | 3.5
                    colour      | 10 SRM         | 19.685039
                    colour      | 60 °L          | 158.496063
                    colour      | 60 L           | 158.496063
                    colour      | 60 Lovibond    | 158.496063
                    share       | 12.1 %         | 0.121
                    share       | 95%            | 0.95
                    volume      | 12 L           | 12
                    volume      | 500 mL         | 0.5
                    volume      | 3 gal          | 11.356235
                    volume      | 13 fl oz       | 0.384456
                    area        | 0.36 m²        | 0.36
                    area        | 0,36 m2        | 0.36
                    area        | 4 sq ft        | 0.371612
                    length      | 5 cm           | 5
                    length      | 2 in           | 5.08
                    length      | 2"             | 5.08
                    length      | 1 ft 2 in      | 35.56
                    length      | 3 m            | 300
                    time        | 8 h            | 8
                    time        | 7 h 30 min     | 7.5
                    time        | 90min          | 1.5
                    time        | 2 days 4 hours | 52
                    """)
    void readsWhatPeopleType(String measure, String typed, double expected) throws UnreadableException {
        assertEquals(expected, read(measure, QuantityParser.needingUnits(Locale.ENGLISH), typed), 1e-5);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    en | mass        | 1,234 kg  | "1,234" could mean 1234 or 1.234
                    de | mass        | 1.234 kg  | "1.234" could mean 1234 or 1,234
                    en | mass        | 5.2       | the unit is missing
                    en | mass        | kg        | a number is missing at character 1
                    en | mass        | 5 stone   | "stone" at character 3 is not a unit of weight
                    en | mass        | 5 °C      | "°C" at character 3 is not a unit of weight
                    en | mass        | -5 kg     | must not be below zero
                    en | mass        | 1.2.3 kg  | more than one decimal sign
                    en | mass        | 1,23,4 kg | more than one decimal sign
                    en | mass        | 5. kg     | a digit before and after
                    en | mass        | .5 kg     | a digit before and after
                    en | mass        | 6 lb 20 oz | "20 oz" is as much as one lb or more
                    en | mass        | 6 oz 2 lb | "2 lb" at character 6 is not a unit
                    en | mass        | 6 lb 5    | the last number has no unit
                    en | mass        | 1e3 kg    | "e3 kg" at character 2
                    en | mass        | NaN kg    | a number is missing at character 1
                    en | mass        | 99999999 kg | too large
                    en | mass        | 1234567890123456 kg | too many digits
                    en | mass        | ' '       | nothing was typed
                    en | temperature | 3 m       | is not a unit of temperature
                    en | temperature | -300 C    | below absolute zero
                    en | share       | 5 kg      | write it like 12.5 %
                    en | length      | 5 cm²     | is not a length
                    """)
    void refusesInOneSentenceWithPlaceAndExample(String locale, String measure, String typed, String part) {
        var parser = QuantityParser.needingUnits(Locale.forLanguageTag(locale));
        var refusal = assertThrows(UnreadableException.class, () -> read(measure, parser, typed));
        assertTrue(refusal.getMessage().contains(part), refusal.getMessage());
        assertTrue(refusal.getMessage().contains("write it like"), refusal.getMessage());
        assertEquals(1, refusal.getMessage().lines().count());
    }

    @Test
    void aLocalesOwnDecimalSignIsNotAmbiguous() throws UnreadableException {
        assertEquals(1.234, QuantityParser.needingUnits(Locale.GERMAN).massKg("1,234 kg"), 1e-9);
        assertEquals(1.234, QuantityParser.needingUnits(Locale.ENGLISH).massKg("1.234 kg"), 1e-9);
        assertEquals(1.234, QuantityParser.needingUnits(Locale.ROOT).massKg("1.234 kg"), 1e-9);
    }

    @Test
    void takesABareNumberInThePersonsOwnUnits() throws UnreadableException {
        assertEquals(5.56, QuantityParser.forPerson(DisplayUnits.metric()).massKg("5.56"), 1e-9);
        assertEquals(0.45359237, QuantityParser.forPerson(DisplayUnits.us()).massKg("1"), 1e-9);
        assertEquals(0, QuantityParser.forPerson(DisplayUnits.us()).temperatureC("32"), 1e-9);
        assertEquals(25 / 12.7, QuantityParser.forPerson(DisplayUnits.us()).colourEbc("1"), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "ar-EG", "th-TH-u-ca-buddhist-nu-thai", "de-DE"})
    void readsTheSameUnderEveryDefaultLocale(String tag) {
        double massKg = DefaultLocales.under(tag, () -> {
            try {
                return QuantityParser.needingUnits(Locale.ROOT).massKg("6 POUNDS 15 OUNCES")
                        + QuantityParser.needingUnits(Locale.ROOT).volumeL("1 LITRE");
            } catch (UnreadableException refused) {
                throw new AssertionError(refused);
            }
        });
        assertEquals(4.146797, massKg, 1e-6);
    }

    @Test
    void neverFailsOtherwiseThanByRefusing() {
        var random = new Random(20_300_101);
        String alphabet = "0123456789.,-+ kglbozFC°%mL²\"'\u202f\u0661\u0e51٫e∞/\n\0\ud83c";
        var parser = QuantityParser.needingUnits(Locale.ENGLISH);
        for (int i = 0; i < 3000; i++) {
            StringBuilder typed = new StringBuilder();
            for (int j = random.nextInt(14); j > 0; j--)
                typed.append(alphabet.charAt(random.nextInt(alphabet.length())));
            try {
                double massKg = parser.massKg(typed.toString());
                assertTrue(massKg >= 0 && massKg <= 1e6, () -> typed + " gave " + massKg);
            } catch (UnreadableException refusal) {
                assertEquals(1, refusal.getMessage().lines().count(), typed::toString);
            }
        }
    }
}
