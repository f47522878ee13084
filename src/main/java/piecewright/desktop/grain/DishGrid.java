package piecewright.desktop.grain;

import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import piecewright.desktop.paint.Ink;
import piecewright.desktop.paint.Painted;
import piecewright.grain.GerminationCount;
import piecewright.text.WindowWords;

/** A dish as a grid of corns: those that grew are full and have a root, the others are empty. */
final class DishGrid extends Painted {
    private static final double PITCH = 15;
    private static final int COLUMNS = 10;
    private static final int TEN = 10;

    private final GerminationCount dish;
    private final Counted counted;

    /** Told of a new count. */
    interface Counted {
        void germinated(int corns);
    }

    DishGrid(int number, GerminationCount dish, Counted counted) {
        super("dish-" + number);
        this.dish = dish;
        this.counted = counted;
        getStyleClass().add("dish");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.SLIDER);
        setAccessibleText(WindowWords.say(
                "grain.dish.spoken",
                Integer.toString(number),
                Integer.toString(dish.germinated()),
                Integer.toString(dish.corns())));
        int rows = (dish.corns() + COLUMNS - 1) / COLUMNS;
        setMinSize(COLUMNS * PITCH + 8, rows * PITCH + 8);
        setMaxSize(COLUMNS * PITCH + 8, rows * PITCH + 8);
        addEventHandler(MouseEvent.MOUSE_CLICKED, event -> {
            requestFocus();
            int column = (int) ((event.getX() - 4) / PITCH);
            int row = (int) ((event.getY() - 4) / PITCH);
            int corn = row * COLUMNS + Math.max(0, Math.min(COLUMNS - 1, column));
            counted.germinated(corn + 1 == dish.germinated() ? corn : corn + 1);
        });
        addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    }

    private void pressed(KeyEvent event) {
        KeyCode code = event.getCode();
        int now = dish.germinated();
        if (code == KeyCode.RIGHT) counted.germinated(now + 1);
        else if (code == KeyCode.LEFT) counted.germinated(now - 1);
        else if (code == KeyCode.UP) counted.germinated(now - TEN);
        else if (code == KeyCode.DOWN) counted.germinated(now + TEN);
        else return;
        event.consume();
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return switch (attribute) {
            case VALUE -> (double) dish.germinated();
            case MIN_VALUE -> 0.0;
            case MAX_VALUE -> (double) dish.corns();
            default -> super.queryAccessibleAttribute(attribute, parameters);
        };
    }

    @Override
    protected void paint(GraphicsContext pen) {
        for (int corn = 0; corn < dish.corns(); corn++) {
            double x = 4 + corn % COLUMNS * PITCH + PITCH / 2;
            double y = 4 + corn / COLUMNS * PITCH + PITCH / 2;
            pen.setLineWidth(1.3);
            if (corn < dish.germinated()) {
                pen.setFill(inks().of(Ink.LEAF));
                pen.fillOval(x - 3.6, y - 5, 7.2, 9);
                pen.setStroke(inks().of(Ink.LEAF));
                pen.strokeLine(x, y + 3, x + 2.5, y + 7);
            } else {
                pen.setStroke(inks().of(Ink.CAUTION));
                pen.strokeOval(x - 3.6, y - 5, 7.2, 9);
            }
        }
    }
}
