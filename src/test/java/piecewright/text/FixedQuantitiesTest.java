package piecewright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Quantities in the words themselves are told in the units of whoever reads them; none stands there in one unit only. */
class FixedQuantitiesTest {
    private static final Pattern LITERAL =
            Pattern.compile("[0-9½] ?(°C|°F|kg|g|cm|mm|m|mL|ml|L|l|litres?|liters?|lb|oz|gal|degrees)\\b");
    private static final Pattern MARKED = Pattern.compile("<[0-9.]+ (°C|K|cm|m|kg|g|L|mL)>");

    /** Not quantities to be told: examples of what may be typed, and figures of a law or of the standard germination test. */
    private static final Set<String> AS_THEY_ARE = Set.of(
            "line.empty",
            "line.sample-gained",
            "window.batch.happened.prompt",
            "window.finish.weight.prompt",
            "window.grain.range",
            "chart.colour.description",
            "window.colour.formula",
            "window.colour.formula.roast",
            "colour.head",
            "caution.combustion-gases",
            "judge.untested",
            "judge.next.energy",
            "judge.next.many.energy",
            "judge.next.water-sensitivity",
            "judge.next.many.water-sensitivity",
            "finding.germination-untested");

    @Test
    void noWordsHoldAQuantityInOneUnitOnly() {
        ResourceBundle words = ResourceBundle.getBundle("piecewright.text.wording", Locale.ROOT);
        List<String> literal = new ArrayList<>();
        for (String key : Collections.list(words.getKeys())) {
            String unmarked = MARKED.matcher(words.getString(key)).replaceAll("");
            if (!AS_THEY_ARE.contains(key) && LITERAL.matcher(unmarked).find()) literal.add(key + ": " + unmarked);
        }
        assertEquals(List.of(), literal);
    }

    @Test
    void whoeverReadsFahrenheitIsToldTheDialInFahrenheit() {
        QuantityFormat us = new QuantityFormat(DisplayUnits.us());
        assertEquals("near 446 °F, never past 428 °F", FixedQuantities.in(us, "near <230 °C>, never past <220 °C>"));
        assertEquals("9 °F below, 39.4 in clear", FixedQuantities.in(us, "<5 K> below, <1 m> clear"));
        assertEquals("6.6 lb, 3.5 oz", FixedQuantities.in(us, "<3 kg>, <100 g>"));
        QuantityFormat metric = new QuantityFormat(DisplayUnits.metric());
        assertEquals("220 °C, 5 °C, 1 m", FixedQuantities.in(metric, "<220 °C>, <5 K>, <1 m>"));
    }
}
