package piecewright.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.calendar.DatedEvent;
import piecewright.calendar.IcsWriter;
import piecewright.calendar.Ledger;
import piecewright.calendar.PlanFixture;
import piecewright.calendar.Revision;

/** A real calendar imports a plan, and then the changed plan. */
@Tag("clients")
class KhalTest {
    @TempDir
    Path folder;

    @Test
    void aSecondImportMovesEventsInPlace() throws Exception {
        Program programs = new Program(folder);
        programs.mustBeThere("khal", "khal", "--version");
        KhalFolder khal = new KhalFolder(programs, folder, folder.resolve("cal"));
        Revision first =
                Ledger.startedFor(PlanFixture.BATCH).next(PlanFixture.usual().events(), PlanFixture.NOW);
        khal.load(write(first.forImportFile()));
        assertEquals(KhalFolder.expected(first.forImportFile()), khal.listed());

        PlanFixture changed = PlanFixture.usual().withSoak(Duration.ofHours(11)).withTurns(5);
        Revision second = first.ledger().next(changed.events(), PlanFixture.NOW.plusSeconds(60));
        khal.load(write(second.forImportFile()));
        assertEquals(KhalFolder.expected(second.forImportFile()), khal.listed());
        TreeSet<String> oneFileEach = new TreeSet<>();
        first.confirmed().forEach(event -> oneFileEach.add(event.uid() + ".ics"));
        assertEquals(oneFileEach, khal.files());
    }

    private Path write(List<DatedEvent> events) throws Exception {
        return Files.write(folder.resolve("plan.ics"), new IcsWriter().file("Malt", events));
    }
}
