package piecewright.truth;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import piecewright.plan.PlanRequest;

/**
 * How many batches come right in another reality when a diligent person follows the program, records and plans anew at
 * every step: the table of {@code target/closed-loop.md}. {@code -Dpiecewright.households=N} households a style,
 * {@code -Dpiecewright.households.first=K} from that seed on, {@code -Dpiecewright.loop=pale,dark} only these styles,
 * {@code -Dpiecewright.tales=true} tells every step in {@code target/closed-loop.log}. Asked for more than a few, it
 * makes all four styles.
 */
class ClosedLoopTest {
    private static final int HOUSEHOLDS = Integer.getInteger("piecewright.households", 3);
    private static final long FIRST = Long.getLong("piecewright.households.first", 0);
    private static final boolean TALES = Boolean.getBoolean("piecewright.tales");
    private static final List<String> STYLES =
            List.of(System.getProperty("piecewright.loop", HOUSEHOLDS > 10 ? "pale,dark,amber,crystal-medium" : "pale")
                    .split(","));
    /** Of 12 households 9 came right when this was written, 2 of 12 before counts were obeyed. */
    private static final double LEAST_RIGHT = 0.5;

    private static final List<String> ROWS = List.of(
            "steep-out ±1 point of aim",
            "≥ 80 % chitted when spread",
            "acrospire ±0.15 of aim",
            "dry",
            "couch ≥ 45 °C",
            "colour in the style’s range or ±25 % of its middle");
    private static final List<Predicate<Result>> TESTS = List.of(
            Result::steeped, Result::spreadChitted, Result::grown, Result::dry, Result::couched, Result::coloured);

    /** What became of the households of one column, those refused left out of the results. */
    private record Column(String title, int all, List<Result> results) {
        double share(Predicate<Result> test) {
            return (double) results.stream().filter(test).count() / Math.max(1, results.size());
        }

        double right() {
            return (double) results.stream().filter(Result::right).count() / all;
        }

        double handsOnMinutes() {
            return results.stream()
                    .mapToDouble(Result::handsOnMinutes)
                    .average()
                    .orElse(0);
        }
    }

    private static Column kept(String style, List<String> log) {
        List<Optional<Result>> results = LongStream.range(FIRST, FIRST + HOUSEHOLDS)
                .parallel()
                .mapToObj(seed -> kept(style, seed, log))
                .toList();
        return new Column(
                style,
                results.size(),
                results.stream().flatMap(Optional::stream).toList());
    }

    private static Optional<Result> kept(String style, long seed, List<String> log) {
        StringBuilder tale = new StringBuilder();
        PlanRequest wish = Homes.of(style, seed);
        try {
            Optional<Result> result = Keeper.malts(
                    wish, seed, line -> tale.append("  ").append(line).append('\n'));
            synchronized (log) {
                log.add(style + " " + seed + ": " + result.map(Result::toString).orElse("refused"));
                if (TALES) log.add(style + " " + seed + "\n" + tale);
            }
            return result;
        } catch (AssertionError | RuntimeException broken) {
            throw new AssertionError(style + " " + seed + ": " + broken.getMessage() + "\n" + tale, broken);
        }
    }

    /** The same households by a fixed timetable, those refused included where they have a plan at all. */
    private static Column byTextbook(String style) {
        List<Optional<Result>> results = LongStream.range(FIRST, FIRST + HOUSEHOLDS)
                .parallel()
                .mapToObj(seed -> {
                    PlanRequest wish = Homes.of(style, seed);
                    return Keeper.planned(wish).map(plan -> Textbook.malts(wish, plan, seed));
                })
                .toList();
        return new Column(
                style + " by a textbook’s timetable",
                results.size(),
                results.stream().flatMap(Optional::stream).toList());
    }

    @Test
    void mostBatchesComeRightAndMoreThanByATextbook() throws IOException {
        List<String> log = new ArrayList<>();
        List<Column> columns = new ArrayList<>();
        for (String style : STYLES) columns.add(kept(style, log));
        if (STYLES.get(0).equals("pale")) columns.add(byTextbook("pale"));
        List<String> lines = table(columns);
        Files.createDirectories(Path.of("target"));
        Files.write(Path.of("target/closed-loop.md"), lines);
        log.sort(null);
        Files.write(Path.of("target/closed-loop.log"), log);
        if (!STYLES.get(0).equals("pale")) return;
        Column pale = columns.get(0);
        assertTrue(pale.right() >= LEAST_RIGHT, lines + "\n" + log);
        assertTrue(pale.right() > columns.get(columns.size() - 1).right(), lines.toString());
    }

    private static List<String> table(List<Column> columns) {
        StringBuilder head = new StringBuilder("| over " + HOUSEHOLDS + " households a style, of 100 |");
        StringBuilder rule = new StringBuilder("|---|");
        for (Column column : columns) {
            head.append(' ').append(column.title()).append(" |");
            rule.append("---|");
        }
        List<String> lines = new ArrayList<>(List.of(head.toString(), rule.toString()));
        lines.add(row(
                "refused as stated",
                columns,
                column -> 100 - 100.0 * column.results().size() / column.all()));
        lines.add(row("**all on target**", columns, column -> 100 * column.right()));
        for (int i = 0; i < ROWS.size(); i++) {
            Predicate<Result> test = TESTS.get(i);
            lines.add(row(ROWS.get(i), columns, column -> 100 * column.share(test)));
        }
        lines.add(row("hands-on minutes a batch", columns, Column::handsOnMinutes));
        return lines;
    }

    private static String row(String name, List<Column> columns, ToDoubleFunction<Column> figure) {
        StringBuilder row = new StringBuilder("| " + name + " |");
        for (Column column : columns) row.append(String.format(Locale.ROOT, " %.0f |", figure.applyAsDouble(column)));
        return row.toString();
    }
}
