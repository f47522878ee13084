package piecewright.app;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import piecewright.app.files.EachFile;
import piecewright.plan.Act;
import piecewright.plan.Agenda;
import piecewright.plan.Check;
import piecewright.plan.Continuation;
import piecewright.plan.Timetable.Visit;
import piecewright.replan.Where;
import piecewright.store.AgendaReader;
import piecewright.store.BatchFile;
import piecewright.store.SavedBatch;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.text.ActsAhead;
import piecewright.text.ActsAhead.Ahead;

/** One list of what is still to do in all batches under way. */
public final class AllActs {
    private final StyleLibrary library;
    private final Continuation continuation;

    public AllActs(StyleLibrary library, Continuation continuation) {
        this.library = library;
        this.continuation = Objects.requireNonNull(continuation);
    }

    /**
     * Acts and checks of these batches that are overdue or begin within so long from now on, in time order; what their
     * journals have as done or passed over, and batches that were finished, are left out, and so is what cannot be read,
     * with a sentence for each. Where there are none, the next of all.
     */
    public ActsAhead of(List<Path> files, Instant now, Duration within, EachFile each) {
        List<Ahead> acts = new ArrayList<>();
        for (Path file : files) each.read(file, one -> toDo(one, now)).ifPresent(acts::addAll);
        acts.sort(Comparator.comparing(Ahead::startsAt).thenComparing(Ahead::batch));
        List<Ahead> soon = before(acts, now.plus(within));
        Optional<Ahead> next = soon.isEmpty() ? acts.stream().findFirst() : Optional.empty();
        return new ActsAhead(clock(files).orElse(ZoneOffset.UTC), now, soon, next, each.refusals());
    }

    private List<Ahead> toDo(Path file, Instant now) throws StoreException {
        SavedBatch saved = BatchFile.read(file);
        if (saved.finishedAt().isPresent()) return List.of();
        Agenda agenda = AgendaReader.read(file, saved.planJson());
        return BatchAtHand.open(file, library, continuation)
                .where(now)
                .map(where -> toDo(agenda, where))
                .orElseGet(() -> toDo(agenda, now, act -> !act.endsAt().isBefore(now)));
    }

    private static List<Ahead> before(List<Ahead> acts, Instant until) {
        return acts.stream().filter(act -> act.startsAt().isBefore(until)).toList();
    }

    /** The clock of the first of these batches that can be read and is under way, else of any; empty when there is none. */
    public static Optional<ZoneId> clock(List<Path> files) {
        EachFile each = new EachFile();
        Optional<ZoneId> first = Optional.empty();
        for (Path file : files) {
            Optional<SavedBatch> saved = each.read(file, BatchFile::read);
            if (saved.isEmpty()) continue;
            Optional<ZoneId> zone = each.read(
                    file,
                    one -> AgendaReader.read(one, saved.get().planJson())
                            .subject()
                            .zone());
            if (zone.isPresent() && saved.get().finishedAt().isEmpty()) return zone;
            first = first.or(() -> zone);
        }
        return first;
    }

    /**
     * What is still to do in one batch that stands so, overdue acts among it, until so long from now on; nothing where it
     * was finished.
     */
    public static List<Ahead> of(BatchAtHand batch, Where where, Duration within) throws StoreException {
        if (batch.finishedAt().isPresent()) return List.of();
        List<Ahead> acts = before(toDo(batch.agenda(), where), where.now().plus(within));
        return acts.stream().sorted(Comparator.comparing(Ahead::startsAt)).toList();
    }

    /** What stands before somebody: not done, and either to come or overdue. */
    private static List<Ahead> toDo(Agenda agenda, Where where) {
        Set<String> done = new HashSet<>();
        where.account().visits().stream().map(Visit::id).forEach(done::add);
        Set<String> overdue = new HashSet<>();
        where.next().overdue().stream().map(Visit::id).forEach(overdue::add);
        return toDo(
                agenda,
                where.now(),
                act -> !done.contains(act.id()) && (act.startsAt().isAfter(where.now()) || overdue.contains(act.id())));
    }

    private static List<Ahead> toDo(Agenda agenda, Instant now, Predicate<Act> counts) {
        String name = agenda.subject().title() + " – " + agenda.subject().lot();
        List<Ahead> acts = new ArrayList<>();
        for (Check check : agenda.checks()) {
            if (!check.startsAt().isBefore(now)) acts.add(new Ahead.ToCheck(name, check));
        }
        for (Act act : agenda.acts()) {
            if (counts.test(act)) acts.add(new Ahead.ToDo(name, act, agenda.staysUntil(act)));
        }
        return acts;
    }
}
