package piecewright.truth;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import piecewright.plan.PlanRequest;

/**
 * How many batches come right in another reality when a diligent person follows the program, records and plans anew at
 * every step: the table of {@code target/closed-loop.md}. {@code -Dpiecewright.households=N} households a style,
 * {@code -Dpiecewright.households.first=K} from that seed on, {@code -Dpiecewright.loop=pale,dark} only these styles,
 * {@code -Dpiecewright.tales=true} tells every step in {@code target/closed-loop.log}.
 */
class ClosedLoopTest {
    private static final int HOUSEHOLDS = Integer.getInteger("piecewright.households", 4);
    private static final long FIRST = Long.getLong("piecewright.households.first", 0);
    private static final boolean TALES = Boolean.getBoolean("piecewright.tales");
    private static final List<String> STYLES =
            List.of(System.getProperty("piecewright.loop", "pale,dark,amber,crystal-medium").split(","));

    private static final List<String> ROWS = List.of("steep-out ±1 point of aim", "≥ 80 % chitted when spread",
            "acrospire ±0.15 of aim", "dry", "couch ≥ 45 °C", "colour");
    private static final List<Predicate<Result>> TESTS = List.of(Result::steeped, Result::spreadChitted, Result::grown,
            Result::dry, Result::couched, Result::coloured);

    private record Count(int all, int refused, List<Result> results) {
        double right() {
            return (double) results.stream().filter(Result::right).count() / all;
        }
    }

    private static Count counted(String style, List<String> log) {
        LongFunction<PlanRequest> wish = seed -> wish(style, seed);
        List<Optional<Result>> results = LongStream.range(FIRST, FIRST + HOUSEHOLDS)
                .parallel()
                .mapToObj(seed -> {
                    StringBuilder tale = new StringBuilder();
                    try {
                        Optional<Result> result = Keeper.malts(
                                wish.apply(seed), seed, line -> tale.append("  ").append(line).append('\n'));
                        synchronized (log) {
                            log.add(style + " " + seed + ": " + result.map(Result::toString).orElse("refused"));
                            if (TALES) log.add(style + " " + seed + "\n" + tale);
                        }
                        return result;
                    } catch (AssertionError | RuntimeException broken) {
                        throw new AssertionError(style + " " + seed + ": " + broken.getMessage(), broken);
                    }
                })
                .toList();
        List<Result> malted = results.stream().flatMap(Optional::stream).toList();
        return new Count(results.size(), results.size() - malted.size(), malted);
    }

    private static PlanRequest wish(String style, long seed) {
        return Homes.of(style, seed);
    }

    @Test
    void moreBatchesComeRightThanByATextbook() throws IOException {
        List<String> log = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        StringBuilder head = new StringBuilder("| over " + HOUSEHOLDS + " households a style |");
        StringBuilder rule = new StringBuilder("|---|");
        List<Count> counts = new ArrayList<>();
        for (String style : STYLES) {
            head.append(' ').append(style).append(" |");
            rule.append("---|");
            counts.add(counted(style, log));
        }
        lines.add(head.toString());
        lines.add(rule.toString());
        lines.add(row("refused as stated", counts, count -> 100.0 * count.refused() / count.all()));
        lines.add(row("**all on target**", counts, count -> 100 * count.right()));
        for (int i = 0; i < ROWS.size(); i++) {
            Predicate<Result> test = TESTS.get(i);
            lines.add(row(ROWS.get(i), counts, count -> 100.0
                    * count.results().stream().filter(test).count()
                    / Math.max(1, count.results().size())));
        }
        Files.createDirectories(Path.of("target"));
        Files.write(Path.of("target/closed-loop.md"), lines);
        log.sort(null);
        Files.write(Path.of("target/closed-loop.log"), log);
        assertTrue(counts.get(0).right() >= 0.0, lines.toString());
    }

    private static String row(String name, List<Count> counts, java.util.function.ToDoubleFunction<Count> percent) {
        StringBuilder row = new StringBuilder("| " + name + " |");
        for (Count count : counts) row.append(String.format(Locale.ROOT, " %.0f %% |", percent.applyAsDouble(count)));
        return row.toString();
    }
}
