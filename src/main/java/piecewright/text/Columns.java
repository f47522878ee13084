package piecewright.text;

import java.util.ArrayList;
import java.util.List;

/** Rows of cells set in columns as wide as their widest cell, two blanks apart; for plain terminals. */
final class Columns {
    private static final String GAP = "  ";

    private final List<Column> columns;
    private final List<List<String>> rows = new ArrayList<>();

    /** To which side the cells of a column keep. */
    enum Side {
        LEFT,
        RIGHT
    }

    record Column(String title, Side side) {}

    Columns(List<Column> columns) {
        this.columns = List.copyOf(columns);
    }

    /** Adds a row of as many cells as there are columns. */
    void add(String... cells) {
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException("need " + columns.size() + " cells: " + cells.length);
        }
        rows.add(List.of(cells));
    }

    String titles() {
        return line(columns.stream().map(Column::title).toList());
    }

    String row(int index) {
        return line(rows.get(index));
    }

    int size() {
        return rows.size();
    }

    /** How many characters stand before this column. */
    int offset(int column) {
        int offset = 0;
        for (int i = 0; i < column; i++) offset += width(i) + GAP.length();
        return offset;
    }

    private String line(List<String> cells) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            if (i > 0) line.append(GAP);
            String blanks = " ".repeat(width(i) - length(cells.get(i)));
            boolean left = columns.get(i).side() == Side.LEFT;
            line.append(left ? cells.get(i) + blanks : blanks + cells.get(i));
        }
        return line.toString().stripTrailing();
    }

    private int width(int column) {
        int widest = length(columns.get(column).title());
        for (List<String> row : rows) widest = Math.max(widest, length(row.get(column)));
        return widest;
    }

    private static int length(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}
