package piecewright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.quantity.Moisture;

class QuantityFormatTest {
    private static final QuantityFormat METRIC = new QuantityFormat(DisplayUnits.metric());
    private static final QuantityFormat US = new QuantityFormat(DisplayUnits.us());

    /** Shops weigh out by the 100 g or the quarter of a pound; never less than is needed. */
    @Test
    void whatIsBoughtIsRoundedUp() {
        assertEquals("6.3 kg", METRIC.shopMass(6.21));
        assertEquals("6.3 kg", METRIC.shopMass(6.3));
        assertEquals("10 lb", US.shopMass(4.53592));
        assertEquals("10.25 lb", US.shopMass(4.54));
        assertEquals("25 kg", METRIC.sack(25));
        assertEquals("2.27 kg", METRIC.sack(2.27));
        assertEquals("50 lb", US.sack(22.6796));
        assertEquals("55 lb 1.8 oz", US.sack(25));
    }

    @Test
    void aTimerIsSetToSecondsWhereThereAreAny() {
        assertEquals("8 min 30 s", METRIC.timer(Duration.ofSeconds(510)));
        assertEquals("48 min", METRIC.timer(Duration.ofMinutes(48)));
        assertEquals("1 h 20 min 40 s", METRIC.timer(Duration.ofSeconds(4840)));
        assertEquals("20 s", METRIC.timer(Duration.ofSeconds(20)));
        assertEquals("2 h", METRIC.timer(Duration.ofHours(2)));
    }

    @Test
    void writesEachQuantityInThePersonsUnits() {
        assertEquals("5.560 kg", METRIC.mass(5.56));
        assertEquals("560 g", METRIC.mass(0.56));
        assertEquals("1.000 kg", METRIC.mass(0.9996));
        assertEquals("12 lb 4.1 oz", US.mass(5.56));
        assertEquals("1 lb 0 oz", US.mass(0.4535));
        assertEquals("5.1 kg", METRIC.roughMass(5.12));
        assertEquals("18.5 °C", METRIC.temperature(18.46));
        assertEquals("0 °C", METRIC.temperature(-0.02));
        assertEquals("65 °F", US.temperature(18.46));
        assertEquals("5.4 °F", US.temperatureStep(3));
        assertEquals("44.1 %", METRIC.moisture(new Moisture(0.4412)));
        assertEquals("95 %", METRIC.percent(0.95));
        assertEquals("3.5 EBC", METRIC.colour(3.5));
        assertEquals("1.8 SRM", US.colour(3.5));
        assertEquals("12.5 L", METRIC.volume(12.5));
        assertEquals("400 mL", METRIC.volume(0.4));
        assertEquals("3.3 gal", US.volume(12.5));
        assertEquals("2 in", US.length(5.08));
        assertEquals("8.2 cfm", US.airFlow(14), "14 m³/h over 1.699 m³/h per cubic foot a minute");
        assertEquals("0.36 m²", METRIC.area(0.36));
    }

    @Test
    void writesLengthsOfTimeToTheMinute() {
        assertEquals("0 min", METRIC.time(Duration.ZERO));
        assertEquals("45 min", METRIC.time(Duration.ofMinutes(45)));
        assertEquals("7 h 30 min", METRIC.time(Duration.ofMinutes(450)));
        assertEquals("40 h", METRIC.time(Duration.ofHours(40)));
        assertEquals("3 d 4 h", METRIC.time(Duration.ofHours(76)));
        assertEquals("21 d", METRIC.time(Duration.ofDays(21)));
    }

    @ParameterizedTest
    @CsvSource({
        "en,METRIC,EBC",
        "en,US,SRM",
        "de,METRIC,LOVIBOND",
        "tr,US,EBC",
        "ar-EG,METRIC,SRM",
        "th-TH-u-nu-thai,US,LOVIBOND",
        "fa-IR,METRIC,EBC"
    })
    void whatIsWrittenIsReadBack(String tag, UnitSystem system, ColourUnit colour) throws UnreadableException {
        var units = new DisplayUnits(system, colour, Locale.forLanguageTag(tag));
        var format = new QuantityFormat(units);
        var parser = QuantityParser.needingUnits(units.locale());
        for (double figure : new double[] {0.125, 0.9996, 1.234, 5.56, 17.2, 85, 123.4}) {
            assertEquals(figure, parser.massKg(format.mass(figure)), 0.0015, format.mass(figure));
            assertEquals(figure, parser.temperatureC(format.temperature(figure)), 0.3);
            assertEquals(-figure, parser.temperatureC(format.temperature(-figure)), 0.3);
            assertEquals(figure, parser.colourEbc(format.colour(figure)), 0.2 + 0.016 * figure);
            assertEquals(figure, parser.volumeL(format.volume(figure)), 0.2);
            assertEquals(figure, parser.lengthCm(format.length(figure)), 0.13);
            assertEquals(figure / 100, parser.areaM2(format.area(figure / 100)), 0.0056);
            assertEquals(figure, parser.timeHours(format.time(Duration.ofMinutes(Math.round(figure * 60)))), 0.51);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "ar-EG", "th-TH-u-ca-buddhist-nu-thai", "de-DE"})
    void writesTheSameUnderEveryDefaultLocale(String tag) {
        assertEquals(
                METRIC.mass(5.56),
                DefaultLocales.under(tag, () -> new QuantityFormat(DisplayUnits.metric()).mass(5.56)));
    }
}
