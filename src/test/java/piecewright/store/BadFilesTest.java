package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Good files damaged at random: each is read or refused in one line, never anything else. */
class BadFilesTest {
    private static final int CASES_PER_SEED = 800;
    private static final List<String> PIECES = List.of(
            "null",
            "-1",
            "1e999",
            "NaN",
            "\"\"",
            "{",
            "}",
            "[",
            "]",
            ",",
            ":",
            "\"",
            "\\u0000",
            "\ud83d",
            "true",
            "99999999999999999999",
            "\"5 kg\"",
            "{}",
            "[]",
            "=1+1",
            "\n",
            "1,234",
            "[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(longs = {20_310_101, 20_310_202, 20_310_303})
    void everyDamagedFileIsReadOrRefusedInOneLine(long seed) throws IOException {
        Random random = new Random(seed);
        List<Path> good = List.of(
                Path.of("demo-data/lots/two-row-barley.json"),
                Path.of("demo-data/houses/farmhouse.json"),
                Path.of("schedules/pale.json"),
                Path.of("demo-data/houses/cool-garage-2027-03.csv"));
        Files.copy(
                Path.of("demo-data/houses/farmhouse-barn-2027-02.csv"), folder.resolve("farmhouse-barn-2027-02.csv"));
        int refusals = 0;
        for (int i = 0; i < CASES_PER_SEED; i++) {
            Path from = good.get(i % good.size());
            Path file = folder.resolve("damaged");
            Files.write(file, damaged(Files.readAllBytes(from), random));
            try {
                read(from, file);
            } catch (StoreException refused) {
                refusals++;
                String message = refused.getMessage();
                assertEquals(1, message.lines().count(), message);
                assertTrue(message.startsWith(folder.toString()) && message.length() < 700, message);
                assertFalse(message.contains("Exception") || message.contains("tools.jackson"), message);
            }
        }
        assertTrue(refusals > CASES_PER_SEED / 2, "damage must be noticed: " + refusals);
    }

    private static void read(Path from, Path file) throws StoreException {
        if (from.toString().contains("lots")) LotFile.read(file);
        else if (from.toString().contains("schedules")) StyleFile.read(file);
        else if (from.toString().endsWith("csv")) AirLogCsv.read(file, ZoneId.of("Europe/Oslo"));
        else HouseFile.read(file);
    }

    private static byte[] damaged(byte[] good, Random random) {
        if (random.nextInt(10) == 0) return java.util.Arrays.copyOf(good, random.nextInt(good.length));
        String text = new String(good, java.nio.charset.StandardCharsets.UTF_8);
        for (int times = 1 + random.nextInt(3); times > 0; times--) {
            int at = random.nextInt(text.length());
            int until = Math.min(text.length(), at + random.nextInt(8));
            text = text.substring(0, at) + PIECES.get(random.nextInt(PIECES.size())) + text.substring(until);
        }
        byte[] bytes = text.getBytes(java.nio.charset.StandardCharsets.UTF_8);
        if (random.nextInt(4) == 0) bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        return bytes;
    }
}
