package piecewright.desktop.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import piecewright.colour.BeerColour;
import piecewright.desktop.colour.BeerViewModel.Answer;
import piecewright.desktop.colour.BeerViewModel.Asked;
import piecewright.text.DisplayUnits;

/** A malt colour from a beer, without a toolkit. */
class BeerViewModelTest {
    private final BeerViewModel model = new BeerViewModel(DisplayUnits.metric());

    private Answer asked(String volume, String beer, String grist, String share, String rest) {
        model.ask(new Asked(volume, beer, grist, share, rest));
        return model.answerProperty().get();
    }

    /** The beer of that malt has the colour that was asked for. */
    @Test
    void theMaltMakesTheBeer() {
        Answer answer = asked("20 L", "25 EBC", "4.5 kg", "40 %", "4 EBC");
        double maltEbc = answer.maltEbc().orElseThrow();
        assertEquals(25, BeerColour.beerEbc(new BeerColour.Brew(20, 4.5, 0.4, 4), maltEbc), 1e-6);
        assertEquals("", answer.wrong());
    }

    @Test
    void bothFamiliesOfUnitsAreRead() {
        double metric = asked("18.927 L", "19.7 EBC", "4.536 kg", "50 %", "4 EBC")
                .maltEbc()
                .orElseThrow();
        double american =
                asked("5 gal", "10 SRM", "10 lb", "50 %", "4 EBC").maltEbc().orElseThrow();
        assertEquals(metric, american, metric * 0.01);
    }

    @Test
    void whatIsWrongIsToldAndWhatWasTypedStays() {
        Answer pale = asked("20 L", "4 EBC", "4.5 kg", "10 %", "30 EBC");
        assertEquals(OptionalDouble.empty(), pale.maltEbc());
        assertTrue(pale.wrong().contains("darker"));
        Answer odd = asked("some", "25 EBC", "4.5 kg", "40 %", "4 EBC");
        assertFalse(odd.wrong().isEmpty());
        assertEquals("some", odd.asked().volume());
        assertFalse(asked("20 L", "300 EBC", "4.5 kg", "40 %", "4 EBC").wrong().isEmpty());
        assertFalse(asked("20 L", "25 EBC", "4.5 kg", "140 %", "4 EBC").wrong().isEmpty());
    }
}
