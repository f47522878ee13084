package piecewright.desktop.learned;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import piecewright.belief.Interval;
import piecewright.learn.Comparison;
import piecewright.learn.Comparison.InputDifference;
import piecewright.learn.Comparison.OutcomeDifference;
import piecewright.learn.Figure;
import piecewright.text.DisplayUnits;

/** Two pieces held against each other, without a toolkit. */
class ComparedTest {
    private static Compared.Outcome shown(Figure figure, Interval change) {
        String name = figure == Figure.COLOUR ? "colour" : "yield";
        OutcomeDifference difference = new OutcomeDifference(name, figure, change, 0.5);
        return Compared.of(new Comparison(List.of(), List.of(difference)), List.of(), DisplayUnits.metric())
                .outcomes()
                .get(0);
    }

    /** A fifth darker and a fifth paler are as far from alike: 1.25 = 1 ÷ 0.8. */
    @Test
    void coloursLieAboutTheMiddleByTheirFactor() {
        Compared.Outcome colour = shown(Figure.COLOUR, new Interval(0.8, 1, 1.25));
        assertEquals(0, colour.middleRatio(), 1e-12);
        assertEquals(-colour.lowRatio(), colour.highRatio(), 1e-12);
    }

    @Test
    void noBarLeavesItsAxisAndNoDifferenceIsItsMiddle() {
        Compared.Outcome yield = shown(Figure.WEIGHT, new Interval(-0.03, -0.02, -0.01));
        assertTrue(yield.lowRatio() > -1 && yield.highRatio() < 0, yield.toString());
        assertEquals(3, yield.lowRatio() / yield.highRatio(), 1e-9);
    }

    @Test
    void whatOnePieceHasNotIsSaid() {
        InputDifference input = new InputDifference("wither", Optional.of("6 h"), Optional.empty());
        Compared compared = Compared.of(new Comparison(List.of(input), List.of()), List.of(), DisplayUnits.metric());
        assertEquals(List.of(new Compared.Input("wither", "6 h", "none")), compared.inputs());
    }
}
