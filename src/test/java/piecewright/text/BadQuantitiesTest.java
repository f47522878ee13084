package piecewright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Quantities typed wrongly at random are read as a figure in bounds or refused in one line. */
class BadQuantitiesTest {
    private static final int CASES = Integer.getInteger("badFiles", 4_500);
    private static final List<String> GOOD = List.of(
            "6 lb 15 oz", "64 F", "3,5 EBC", "8 h", "1.234,5 kg", "7 h 30 min", "95 %", "3.3 gal", "0.36 m²", "-4 °C");
    private static final List<String> PIECES = List.of(
            "", " ", "lb", "oz", "kg", "°", "F", "%", "e9", "-", "+", ".", ",", "٤", "½", "\u0000", "\u202e", "\ud83c",
            "9999999", "NaN", "∞", "/", "h", "min", "'", "\u00a0", "²");

    private interface Reading {
        double read(String typed) throws UnreadableException;
    }

    @Test
    void everyWronglyTypedQuantityIsReadOrRefusedInOneLine() {
        Random random = new Random(20_310_404);
        int refused = 0;
        for (int i = 0; i < CASES; i++) {
            Locale locale = random.nextBoolean() ? Locale.ENGLISH : Locale.GERMAN;
            QuantityParser parser =
                    QuantityParser.forPerson(new DisplayUnits(UnitSystem.METRIC, ColourUnit.EBC, locale));
            List<Reading> readings = List.of(
                    parser::massKg,
                    parser::temperatureC,
                    parser::colourEbc,
                    parser::shareFraction,
                    parser::volumeL,
                    parser::areaM2,
                    parser::lengthCm,
                    parser::timeHours);
            String typed = damaged(random);
            try {
                double figure = readings.get(random.nextInt(readings.size())).read(typed);
                assertTrue(Double.isFinite(figure) && Math.abs(figure) <= 1e9, typed + " → " + figure);
            } catch (UnreadableException refusal) {
                refused++;
                assertEquals(1, String.valueOf(refusal.getMessage()).lines().count(), typed);
            }
        }
        assertTrue(refused > CASES / 2 && refused < CASES, "refused: " + refused);
    }

    private static String damaged(Random random) {
        String text = GOOD.get(random.nextInt(GOOD.size()));
        for (int times = random.nextInt(4); times > 0; times--) {
            int at = random.nextInt(text.length() + 1);
            int until = Math.min(text.length(), at + random.nextInt(3));
            text = text.substring(0, at) + PIECES.get(random.nextInt(PIECES.size())) + text.substring(until);
        }
        return random.nextInt(200) == 0 ? text.repeat(500) : text;
    }
}
