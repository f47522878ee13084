package piecewright.app;

import java.util.Optional;
import piecewright.house.House;
import piecewright.store.CureMapJson;
import piecewright.style.ColourLever;
import piecewright.style.MaltStyle;
import piecewright.text.CureMapPage;
import piecewright.text.DisplayUnits;

/**
 * What every cure of a style gives, or every last roast of one that is coloured by it, and which of them are out of the
 * question in a house.
 */
public record StyleMap(MaltStyle style, Optional<House> house) {
    public String page(DisplayUnits units) {
        CureMapPage page = new CureMapPage(units);
        return isRoasted()
                ? page.page(style.title(), ColourChoice.roasts(style, house))
                : page.page(style.title(), ColourChoice.map(style, house));
    }

    public String json() {
        return isRoasted()
                ? CureMapJson.write(style.key(), ColourChoice.roasts(style, house))
                : CureMapJson.write(style.key(), ColourChoice.map(style, house));
    }

    private boolean isRoasted() {
        return style.finish().lever() == ColourLever.ROAST_MINUTES;
    }
}
