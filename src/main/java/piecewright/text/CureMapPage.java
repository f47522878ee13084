package piecewright.text;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import piecewright.colour.CureMap;
import piecewright.colour.RoastMap;
import piecewright.text.Columns.Column;
import piecewright.text.Columns.Side;

/** What a style comes to over temperature and time as a table: the colour of each, and what puts it out of question. */
public final class CureMapPage {
    private final QuantityFormat quantities;

    public CureMapPage(DisplayUnits units) {
        this.quantities = new QuantityFormat(units);
    }

    /** One point: how hot, how long, what colour, and the marks of what forbids it. */
    private record Point(double heatC, Duration time, double colourEbc, String marks) {}

    public String page(String style, CureMap map) {
        List<Point> points = map.cells().stream()
                .map(cell -> new Point(
                        cell.cured().cureC(),
                        Duration.ofMinutes(Math.round(60 * cell.cured().cureHours())),
                        cell.cured().colourEbc(),
                        marks(CureMap.Forbidden.values(), cell.forbidden())))
                .toList();
        return page(Phrases.say("colour.map", style), points, Phrases.say("colour.map.marks"));
    }

    public String page(String style, RoastMap map) {
        List<Point> points = map.cells().stream()
                .map(cell -> new Point(
                        cell.roasted().lastC(),
                        cell.roasted().last(),
                        cell.roasted().colourEbc(),
                        marks(RoastMap.Forbidden.values(), cell.forbidden())))
                .toList();
        return page(Phrases.say("colour.roast-map", style), points, Phrases.say("colour.roast-map.marks"));
    }

    private String page(String title, List<Point> points, String legend) {
        double coolestC = points.get(0).heatC();
        List<Point> firstRow =
                points.stream().filter(point -> point.heatC() == coolestC).toList();
        Columns table = new Columns(heads(firstRow));
        for (int from = 0; from < points.size(); from += firstRow.size()) {
            List<String> row = new ArrayList<>();
            row.add(quantities.temperature(points.get(from).heatC()));
            for (Point point : points.subList(from, from + firstRow.size())) {
                row.add(quantities.colour(point.colourEbc()) + point.marks());
            }
            table.add(row.toArray(String[]::new));
        }
        StringBuilder page = new StringBuilder(Paragraph.of("", title));
        page.append("  ").append(table.titles()).append('\n');
        for (int row = 0; row < table.size(); row++) {
            page.append("  ").append(table.row(row)).append('\n');
        }
        return page.append(Paragraph.of("", legend)).toString();
    }

    private List<Column> heads(List<Point> firstRow) {
        List<Column> heads = new ArrayList<>(List.of(new Column("", Side.LEFT)));
        for (Point point : firstRow) heads.add(new Column(quantities.time(point.time()), Side.LEFT));
        return heads;
    }

    private static <E extends Enum<E>> String marks(E[] reasons, Set<E> forbidden) {
        StringBuilder marks = new StringBuilder();
        for (E why : reasons) {
            if (forbidden.contains(why)) marks.append(Phrases.say("colour.map.mark." + Phrases.key(why)));
        }
        return marks.isEmpty() ? "" : " " + marks;
    }
}
