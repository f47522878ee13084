package piecewright.text;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import piecewright.colour.CureMap;
import piecewright.colour.CureMap.Cell;
import piecewright.colour.CureMap.Forbidden;
import piecewright.text.Columns.Column;
import piecewright.text.Columns.Side;

/** The cures of a style over temperature and hours as a table: the colour of each, and what puts it out of question. */
public final class CureMapPage {
    private final QuantityFormat quantities;

    public CureMapPage(DisplayUnits units) {
        this.quantities = new QuantityFormat(units);
    }

    public String page(String style, CureMap map) {
        List<Cell> cells = map.cells();
        double coolestC = cells.get(0).cured().cureC();
        List<Cell> firstRow =
                cells.stream().filter(cell -> cell.cured().cureC() == coolestC).toList();
        Columns table = new Columns(heads(firstRow));
        for (int from = 0; from < cells.size(); from += firstRow.size()) {
            List<String> row = new ArrayList<>();
            row.add(quantities.temperature(cells.get(from).cured().cureC()));
            for (Cell cell : cells.subList(from, from + firstRow.size())) {
                row.add(quantities.colour(cell.cured().colourEbc()) + marks(cell));
            }
            table.add(row.toArray(String[]::new));
        }
        StringBuilder page = new StringBuilder(Paragraph.of("", Phrases.say("colour.map", style)));
        page.append("  ").append(table.titles()).append('\n');
        for (int row = 0; row < table.size(); row++) {
            page.append("  ").append(table.row(row)).append('\n');
        }
        return page.append(Paragraph.of("", Phrases.say("colour.map.marks"))).toString();
    }

    private List<Column> heads(List<Cell> firstRow) {
        List<Column> heads = new ArrayList<>(List.of(new Column("", Side.LEFT)));
        for (Cell cell : firstRow) {
            Duration cure = Duration.ofMinutes(Math.round(60 * cell.cured().cureHours()));
            heads.add(new Column(quantities.time(cure), Side.LEFT));
        }
        return heads;
    }

    private static String marks(Cell cell) {
        StringBuilder marks = new StringBuilder();
        for (Forbidden why : Forbidden.values()) {
            if (cell.forbidden().contains(why)) marks.append(Phrases.say("colour.map.mark." + Phrases.key(why)));
        }
        return marks.isEmpty() ? "" : " " + marks;
    }
}
