package piecewright.desktop.paint;

import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.scene.shape.SVGPath;
import piecewright.colour.Swatch;

/** Small signs, each a shape of its own beside its words. */
public final class Signs {
    private Signs() {}

    /** A triangle: take care. */
    public static Node caution() {
        return sign("sign-caution", "M9 1.5 L17 16 H1 Z M9 6.5 V11 M9 13 V13.6");
    }

    /** A tick: good. */
    public static Node good() {
        return sign("sign-good", "M2 9 L7 14 L16 3");
    }

    /** An octagon: do not. */
    public static Node stop() {
        return sign("sign-stop", "M6 1 H12 L17 6 V12 L12 17 H6 L1 12 V6 Z M5 9 H13");
    }

    /** A corn filled with its wort, one centimetre deep. */
    public static Node corn(double colourEbc) {
        Swatch wort = Swatch.ofMalt(colourEbc);
        SVGPath corn = new SVGPath();
        corn.setContent("M8 1 C12 4 14 8 14 12 C14 17 11 20 8 21 C5 20 2 17 2 12 C2 8 4 4 8 1 Z");
        corn.setFill(Color.rgb(wort.red(), wort.green(), wort.blue()));
        corn.getStyleClass().add("corn");
        SVGPath crease = new SVGPath();
        crease.setContent("M8 5 V18");
        crease.getStyleClass().add("corn");
        return boxed(new Group(corn, crease));
    }

    /** Our own mark: a piece heaped and a spade's line through it. */
    public static Node mark() {
        SVGPath heap = new SVGPath();
        heap.setContent("M2 20 C8 20 8 6 15 6 C22 6 22 20 28 20 Z M2 20 H28");
        heap.getStyleClass().add("mark-heap");
        SVGPath blade = new SVGPath();
        blade.setContent("M8 20 L19 2");
        blade.getStyleClass().add("mark-blade");
        return boxed(new Group(heap, blade));
    }

    private static Node sign(String style, String path) {
        SVGPath sign = new SVGPath();
        sign.setContent(path);
        sign.getStyleClass().addAll("sign", style);
        return boxed(new Group(sign));
    }

    private static Node boxed(Group drawing) {
        StackPane box = new StackPane(drawing);
        box.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        box.setMinSize(StackPane.USE_PREF_SIZE, StackPane.USE_PREF_SIZE);
        box.setMaxSize(StackPane.USE_PREF_SIZE, StackPane.USE_PREF_SIZE);
        return box;
    }
}
