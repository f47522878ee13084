package piecewright.colour;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import piecewright.plan.ModelParameters;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;

/** A style agrees with itself: the middle of its colour is made inside its own usual cure. */
class StylesAgreeTest {
    static Stream<MaltStyle> curedToColour() throws Exception {
        return StyleLibrary.builtIn().all().stream()
                .filter(style ->
                        style.oven().roast().isEmpty() && style.oven().stew().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("curedToColour")
    void itsMiddleColourLiesInsideItsUsualCure(MaltStyle style) {
        Cure cure = new Cure(style, ModelParameters.defaults().kiln());
        var kiln = style.kiln();
        double palest = cure.at(kiln.cureC().lowC(), kiln.cureHours().lowHours()).colourEbc();
        double darkest =
                cure.at(kiln.cureC().highC(), kiln.cureHours().highHours()).colourEbc();
        double middle = style.finish().colour().middleEbc();
        String says = style.key() + ": " + palest + " to " + darkest + " EBC, middle " + middle;
        assertTrue(palest <= middle && middle <= darkest, says);
    }
}
