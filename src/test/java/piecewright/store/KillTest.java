package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.journal.Entry;
import piecewright.journal.Report;

/**
 * A program that saves all the time is killed at random instants, as by "kill -9". What it had said was kept is kept,
 * and every file can be read as it lies. 500 times: {@code mvn -q test -Dtest=KillTest -Dpiecewright.kills=500}.
 */
class KillTest {
    private static final int KILLS = Integer.getInteger("piecewright.kills", 12);

    /** How long a program may go on after its first word, ms: some ten saves. */
    private static final int LONGEST_MILLIS = 160;

    @TempDir
    Path folder;

    @Test
    void whateverWasSaidToBeKeptIsKeptWheneverTheProgramIsKilled() throws Exception {
        Path file = folder.resolve("batch.json");
        SavedBatch batch = BatchFile.read(Path.of("src/test/resources/store/batch-format-1.json"));
        BatchFile.write(file, batch);
        Random random = new Random(19);
        int said = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            List<String> lines = untilKilled(file, random.nextInt(LONGEST_MILLIS));
            assertTrue(!lines.isEmpty(), "kill " + kill + ": it said nothing");
            said += lines.size();
            check(file, batch, lines, "kill " + kill);
        }
        SavingForever.save(file, batch, SavingForever.entry(file, batch));
        assertEquals(List.of(), unfinished());
        if (KILLS >= 100) System.out.println(KILLS + " kills, " + said + " things kept, none lost");
    }

    private List<String> untilKilled(Path file, int afterMillis) throws IOException, InterruptedException {
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Xmx64m",
                        "-cp",
                        classPath(),
                        SavingForever.class.getName(),
                        file.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        List<String> lines = new ArrayList<>();
        try (BufferedReader words = program.inputReader(StandardCharsets.UTF_8)) {
            String first = words.readLine();
            Thread.sleep(afterMillis);
            program.toHandle().destroyForcibly(); // the handle leaves what it said to be read
            if (first != null) lines.add(first);
            words.lines().forEach(lines::add);
        }
        program.waitFor();
        return lines;
    }

    /** Where this run has its classes from, whoever started it. */
    private static String classPath() {
        List<Class<?>> needed = List.of(
                SavingForever.class,
                BatchFile.class,
                tools.jackson.databind.ObjectMapper.class,
                tools.jackson.core.JsonParser.class,
                com.fasterxml.jackson.annotation.JsonInclude.class);
        return needed.stream()
                .map(each -> Path.of(URI.create(each.getProtectionDomain()
                                .getCodeSource()
                                .getLocation()
                                .toString()))
                        .toString())
                .distinct()
                .collect(Collectors.joining(File.pathSeparator));
    }

    private static void check(Path file, SavedBatch batch, List<String> lines, String when) throws StoreException {
        SavedBatch saved = BatchFile.read(file);
        assertEquals(SavingForever.known(batch, saved.knownEntry()), saved, when);
        BatchFile.read(GoodCopy.of(file));
        Map<Integer, String> kept = new TreeMap<>();
        JournalFile.Content content = JournalFile.read(JournalFile.beside(file), batch.id());
        for (Entry entry : content.journal().entries()) {
            kept.put(entry.number(), ((Report.Noted) entry.report()).words());
        }
        for (String line : lines) {
            int number = Integer.parseInt(line.substring(line.indexOf(' ') + 1));
            if (line.startsWith("saved ")) assertTrue(saved.knownEntry() >= number, when + ": " + line);
            else assertEquals(SavingForever.words(number), kept.get(number), when);
        }
    }

    private List<Path> unfinished() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(each -> each.toString().endsWith(".tmp")).toList();
        }
    }
}
