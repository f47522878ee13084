package piecewright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import piecewright.journal.Entry;
import piecewright.journal.Report;
import piecewright.journal.Spot;
import piecewright.plan.ActKind;
import piecewright.store.JournalFile.Draft;

/** Opens a journal of 10,000 entries: the first time in a new process, and warm. */
@State(Scope.Benchmark)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class JournalBenchmark {
    private static final UUID BATCH = UUID.fromString("5b0e86a1-6f1c-4b5e-9d5a-0a6c1d1c9b33");
    private static final Instant AT = Instant.parse("2031-03-14T19:00:00Z");
    private static final int ENTRIES = 10_000;

    private Path file;

    /** Weighings, temperatures, acts and notes by turns. */
    @Setup
    public void write() throws IOException, StoreException {
        file = Files.createTempFile("journal", ".jsonl");
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < ENTRIES; i++) {
            Report report = switch (i % 4) {
                case 0 -> Report.Weighed.net(5 + i % 100 / 100.0);
                case 1 -> new Report.TemperatureRead(14 + i % 50 / 10.0, Spot.CORE);
                case 2 -> Report.Did.of(ActKind.TURN);
                default -> new Report.Noted("smells of cucumber, roots white");
            };
            drafts.add(new Draft(AT.plusSeconds(60L * i), AT.plusSeconds(60L * i), Optional.empty(), report));
        }
        JournalFile.append(file, BATCH, journal -> drafts);
    }

    @TearDown
    public void remove() throws IOException {
        Files.delete(file);
    }

    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Fork(5)
    @Warmup(iterations = 0)
    @Measurement(iterations = 1)
    public List<Entry> firstOpening() throws StoreException {
        return JournalFile.read(file, BATCH).journal().effective();
    }

    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @Fork(1)
    @Warmup(iterations = 3, time = 1)
    @Measurement(iterations = 3, time = 1)
    public List<Entry> warmOpening() throws StoreException {
        return JournalFile.read(file, BATCH).journal().effective();
    }
}
