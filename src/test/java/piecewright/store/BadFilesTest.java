package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.belief.Belief;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.calendar.ExportOptions;
import piecewright.calendar.Ledger;
import piecewright.calendar.PlanFixture;
import piecewright.calendar.PublishedCopies;
import piecewright.calendar.Span;
import piecewright.calendar.WrittenEvents;
import piecewright.learn.Learned;
import piecewright.text.ColourUnit;
import piecewright.text.DisplayUnits;
import piecewright.text.PlanSamples;
import piecewright.text.UnitSystem;
import piecewright.text.Wording;

/**
 * Good files of every kind damaged at random, and each is read or refused in one line, never anything else. The whole
 * campaign: {@code mvn -q test -Dtest='Bad*Test' -DbadFiles=100000}; alone then is time bounded too.
 */
class BadFilesTest {
    private static final long SEED = 20_310_101;
    private static final int USUAL_CASES = 4_500;
    private static final int CASES = Integer.getInteger("badFiles", USUAL_CASES);
    /** Far more than the largest of these files needs, far less than a machine has. */
    private static final long MOST_BYTES = 64L << 20;

    private static final long MOST_CPU_NANOS = 1_000_000_000;

    private final ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    private final Map<Path, Reader> readers = new LinkedHashMap<>();

    @TempDir
    private Path folder;

    @TempDir
    private Path good;

    private interface Reader {
        void read(Path file) throws StoreException;
    }

    @BeforeEach
    void goodFiles() throws IOException, StoreException {
        for (String lot : List.of("two-row-barley", "winter-wheat", "sack-without-label")) {
            readers.put(Path.of("demo-data/lots/" + lot + ".json"), LotFile::read);
        }
        for (String house : List.of("cool-garage", "farmhouse", "warm-flat")) {
            readers.put(Path.of("demo-data/houses/" + house + ".json"), HouseFile::read);
        }
        for (String style : List.of("pale", "wheat-pale", "munich", "crystal-medium")) {
            readers.put(Path.of("schedules/" + style + ".json"), StyleFile::read);
        }
        for (String log : List.of("cool-garage-2027-03", "farmhouse-barn-2027-02", "warm-flat-2027-10")) {
            Path csv = Path.of("demo-data/houses/" + log + ".csv");
            readers.put(csv, file -> AirLogCsv.read(file, ZoneId.of("Europe/Oslo")));
            Files.copy(csv, folder.resolve(csv.getFileName()));
        }
        batch();
        calendarFiles();
        journal();
        taught();
        ofTheWindow();
    }

    /** Lines of every kind; a damaged line is passed over and told, the others are read. */
    private void journal() throws StoreException {
        Path journal = good.resolve("journal.jsonl");
        List<JournalFile.Draft> drafts = JournalFileTest.EVERY_KIND.stream()
                .map(report -> new JournalFile.Draft(PlanFixture.NOW, PlanFixture.NOW, Optional.empty(), report))
                .toList();
        JournalFile.append(journal, PlanFixture.BATCH, before -> drafts);
        readers.put(journal, file -> {
            for (JournalFile.DamagedLine line :
                    JournalFile.read(file, PlanFixture.BATCH).damaged()) {
                assertEquals(1, line.why().lines().count(), line.why());
            }
        });
    }

    private void taught() throws StoreException {
        Unknown rate = new Unknown(Trait.STEEP_RATE, "barley");
        Unknown dial = new Unknown(Trait.DIAL_OFFSET, "oven");
        Belief belief = Belief.correlated(
                List.of(new Belief.Single(rate, 1.3, 0.058), new Belief.Single(dial, -3.5, 0.8)),
                new double[][] {{}, {0.4}});
        Learned learned = new Learned(List.of(new Learned.Chapter(PlanFixture.BATCH, PlanFixture.NOW, belief)));
        LearnedFile.write(good.resolve("lot.json"), learned);
        readers.put(
                good.resolve("lot.learned.json"),
                file -> LearnedFile.parse(file, TextFile.read(file, TextFile.SMALL_BYTES)));
    }

    private void ofTheWindow() throws StoreException {
        LiveFile.writeList(
                good.resolve("live.json"),
                new LiveList(List.of(good.resolve("batch.json")), DisplayUnits.metric(), ExportOptions.usual()));
        readers.put(good.resolve("live.json"), LiveFile::readList);
        WindowFile.write(
                good.resolve("window.json"),
                new SavedWindow(
                        "dark",
                        120,
                        UnitSystem.METRIC,
                        ColourUnit.EBC,
                        Optional.of(new SavedWindow.SavedWish(
                                "pale", 4, OptionalDouble.of(3.5), LocalDate.of(2027, 5, 1), "a.json", "b.json")),
                        Optional.of(new SavedWindow.Frame(10, 20, 1280, 800, true)),
                        Optional.of("batch.json")));
        readers.put(good.resolve("window.json"), WindowFile::read);
    }

    private void batch() throws IOException, StoreException {
        String plan = new PlanJson(new Wording(DisplayUnits.metric(), PlanSamples.OSLO)).write(PlanSamples.plan());
        SavedBatch.RequestTexts request = new SavedBatch.RequestTexts(
                "pale",
                Files.readString(Path.of("demo-data/lots/two-row-barley.json")),
                Files.readString(Path.of("demo-data/houses/farmhouse.json")),
                Map.of("finishedMaltKg", "4", "readyBy", "2027-05-01"));
        BatchFile.write(
                good.resolve("batch.json"),
                new SavedBatch(PlanFixture.BATCH, request, plan, Map.of("steep-1.soak", PlanFixture.BATCH)));
        readers.put(good.resolve("batch.json"), file -> {
            SavedBatch saved = BatchFile.read(file);
            AgendaReader.read(file, saved.planJson());
            PlanTimes.of(file, saved);
        });
    }

    private void calendarFiles() throws StoreException, IOException {
        var revision =
                Ledger.startedFor(PlanFixture.BATCH).next(PlanFixture.usual().events(), PlanFixture.NOW);
        LedgerFile.write(good.resolve("ledger.json"), revision.ledger());
        readers.put(good.resolve("ledger.json"), LedgerFile::read);
        UUID uid = revision.ledger().uidOf("floor");
        PublishedCopies copies = PublishedCopies.none("https://calendar.example.org/malt/")
                .with(
                        uid,
                        new PublishedCopies.Copy(
                                "floor",
                                "Cast",
                                new Span(PlanFixture.NOW, PlanFixture.NOW.plusSeconds(1800)),
                                Optional.of("\"a\""),
                                "1",
                                "2"));
        PublishedFile.write(good.resolve("published.json"), copies);
        readers.put(good.resolve("published.json"), PublishedFile::read);
        Path calendar = good.resolve("calendar.ics");
        Files.write(calendar, new piecewright.calendar.IcsWriter().file("Malt", revision.forImportFile()));
        readers.put(
                calendar,
                file -> WrittenEvents.in(
                        TextFile.read(file, TextFile.LARGE_BYTES).getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void everyDamagedFileIsReadOrRefusedInOneLine() throws IOException {
        Damage damage = new Damage(new Random(SEED));
        List<Path> all = List.copyOf(readers.keySet());
        Map<Path, byte[]> octets = new LinkedHashMap<>();
        for (Path each : all) octets.put(each, Files.readAllBytes(each));
        int refused = 0;
        for (int i = 0; i < CASES; i++) {
            Path from = all.get(i % all.size());
            byte[] damaged = damage.of(octets.get(from));
            if (refuses(from, damaged, i)) refused++;
        }
        // a journal is read past its damaged lines, and some damage is no harm
        assertTrue(refused > CASES * 2 / 5, "damage must be noticed: " + refused);
    }

    private boolean refuses(Path from, byte[] damaged, int number) throws IOException {
        Path file = folder.resolve("damaged");
        Files.write(file, damaged);
        long bytes = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
        long nanos = threads.getCurrentThreadCpuTime();
        boolean refused = false;
        try {
            readers.get(from).read(file);
        } catch (StoreException refusal) {
            refused = true;
            inOneLine(refusal);
        } catch (RuntimeException | StackOverflowError fault) {
            throw new AssertionError("case " + number + " of " + from + ":\n" + shown(damaged), fault);
        }
        long used = threads.getThreadAllocatedBytes(Thread.currentThread().getId()) - bytes;
        assertTrue(used < MOST_BYTES, () -> "case " + number + " of " + from + " took octets: " + used);
        if (CASES > USUAL_CASES) {
            long took = threads.getCurrentThreadCpuTime() - nanos;
            assertTrue(took < MOST_CPU_NANOS, () -> "case " + number + " of " + from + " took ns: " + took);
        }
        assertArrayEquals(damaged, Files.readAllBytes(file), "reading must not write");
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(4, files.count(), "reading must leave nothing behind");
        }
        return refused;
    }

    private void inOneLine(StoreException refusal) {
        String message = refusal.getMessage();
        assertEquals(1, message.lines().count(), message);
        assertTrue(message.startsWith(folder.toString()) && message.length() < 700, message);
        assertFalse(message.contains("Exception") || message.contains("tools.jackson"), message);
        assertFalse(message.chars().anyMatch(Character::isISOControl), message);
    }

    private static String shown(byte[] damaged) {
        String text = new String(damaged, StandardCharsets.UTF_8);
        return text.length() > 3000 ? text.substring(0, 3000) + " …" : text;
    }
}
