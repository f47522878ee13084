package piecewright.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import piecewright.calendar.BatchEvents;
import piecewright.calendar.Ledger;
import piecewright.calendar.PlanEvents;
import piecewright.plan.Agenda;
import piecewright.publish.CalendarFile.Member;
import piecewright.store.AgendaReader;
import piecewright.store.BatchFile;
import piecewright.store.LedgerFile;
import piecewright.store.SavedBatch;
import piecewright.store.StoreException;
import piecewright.text.CalendarPhrases;

/**
 * A batch as calendars see it.
 *
 * @param shelf where its ledger lies
 */
record KeptBatch(Path shelf, Ledger ledger, Agenda agenda) {
    /** The batch of a file, with the ledger beside it. */
    static KeptBatch open(Path file) throws StoreException {
        SavedBatch saved = BatchFile.read(file);
        Path shelf = Beside.ledger(file);
        Ledger ledger = Files.exists(shelf) ? LedgerFile.read(shelf) : Ledger.startedFor(saved.id());
        if (!ledger.batch().equals(saved.id())) {
            throw new StoreException(shelf, "is the ledger of another batch; put the right one beside " + file);
        }
        return new KeptBatch(shelf, ledger, AgendaReader.read(file, saved.planJson()));
    }

    static List<KeptBatch> open(List<Path> files) throws StoreException {
        List<KeptBatch> batches = new ArrayList<>();
        for (Path file : files) batches.add(open(file).notAmong(batches, file));
        return batches;
    }

    /** This batch, refused when it is one of these already. */
    KeptBatch notAmong(List<KeptBatch> others, Path file) throws StoreException {
        boolean twice = others.stream().anyMatch(other -> other.ledger().batch().equals(ledger.batch()));
        if (twice) throw new StoreException(file, "is the same batch as one named before; name each once");
        return this;
    }

    ZoneId zone() {
        return agenda.subject().zone();
    }

    BatchEvents events(CalendarManner manner) {
        return new PlanEvents(new CalendarWords(manner.units(), zone()), manner.options()).of(ledger.batch(), agenda);
    }

    Member member(CalendarManner manner) {
        return new Member(events(manner), ledger, changed -> LedgerFile.write(shelf, changed));
    }

    static List<Member> members(List<KeptBatch> batches, CalendarManner manner) {
        return batches.stream().map(batch -> batch.member(manner)).toList();
    }

    /** What calendars show for all of these together. */
    static String title(List<KeptBatch> batches) {
        if (batches.size() != 1) return CalendarPhrases.say("many");
        var subject = batches.get(0).agenda().subject();
        return subject.title() + " – " + subject.lot();
    }
}
