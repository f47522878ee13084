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

    /** One figure under its name, and its band; a dash where there is none. */
    record Entry(String key, String name, String figure, String band) {}

    static Readout at(PieceChart chart, Instant at, DisplayUnits units) {
        QuantityFormat quantities = new QuantityFormat(units);
        MomentFormat moments = new MomentFormat(chart.frame().zone(), units.locale());
        PieceChart.Traces traces = chart.traces();
        return new Readout(List.of(
                new Entry("at", WindowWords.say("readout.at"), moments.moment(at), ""),
                entry(
                        "moisture",
                        traces.moisture(),
                        chart.bands().moisture(),
                        at,
                        percent -> quantities.moisture(Moisture.ofWetBasisPercent(percent))),
                entry("grain", traces.grain(), chart.bands().grain(), at, quantities::temperature),
                entry("air", traces.air(), PieceChart.Edges.none(), at, quantities::temperature),
                entry("growth", traces.growth(), chart.bands().growth(), at, quantities::percent),
                entry("colour", traces.colour(), PieceChart.Edges.none(), at, quantities::colour)));
    }

    private static Entry entry(
            String key, Trace trace, PieceChart.Edges edges, Instant at, DoubleFunction<String> format) {
        OptionalDouble figure = trace.at(at);
        String text = figure.isPresent() ? format.apply(figure.getAsDouble()) : "–";
        OptionalDouble low = edges.low().at(at);
        OptionalDouble high = edges.high().at(at);
        String band = figure.isPresent() && low.isPresent() && high.isPresent()
                ? WindowWords.say(
                        "readout.band",
                        format.apply(low.getAsDouble()).replaceAll("[^0-9]+$", ""),
                        format.apply(high.getAsDouble()).replaceAll("[^0-9]+$", ""))
                : "";
        return new Entry(key, WindowWords.say("readout." + key), text, band);
    }
}
