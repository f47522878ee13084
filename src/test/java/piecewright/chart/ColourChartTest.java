package piecewright.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import piecewright.colour.Cure;
import piecewright.colour.CureMap;
import piecewright.colour.Swatch;
import piecewright.process.kiln.KilnParameters;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.text.DisplayUnits;

class ColourChartTest {
    private static CureMap map(double hottestC) throws StoreException {
        return CureMap.of(new Cure(StyleLibrary.builtIn().style("pale-ale"), KilnParameters.defaults()), hottestC);
    }

    private static Parsed drawn(CureMap map, double wantedEbc) {
        return Parsed.of(
                ColourChart.of(List.of(new ColourChart.Panel("Pale <ale>", map)), wantedEbc, DisplayUnits.metric()));
    }

    private static long frames(Parsed parsed, String width) {
        return parsed.all("path").stream()
                .filter(path -> path.getAttribute("d").endsWith("Z")
                        && path.getAttribute("stroke-width").equals(width))
                .count();
    }

    /** One decimal, where there is one to tell. */
    private static String figure(double colourEbc) {
        return new DecimalFormat("0.#", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(colourEbc);
    }

    @Test
    void everyCellIsPaintedAsItsWortAndTellsItsFigure() throws StoreException {
        CureMap map = map(Double.POSITIVE_INFINITY);
        Parsed parsed = drawn(map, 5);
        List<String> fills =
                parsed.all("rect").stream().map(box -> box.getAttribute("fill")).toList();
        for (CureMap.Cell cell : map.cells()) {
            assertTrue(
                    fills.contains("#" + Swatch.ofMalt(cell.cured().colourEbc()).hex()), cell::toString);
        }
        assertEquals(map.cells().size() + 1, fills.size(), "one box each, and the paper");
        List<String> texts =
                parsed.all("text").stream().map(Element::getTextContent).toList();
        assertTrue(texts.contains("Pale <ale>"), texts::toString);
        for (CureMap.Cell cell : map.cells()) {
            double colourEbc = cell.cured().colourEbc();
            if (colourEbc > 5 && colourEbc < 9) assertTrue(texts.contains(figure(colourEbc)), figure(colourEbc));
        }
    }

    @Test
    void onlyTheNearestCureThatMayBeIsFramedBoldly() throws StoreException {
        assertEquals(1 + 1, frames(drawn(map(Double.POSITIVE_INFINITY), 5), "3.5"), "a cell and its legend");
        assertEquals(1, frames(drawn(map(Double.POSITIVE_INFINITY), 60), "3.5"), "nothing near: the legend alone");
        assertEquals(1, frames(drawn(map(70), 5), "3.5"), "no heater holds it: the legend alone");
    }
}
