package piecewright.desktop.colour;

import piecewright.desktop.colour.ColourField.Point;

/** Where a field lies on a canvas, in pixels. */
record MapFrame(ColourField field, double left, double top, double width, double height) {
    double right() {
        return left + width;
    }

    double bottom() {
        return top + height;
    }

    double x(double hours) {
        return left + width * (hours - field.leastHours()) / (field.mostHours() - field.leastHours());
    }

    double y(double heatC) {
        return bottom() - height * (heatC - field.leastC()) / (field.mostC() - field.leastC());
    }

    /** The point of the field at a pixel; beyond the map too. */
    Point point(double x, double y) {
        return new Point(
                field.leastHours() + (x - left) / width * (field.mostHours() - field.leastHours()),
                field.leastC() + (bottom() - y) / height * (field.mostC() - field.leastC()));
    }
}
