package piecewright.desktop.paint;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.css.CssMetaData;
import javafx.css.SimpleStyleableObjectProperty;
import javafx.css.StyleConverter;
import javafx.css.Styleable;
import javafx.css.StyleableProperty;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;

/** The inks of one painted thing; a canvas cannot read a style sheet, so these read it for the canvas. */
public final class Inks {
    private static final Map<Ink, CssMetaData<Inked, Paint>> META = meta();

    private final Map<Ink, SimpleStyleableObjectProperty<Paint>> paints = new EnumMap<>(Ink.class);

    /**
     * @param owner whose style sheet counts
     * @param changed told whenever an ink changes
     */
    public Inks(Inked owner, Runnable changed) {
        META.forEach((ink, data) -> {
            SimpleStyleableObjectProperty<Paint> paint =
                    new SimpleStyleableObjectProperty<>(data, owner, data.getProperty(), Color.GRAY);
            paint.addListener((property, before, now) -> changed.run());
            paints.put(ink, paint);
        });
    }

    public Paint of(Ink ink) {
        return property(ink).get();
    }

    /** The same ink, so much of it: 0 for none, 1 for all. */
    public Paint of(Ink ink, double opacityRatio) {
        return of(ink) instanceof Color color ? color.deriveColor(0, 1, 1, opacityRatio) : of(ink);
    }

    private SimpleStyleableObjectProperty<Paint> property(Ink ink) {
        SimpleStyleableObjectProperty<Paint> paint = paints.get(ink);
        if (paint == null) throw new IllegalArgumentException("no such ink: " + ink);
        return paint;
    }

    /** What a class of painted things adds to the properties of its ancestor. */
    public static List<CssMetaData<? extends Styleable, ?>> and(List<CssMetaData<? extends Styleable, ?>> inherited) {
        List<CssMetaData<? extends Styleable, ?>> all = new ArrayList<>(inherited);
        all.addAll(META.values());
        return List.copyOf(all);
    }

    private static Map<Ink, CssMetaData<Inked, Paint>> meta() {
        Map<Ink, CssMetaData<Inked, Paint>> all = new EnumMap<>(Ink.class);
        for (Ink ink : Ink.values()) all.put(ink, new InkData(ink));
        return all;
    }

    private static final class InkData extends CssMetaData<Inked, Paint> {
        private final Ink ink;

        InkData(Ink ink) {
            super(ink.property(), StyleConverter.getPaintConverter(), Color.GRAY);
            this.ink = ink;
        }

        @Override
        public boolean isSettable(Inked styleable) {
            return true;
        }

        @Override
        public StyleableProperty<Paint> getStyleableProperty(Inked styleable) {
            return styleable.inks().property(ink);
        }
    }
}
