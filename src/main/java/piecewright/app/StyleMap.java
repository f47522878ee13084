package piecewright.app;

import java.util.Optional;
import piecewright.colour.CureMap;
import piecewright.house.House;
import piecewright.store.CureMapJson;
import piecewright.style.MaltStyle;
import piecewright.text.CureMapPage;
import piecewright.text.DisplayUnits;

/** What every cure of a style gives, and which of them are out of the question in a house. */
public record StyleMap(MaltStyle style, CureMap map) {
    public static StyleMap of(MaltStyle style, Optional<House> house) {
        return new StyleMap(style, ColourChoice.map(style, house));
    }

    public String page(DisplayUnits units) {
        return new CureMapPage(units).page(style.title(), map);
    }

    public String json() {
        return CureMapJson.write(style.key(), map);
    }
}
