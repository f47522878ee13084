package piecewright.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.calendar.BatchEvents;
import piecewright.calendar.Circumstances;
import piecewright.calendar.Ledger;
import piecewright.calendar.PlanEvents;
import piecewright.journal.Journal;
import piecewright.plan.Agenda;
import piecewright.publish.CalendarFile.Member;
import piecewright.replan.Batch;
import piecewright.store.AgendaReader;
import piecewright.store.BatchFile;
import piecewright.store.JournalFile;
import piecewright.store.LedgerFile;
import piecewright.store.PlanTimes;
import piecewright.store.SavedBatch;
import piecewright.store.StoreException;
import piecewright.text.CalendarPhrases;

/**
 * A batch as calendars see it.
 *
 * @param shelf where its ledger lies
 */
record KeptBatch(Path shelf, Ledger ledger, Agenda agenda, Circumstances circumstances) {
    /** The batch of a file, with the ledger and the journal beside it. */
    static KeptBatch open(Path file, CalendarReading reading) throws StoreException {
        SavedBatch saved = BatchFile.read(file);
        Path shelf = Beside.ledger(file);
        Ledger ledger = Files.exists(shelf) ? LedgerFile.read(shelf) : Ledger.startedFor(saved.id());
        if (!ledger.batch().equals(saved.id())) {
            throw new StoreException(shelf, "is the ledger of another batch; put the right one beside " + file);
        }
        try {
            return of(file, ledger, saved, ReadWish.of(file, saved, reading.library()), reading.now());
        } catch (StoreException unread) { // readings of a place were moved, say: better unticked than gone
            return new KeptBatch(shelf, ledger, AgendaReader.read(file, saved.planJson()), Circumstances.unknown());
        }
    }

    /** A batch as it is, or is about to be, kept in this file. */
    static KeptBatch of(Path file, Ledger ledger, SavedBatch saved, ReadWish wish, Instant now) throws StoreException {
        Agenda agenda = AgendaReader.read(file, saved.planJson());
        PlanTimes times = PlanTimes.of(file, saved);
        Journal journal = JournalFile.read(JournalFile.beside(file), saved.id()).journal();
        Batch batch =
                new Batch(wish.request(), times.grainKg(), times.visits(), times.places(), saved.knownEntry(), journal);
        Circumstances circumstances =
                new Circumstances(Optional.of(wish.request().house()), DoneSoFar.of(batch, now));
        return new KeptBatch(Beside.ledger(file), ledger, agenda, circumstances);
    }

    /** The same with another plan. */
    KeptBatch withAgenda(Agenda changed) {
        return new KeptBatch(shelf, ledger, changed, circumstances);
    }

    static List<KeptBatch> open(List<Path> files, CalendarReading reading) throws StoreException {
        List<KeptBatch> batches = new ArrayList<>();
        for (Path file : files) batches.add(open(file, reading).notAmong(batches, file));
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
        return new PlanEvents(new CalendarWords(manner.units(), zone()), manner.options())
                .of(ledger.batch(), agenda, circumstances);
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
