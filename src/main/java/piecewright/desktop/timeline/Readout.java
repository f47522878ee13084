package piecewright.desktop.timeline;

import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import piecewright.quantity.Moisture;
import piecewright.text.DisplayUnits;
import piecewright.text.MomentFormat;
import piecewright.text.QuantityFormat;
import piecewright.text.WindowWords;

/** What all lanes say at one instant. */
record Readout(List<Entry> entries) {
    Readout {
        entries = List.copyOf(entries);
    }

    /** One figure under its name; a dash where there is none. */
    record Entry(String key, String name, String figure) {}

    static Readout at(PieceChart chart, Instant at, DisplayUnits units) {
        QuantityFormat quantities = new QuantityFormat(units);
        MomentFormat moments = new MomentFormat(chart.frame().zone(), units.locale());
        PieceChart.Traces traces = chart.traces();
        return new Readout(List.of(
                new Entry("at", WindowWords.say("readout.at"), moments.moment(at)),
                entry(
                        "moisture",
                        traces.moisture().at(at),
                        percent -> quantities.moisture(Moisture.ofWetBasisPercent(percent))),
                entry("grain", traces.grain().at(at), quantities::temperature),
                entry("air", traces.air().at(at), quantities::temperature),
                entry("growth", traces.growth().at(at), quantities::percent),
                entry("colour", traces.colour().at(at), quantities::colour)));
    }

    private static Entry entry(String key, OptionalDouble figure, DoubleFunction<String> format) {
        String text = figure.isPresent() ? format.apply(figure.getAsDouble()) : "–";
        return new Entry(key, WindowWords.say("readout." + key), text);
    }
}
