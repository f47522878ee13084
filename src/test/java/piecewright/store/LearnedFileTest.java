package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.belief.Belief;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.learn.Learned;

/** What was learned, kept beside its lot or house. */
class LearnedFileTest {
    private static final Unknown RATE = new Unknown(Trait.STEEP_RATE, "barley");
    private static final Unknown DIAL = new Unknown(Trait.DIAL_OFFSET, "oven");

    @TempDir
    private Path folder;

    private static Learned.Chapter chapter(int number, double rate) {
        Belief belief = Belief.correlated(
                List.of(new Belief.Single(RATE, rate, 0.058), new Belief.Single(DIAL, -3.5, 0.8)),
                new double[][] {{}, {0.4}});
        return new Learned.Chapter(
                new UUID(7, number), Instant.parse("2031-02-20T08:00:00Z").plusSeconds(number), belief);
    }

    @Test
    void whatWasLearnedIsReadBack() throws StoreException {
        Path lot = folder.resolve("barley.json");
        LearnedFile.write(lot, new Learned(List.of(chapter(1, 1.35), chapter(2, 1.418))));
        assertEquals(folder.resolve("barley.learned.json"), LearnedFile.beside(lot));
        Learned read = LearnedFile.parse(lot, LearnedFile.textBeside(lot));
        assertEquals(
                List.of(new UUID(7, 1), new UUID(7, 2)),
                read.chapters().stream().map(Learned.Chapter::batch).toList());
        Belief belief = read.chapters().get(1).belief();
        assertEquals(1.418, belief.value(RATE), 1e-12);
        assertEquals(-3.5, belief.value(DIAL), 1e-12);
        assertEquals(0.058, belief.axisSd(RATE), 1e-12);
        assertEquals(0.4, belief.correlation(DIAL, RATE), 1e-12);
        assertEquals(LearnedFile.text(read), LearnedFile.text(LearnedFile.parse(lot, LearnedFile.text(read))));
    }

    @Test
    void nothingBesideAFileIsNothingLearned() throws StoreException {
        Path lot = folder.resolve("barley.json");
        assertEquals(Learned.nothing(), LearnedFile.parse(lot, LearnedFile.textBeside(lot)));
    }

    private void refused(String from, String to, String expected) {
        Path lot = folder.resolve("barley.json");
        String good = LearnedFile.text(new Learned(List.of(chapter(1, 1.35), chapter(2, 1.4))));
        assertTrue(good.contains(from), good);
        StoreException refusal =
                assertThrows(StoreException.class, () -> LearnedFile.parse(lot, good.replace(from, to)));
        assertTrue(String.valueOf(refusal.getMessage()).contains(expected), refusal.getMessage());
    }

    @Test
    void damageIsNamedWithItsKey() {
        refused(
                "\"steepRateRatio\"",
                "\"steepRate\"",
                "learned[0].beliefs[0].trait\" \"steepRate\" is not known; known here");
        refused("\"value\" : 1.35", "\"value\" : 13.5", "must be from 0.4 to 3");
        refused("\"axisSd\" : 0.8", "\"axisSd\" : 0", "axisSd");
        refused("[ 0.4 ]", "[ 1.0 ]", "exclude each other");
        refused("[ 0.4 ]", "[ ]", "row 1 must have 1 members");
        refused("\"format\" : 1", "\"format\" : 2", "format");
        refused("0000-000000000002", "0000-000000000001", "a batch must not teach twice");
    }
}
