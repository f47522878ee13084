package piecewright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import org.junit.jupiter.api.Test;

/** Every sentence of the bundle, read for words and length. */
class PlainWordsTest {
    private static final Path BUNDLE = Path.of("src/main/resources/piecewright/text/wording.properties");

    @Test
    void noSentenceHasAWordOfOursOrMoreThanTwentyFiveWords() throws IOException {
        Properties bundle = new Properties();
        try (var reader = Files.newBufferedReader(BUNDLE)) {
            bundle.load(reader);
        }
        List<String> faults = new ArrayList<>();
        bundle.forEach((key, words) -> {
            PlainWords.banned(words.toString()).forEach(found -> faults.add(key + ": " + found));
            PlainWords.tooLong(words.toString()).forEach(found -> faults.add(key + ": " + found));
        });
        assertTrue(bundle.size() > 1000, "read " + bundle.size());
        assertEquals(List.of(), faults.stream().sorted().toList());
    }

    @Test
    void whatMayNotBeSaidIsFound() {
        assertEquals(1, PlainWords.banned("Turn the piece.").size());
        assertEquals(1, PlainWords.banned("100 corns").size());
        assertEquals(1, PlainWords.banned("next: floor.turn-3 at 8").size());
        assertEquals(
                List.of(),
                PlainWords.banned("Turn the batch; see kiln.svg? No: spring.html".replace("kiln.svg", "a picture")));
        assertEquals(1, PlainWords.tooLong("word ".repeat(26)).size());
        assertEquals(List.of(), PlainWords.tooLong("word ".repeat(25) + ". " + "word ".repeat(20)));
    }
}
