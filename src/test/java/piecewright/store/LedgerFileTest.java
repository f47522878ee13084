package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.calendar.Ledger;
import piecewright.calendar.PlanFixture;
import piecewright.calendar.PublishedCopies;
import piecewright.calendar.Span;

class LedgerFileTest {
    private static final Span SPAN = new Span(PlanFixture.NOW, PlanFixture.NOW.plusSeconds(1800));

    @TempDir
    Path folder;

    @Test
    void whatIsWrittenIsReadAgain() throws StoreException {
        Path file = folder.resolve("calendar.json");
        Ledger ledger = ledger();
        LedgerFile.write(file, ledger);
        assertEquals(ledger, LedgerFile.read(file));
        Ledger blank = Ledger.startedFor(PlanFixture.BATCH);
        LedgerFile.write(file, blank);
        assertEquals(blank, LedgerFile.read(file));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
                    '"format" : 1',      '"format" : 2'
                    '"sequence" : 0',    '"sequence" : -1'
                    '"sequence" : 0',    '"sequence" : 9999999999'
                    '"cancelled" : true', '"cancelled" : "yes"'
                    '"created"',         '"creatd"'
                    '2031-03-01T08:00:00Z', 'yesterday'
                    '2031-03-01T08:00:00Z', '2031-03-01T08:00:00.5Z'
                    '"summary" : "Act: floor"', '"summary" : ""'
                    '"floor" :',         '"floor/x" :'
                    '"floor" :',         '"elsewhere" :'
                    """)
    void aDamagedLedgerIsRefusedWithFileAndKey(String good, String bad) throws StoreException, IOException {
        Path file = folder.resolve("calendar.json");
        LedgerFile.write(file, ledger());
        String text = Files.readString(file);
        assertNotEquals(text, text.replace(good, bad), "the table must change the file");
        Files.writeString(file, text.replace(good, bad));
        StoreException refused = assertThrows(StoreException.class, () -> LedgerFile.read(file));
        assertTrue(String.valueOf(refused.getMessage()).startsWith(file.toString()), refused.getMessage());
    }

    @Test
    void publishedCopiesAreReadAgainAndHoldNoPassword() throws StoreException, IOException {
        Path file = folder.resolve("published.json");
        UUID uid = Ledger.startedFor(PlanFixture.BATCH).uidOf("floor");
        UUID other = Ledger.startedFor(PlanFixture.BATCH).uidOf("deroot");
        PublishedCopies copies = PublishedCopies.none("https://calendar.example.org/malt/")
                .with(uid, new PublishedCopies.Copy("floor", "Cast", SPAN, Optional.of("\"a\""), "1", "2"))
                .with(other, new PublishedCopies.Copy("deroot", "Rub off", SPAN, Optional.empty(), "3", ""));
        PublishedFile.write(file, copies);
        assertEquals(copies, PublishedFile.read(file));
        Files.writeString(file, Files.readString(file).replace(uid.toString(), "not-a-uuid"));
        assertThrows(StoreException.class, () -> PublishedFile.read(file));
        assertEquals(
                List.of(GoodCopy.of(file), file), Files.list(folder).sorted().toList());
    }

    private static Ledger ledger() {
        Ledger first = Ledger.startedFor(PlanFixture.BATCH)
                .next(PlanFixture.usual().events(), PlanFixture.NOW)
                .ledger();
        return first.next(PlanFixture.usual().withTurns(5).events(), PlanFixture.NOW.plusSeconds(60))
                .ledger();
    }
}
