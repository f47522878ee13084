package piecewright.history;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import piecewright.journal.AcrospireCount;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import piecewright.journal.Report.Corrected;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.Started;
import piecewright.journal.Report.Tare;
import piecewright.journal.Report.Weighed;
import piecewright.journal.Sign;
import piecewright.journal.Spot;
import piecewright.plan.ActKind;
import piecewright.quantity.Moisture;

/** Journals of any entries that a file may hold, true or not: any act, any figure, any year, corrected and struck. */
public final class RandomLogs {
    private RandomLogs() {}

    /** About a batch that is planned between two instants. */
    public static Arbitrary<Journal> about(Instant from, Instant until, int mostEntries) {
        return line(from, until).list().ofMaxSize(mostEntries).map(RandomLogs::journal);
    }

    private record Line(Instant at, Instant writtenAt, Optional<String> actId, Report report, int corrects) {}

    private static Journal journal(List<Line> lines) {
        List<Entry> entries = new ArrayList<>();
        for (Line line : lines) {
            int number = entries.size() + 1;
            boolean corrects = line.corrects() > 0 && number > 1;
            Report report = corrects
                    ? new Corrected(
                            1 + line.corrects() % (number - 1),
                            line.corrects() % 3 == 0 ? Optional.empty() : Optional.of(line.report()))
                    : line.report();
            entries.add(new Entry(number, line.at(), line.writtenAt(), line.actId(), report));
        }
        return new Journal(entries);
    }

    private static Arbitrary<Line> line(Instant from, Instant until) {
        Arbitrary<Instant> at = instants(from, until);
        Arbitrary<Instant> writtenAt =
                Arbitraries.frequencyOf(Tuple.of(4, Arbitraries.just(Instant.MIN)), Tuple.of(1, instants(from, until)));
        Arbitrary<Integer> corrects =
                Arbitraries.frequency(Tuple.of(8, 0), Tuple.of(1, 1), Tuple.of(1, 3), Tuple.of(1, 5));
        return Combinators.combine(at, writtenAt, ids(), reports(), corrects)
                .as((when, written, id, report, number) ->
                        new Line(when, written.equals(Instant.MIN) ? when : written, id, report, number));
    }

    private static Arbitrary<Instant> instants(Instant from, Instant until) {
        long minutes = Duration.between(from, until).toMinutes();
        return Arbitraries.frequencyOf(
                Tuple.of(12, Arbitraries.longs().between(0, minutes).map(m -> from.plusSeconds(60 * m))),
                Tuple.of(
                        1,
                        Arbitraries.of(
                                Instant.EPOCH,
                                Instant.parse("2017-05-01T12:00:00Z"),
                                Instant.parse("2100-01-01T00:00:00Z"),
                                Instant.parse("-999999999-01-01T00:00:00Z"),
                                Instant.parse("+999999999-12-31T23:59:59Z"),
                                from.minus(Duration.ofDays(3)),
                                until.plus(Duration.ofDays(45)))));
    }

    private static Arbitrary<Optional<String>> ids() {
        return Arbitraries.frequencyOf(
                Tuple.of(5, Arbitraries.just(Optional.<String>empty())),
                Tuple.of(
                        1,
                        Arbitraries.of(
                                        "steep-1.soak",
                                        "steep-2.drain",
                                        "steep-99999999999.soak",
                                        "floor.turn-3",
                                        "kiln.raise-95",
                                        "kiln.load",
                                        "oven.roast-2",
                                        "nonsense",
                                        "",
                                        "couch.")
                                .map(Optional::of)));
    }

    private static Arbitrary<Report> reports() {
        return Arbitraries.frequencyOf(Tuple.of(6, acts()), Tuple.of(5, figures()), Tuple.of(1, others()));
    }

    private static Arbitrary<Report> acts() {
        Arbitrary<ActKind> kinds = Arbitraries.of(ActKind.values());
        Arbitrary<Report> did = kinds.map(Did::of);
        Arbitrary<Report> began = kinds.map(Started::new);
        Arbitrary<Report> sprinkled = positive().map(waterL -> new Did(ActKind.SPRINKLE, OptionalDouble.of(waterL)));
        return Arbitraries.oneOf(did, did, began, sprinkled);
    }

    /** Kilograms or litres; some of a batch of five kilograms, some of no batch at all. */
    private static Arbitrary<Double> positive() {
        Arbitrary<Double> usual = Arbitraries.doubles().between(3.5, 9.5).ofScale(3);
        return Arbitraries.oneOf(usual, usual, Arbitraries.of(1e-300, 0.001, 0.2, 2.5, 16.6, 999.0, 1e300));
    }

    private static Arbitrary<Report> figures() {
        Arbitrary<Report> weighed = positive().map(Weighed::net);
        Arbitrary<Report> inTub = positive()
                .map(kg -> kg > 1.84 && kg < 1000
                        ? new Weighed(kg, Optional.of(new Tare("blue tub", 1.84)))
                        : Weighed.net(kg));
        Arbitrary<Report> dried = Arbitraries.of(0.0, 0.02, 0.05, 0.2, 0.44, 0.55, 0.6, 0.999999)
                .map(m -> new Report.SampleDried(new Moisture(m)));
        Arbitrary<Report> read = Combinators.combine(
                        Arbitraries.of(
                                -40.0, -5.0, 0.0, 9.0, 15.0, 22.0, 45.0, 58.0, 65.0, 75.0, 99.0, 140.0, 212.0, 300.0),
                        Arbitraries.of(Spot.values()))
                .as(Report.TemperatureRead::new);
        Arbitrary<Report> counted = Arbitraries.integers().between(0, 5).map(row -> {
            List<Integer> corns = new ArrayList<>(List.of(0, 0, 0, 0, 0, 0));
            corns.set(row, 100_000);
            return new Report.AcrospiresCounted(new AcrospireCount(corns));
        });
        Arbitrary<Report> chitted =
                Arbitraries.integers().between(0, 50).map(corns -> new Report.ChittedCounted(corns, 50));
        Arbitrary<Report> colour =
                Arbitraries.of(0.0, 1e-300, 3.2, 60.0, 3000.0).map(Report.ColourMeasured::new);
        return Arbitraries.oneOf(Arrays.asList(weighed, weighed, inTub, dried, read, read, counted, chitted, colour));
    }

    private static Arbitrary<Report> others() {
        Arbitrary<Report> seen =
                Arbitraries.of(Sign.values()).map(sign -> new Report.Observed(sign, "as it was typed"));
        Arbitrary<Report> heat =
                Arbitraries.of(0.0, 45.0, 50.0, 60.0, 80.0, 85.0, 300.0).map(Report.HeatSet::new);
        Arbitrary<Report> vents = Arbitraries.of(0.0, 0.5, 1.0).map(Report.VentsSet::new);
        Arbitrary<Report> vessel =
                Arbitraries.of(0.0, 1.84, 999.0).map(kg -> new Report.VesselWeighed(new Tare("blue tub", kg)));
        Arbitrary<Report> note = Arbitraries.just(new Report.Noted("smelt of apples"));
        return Arbitraries.oneOf(Arrays.asList(seen, heat, vents, vessel, note));
    }
}
