package piecewright.colour;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import piecewright.plan.ModelParameters;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;

/** A style agrees with itself: its colour is made inside its own usual cure, of barley the middle of it. */
class StylesAgreeTest {
    /**
     * Judgement: wheat, rye, spelt, oat and hull-less malts are cured at 75 to 82 °C and owe what they have above two or
     * three EBC to the grain, not to the kiln; they need only reach their range.
     */
    private static final Set<String> PALE_OF_ITSELF =
            Set.of("hull-less", "oat", "rye-pale", "spelt-pale", "wheat-pale");

    static Stream<MaltStyle> curedToColour() throws Exception {
        return StyleLibrary.builtIn().all().stream()
                .filter(style ->
                        style.oven().roast().isEmpty() && style.oven().stew().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("curedToColour")
    void itsColourLiesInsideItsUsualCure(MaltStyle style) {
        Cure cure = new Cure(style, ModelParameters.defaults().kiln());
        var kiln = style.kiln();
        double palest =
                cure.at(kiln.cureC().lowC(), kiln.cureHours().lowHours()).colourEbc();
        double darkest =
                cure.at(kiln.cureC().highC(), kiln.cureHours().highHours()).colourEbc();
        var range = style.finish().colour();
        String says = style.key() + ": " + palest + " to " + darkest + " EBC, asked " + range;
        assertTrue(palest <= range.highEbc() && range.lowEbc() <= darkest, says);
        if (PALE_OF_ITSELF.contains(style.key())) return;
        assertTrue(palest <= range.middleEbc() && range.middleEbc() <= darkest, says);
    }
}
