package piecewright.desktop.timeline;

import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.text.TextAlignment;
import piecewright.desktop.paint.Ink;
import piecewright.quantity.Units;
import piecewright.text.DisplayUnits;
import piecewright.text.MomentFormat;
import piecewright.text.QuantityFormat;
import piecewright.text.UnitSystem;
import piecewright.text.WindowWords;

/** All that is painted, layer by layer. */
final class Painters {
    private final DisplayUnits units;
    private final ShadePainter shades;
    private final DataPainter data;
    private Optional<PieceChart> ghost = Optional.empty();
    private final ActPainter acts = new ActPainter();

    Painters(DisplayUnits units) {
        this.units = units;
        this.data = new DataPainter(new QuantityFormat(units));
        this.shades = new ShadePainter(units.locale());
    }

    /** What stands behind the piece from now on. */
    void ghost(Optional<PieceChart> before) {
        ghost = before;
    }

    void piece(Drawing on, String selected) {
        shades.paint(on);
        ghost.ifPresent(before -> GhostPainter.paint(on, before));
        data.paint(on);
        OthersPainter.paint(on);
        acts.paint(on, selected);
    }

    void over(Drawing on, Instant now, Optional<Instant> pointer) {
        pointer.ifPresent(at -> {
            on.stroke(Ink.INK_2, 1, 1.5, 3);
            double x = Drawing.sharp(on.x(at));
            on.pen().strokeLine(x, on.lanes().acts().top(), x, on.lanes().bottom());
        });
        double x = Drawing.sharp(on.x(now));
        if (x < 0 || x > on.widthPixels()) return;
        on.stroke(Ink.DAMSON, 2);
        on.pen().strokeLine(x, on.lanes().acts().top(), x, on.lanes().bottom());
        MomentFormat moments = new MomentFormat(on.chart().frame().zone(), units.locale());
        String words = WindowWords.say("timeline.now", moments.clock(now));
        on.pen().setFont(on.bold());
        double width = on.roughWidth(words) + 16;
        double height = Math.round(on.font().getSize() * 1.5);
        double left = Math.min(x - 1, on.widthPixels() - width);
        on.fill(Ink.DAMSON);
        on.pen().fillRoundRect(left, on.lanes().acts().top(), width, height, 4, 4);
        on.fill(Ink.ON_DAMSON);
        on.text(words, left + width / 2, on.lanes().acts().top() + height / 2, TextAlignment.CENTER);
    }

    void names(Drawing on) {
        Lanes lanes = on.lanes();
        name(on, "acts", "", lanes.acts());
        if (lanes.others().height() > 0) name(on, "others", "", lanes.others());
        name(on, "phases", "", lanes.ribbon());
        name(on, "moisture", "%", lanes.moisture());
        name(on, "heat", units.system() == UnitSystem.METRIC ? "°C" : "°F", lanes.heat());
        name(on, "growth", "", lanes.growth());
        name(on, "colour", "", lanes.colour());
        on.pen().setFont(on.font());
        on.fill(Ink.INK_3);
        for (Scales.Tick tick : Scales.ticks(on.chart(), lanes)) {
            on.text(figure(tick), on.widthPixels() - 6, tick.y(), TextAlignment.RIGHT);
        }
        on.text(heat(FoldedScale.FOLD_C), on.widthPixels() - 6, Scales.foldY(on.chart(), lanes), TextAlignment.RIGHT);
    }

    private static void name(Drawing on, String key, String unit, Lanes.Band band) {
        double line = on.font().getSize() * 1.35;
        on.pen().setFont(on.bold());
        on.fill(Ink.INK);
        on.text(WindowWords.say("lane." + key), 0, band.top() + line * 0.75 + 3, TextAlignment.LEFT);
        on.pen().setFont(on.font());
        on.fill(Ink.INK_3);
        on.text(unit, 0, band.top() + line * 1.75 + 3, TextAlignment.LEFT);
    }

    private String figure(Scales.Tick tick) {
        return switch (tick.kind()) {
            case MOISTURE -> String.format(Locale.ROOT, "%.0f", tick.figure());
            case HEAT -> heat(tick.figure());
            case GROWTH -> tick.figure() == 0.5 ? "½" : String.format(Locale.ROOT, "%.0f", tick.figure());
        };
    }

    private String heat(double temperatureC) {
        double shown = units.system() == UnitSystem.METRIC ? temperatureC : Units.fahrenheitOfCelsius(temperatureC);
        return String.format(Locale.ROOT, "%.0f", shown);
    }
}
