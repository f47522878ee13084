package piecewright.desktop.timeline;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import piecewright.plan.Booking;
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
        List<Entry> entries = new ArrayList<>(List.of(
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
        if (!chart.frame().besides().isEmpty()) {
            String taken = taken(chart.frame().besides(), at);
            entries.add(new Entry("others", WindowWords.say("readout.others"), taken.isEmpty() ? "–" : taken, ""));
        }
        return new Readout(entries);
    }

    /** What other pieces keep of the kit then. */
    private static String taken(List<Booking> besides, Instant at) {
        return besides.stream()
                .flatMap(booking -> booking.kit().stream())
                .filter(taken -> !taken.stretch().from().isAfter(at)
                        && taken.stretch().until().isAfter(at))
                .map(taken ->
                        WindowWords.say("readout.taken." + taken.kind().name().toLowerCase(Locale.ROOT), taken.name()))
                .distinct()
                .collect(Collectors.joining(", "));
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
