package piecewright.desktop.colour;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.paint.Color;
import piecewright.colour.Swatch;
import piecewright.desktop.colour.ColourField.Point;

/** Worts of all colours of a field, worked out once: seeing a spectrum is dear, and a map has many points. */
record WortTable(double leastEbc, double mostEbc, List<Color> worts) {
    private static final int STEPS = 200;

    static WortTable of(ColourField field) {
        double least = field.colourEbc(new Point(field.leastHours(), field.leastC()));
        double most = field.colourEbc(new Point(field.mostHours(), field.mostC()));
        List<Color> worts = new ArrayList<>(STEPS + 1);
        for (int i = 0; i <= STEPS; i++) {
            Swatch wort = Swatch.ofMalt(least * Math.pow(most / least, (double) i / STEPS));
            worts.add(Color.rgb(wort.red(), wort.green(), wort.blue()));
        }
        return new WortTable(least, most, List.copyOf(worts));
    }

    Color of(double colourEbc) {
        double share = Math.log(colourEbc / leastEbc) / Math.log(mostEbc / leastEbc);
        return worts.get((int) Math.round(Math.max(0, Math.min(1, share)) * STEPS));
    }
}
