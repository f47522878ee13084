package piecewright.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import piecewright.app.files.EachFile;
import piecewright.calendar.CalendarChanges;
import piecewright.calendar.ExportOptions;
import piecewright.plan.Agenda;
import piecewright.publish.CalendarFile;
import piecewright.publish.CalendarFile.Purpose;
import piecewright.store.FolderLock;
import piecewright.store.GoodCopy;
import piecewright.store.Links;
import piecewright.store.LiveFile;
import piecewright.store.LiveList;
import piecewright.store.StoreException;
import piecewright.text.CalendarPhrases;

/**
 * A calendar file that another program watches: it always says what the batches it shows say now. Which batches those
 * are, and in which units and manner, lies beside it; at each batch lies the name of the calendar, so that whoever
 * changes the plan of a batch only has to call {@link #refresh}.
 */
public final class LiveCalendar {
    private final Path calendar;
    private final LiveList list;
    private final CalendarReading reading;
    private final List<String> leftOut;

    private LiveCalendar(Path calendar, LiveList list, CalendarReading reading) {
        this(calendar, list, reading, List.of());
    }

    private LiveCalendar(Path calendar, LiveList list, CalendarReading reading, List<String> leftOut) {
        this.calendar = calendar;
        this.list = list;
        this.reading = reading;
        this.leftOut = List.copyOf(leftOut);
    }

    /** How a live calendar shows its batches; empty if there is none yet. */
    public static Optional<ExportOptions> options(Path calendar) throws StoreException {
        Path file = Beside.liveList(whole(calendar));
        return Files.exists(file) ? Optional.of(LiveFile.readList(file).options()) : Optional.empty();
    }

    /** The calendar as it is once those of these batches are shown too that can be; nothing is written yet. */
    public static LiveCalendar withReadable(
            Path calendar, List<Path> batches, CalendarManner manner, CalendarReading reading)
            throws StoreException, NotWrittenException {
        EachFile each = new EachFile();
        List<Path> readable = new ArrayList<>();
        for (Path batch : batches) {
            each.read(batch, file -> {
                        KeptBatch.open(file, reading);
                        mustNotBeShownElsewhere(whole(file), whole(calendar));
                        return file;
                    })
                    .ifPresent(readable::add);
        }
        return with(calendar, readable, manner, reading).leavingOut(each.refusals());
    }

    private LiveCalendar leavingOut(List<String> sentences) {
        return new LiveCalendar(calendar, list, reading, sentences);
    }

    /** The calendar as it is once these batches are shown too, all in this manner; nothing is written yet. */
    public static LiveCalendar with(Path calendar, List<Path> batches, CalendarManner manner, CalendarReading reading)
            throws StoreException, NotWrittenException {
        KeptBatch.open(batches, reading);
        Path whole = whole(calendar);
        OneOffCalendar.mustHaveAPlace(whole);
        Set<Path> shown = new LinkedHashSet<>(known(whole));
        boolean fresh = shown.isEmpty();
        for (Path batch : batches) {
            mustNotBeShownElsewhere(whole(batch), whole);
            shown.add(whole(batch));
        }
        LiveCalendar live =
                new LiveCalendar(whole, new LiveList(List.copyOf(shown), manner.units(), manner.options()), reading);
        if (fresh) {
            var ledgers =
                    live.there(new EachFile()).stream().map(KeptBatch::ledger).toList();
            OneOffCalendar.mustHoldOnly(whole, ledgers);
        }
        return live;
    }

    /** The calendar as it is once these batches are no longer shown. */
    public static LiveCalendar without(Path calendar, List<Path> batches, CalendarReading reading)
            throws StoreException {
        Path whole = whole(calendar);
        if (!Files.exists(Beside.liveList(whole))) throw new StoreException(calendar, "is no live calendar of ours");
        LiveList list = LiveFile.readList(Beside.liveList(whole));
        List<Path> left = new ArrayList<>(list.batches());
        for (Path batch : batches) {
            if (!left.remove(whole(batch))) {
                throw new StoreException(calendar, "does not show " + batch + "; name a batch that it shows");
            }
        }
        return new LiveCalendar(whole, new LiveList(left, list.units(), list.options()), reading);
    }

    /**
     * Brings the live calendar of this batch up to date, if one shows it; to be called whenever a new plan of the batch
     * was accepted and kept, or something was written down of it.
     */
    public static Optional<CalendarUpdate> refresh(Path batch, CalendarReading reading) throws NotWrittenException {
        try {
            Optional<LiveCalendar> live = of(batch, reading);
            return live.isEmpty() ? Optional.empty() : Optional.of(live.get().write());
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }

    /** What {@link #refresh} would tell the live calendar of this batch if this were its plan. */
    public static Optional<CalendarUpdate> preview(Path batch, Agenda agenda, CalendarReading reading)
            throws StoreException {
        Optional<LiveCalendar> live = of(batch, reading);
        if (live.isEmpty()) return Optional.empty();
        EachFile each = new EachFile();
        List<KeptBatch> batches = new ArrayList<>();
        for (KeptBatch kept : live.get().there(each)) {
            boolean own = kept.shelf().equals(Beside.ledger(whole(batch)));
            batches.add(own ? kept.withAgenda(agenda) : kept);
        }
        return Optional.of(live.get().update(batches, each));
    }

    private static Optional<LiveCalendar> of(Path batch, CalendarReading reading) throws StoreException {
        Optional<Path> calendar = LiveFile.readMark(Beside.liveMark(whole(batch)));
        if (calendar.isEmpty() || !known(calendar.get()).contains(whole(batch))) return Optional.empty();
        LiveList list = LiveFile.readList(Beside.liveList(calendar.get()));
        return Optional.of(new LiveCalendar(calendar.get(), list, reading));
    }

    /** What {@link #write} would change. */
    public CalendarUpdate preview() throws StoreException {
        EachFile each = new EachFile();
        return update(there(each), each);
    }

    /** Notes what is shown, then brings the file up to date. */
    public CalendarUpdate write() throws NotWrittenException {
        List<Path> touched = new ArrayList<>(files());
        touched.add(calendar);
        try (FolderLock lock = Locking.of(touched)) {
            return write(lock);
        }
    }

    private CalendarUpdate write(FolderLock lock) throws NotWrittenException {
        if (!lock.holds()) throw new IllegalArgumentException("lock must be held");
        try {
            EachFile each = new EachFile();
            List<KeptBatch> batches = there(each);
            CalendarUpdate update = update(batches, each);
            List<Path> before = known(calendar);
            for (Path batch : files()) LiveFile.writeMark(Beside.liveMark(batch), calendar);
            if (list.batches().isEmpty()) remove(Beside.liveList(calendar));
            else LiveFile.writeList(Beside.liveList(calendar), list);
            file(batches).write(KeptBatch.members(batches, manner()), reading.now());
            for (Path batch : before) if (!list.batches().contains(batch)) remove(Beside.liveMark(batch));
            return update;
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }

    private CalendarUpdate update(List<KeptBatch> batches, EachFile each) throws StoreException {
        CalendarChanges changes = file(batches)
                .changes(KeptBatch.members(batches, manner()))
                .orElseThrow(() -> OneOffCalendar.notOurs(calendar));
        ZoneId zone = batches.isEmpty() ? ZoneOffset.UTC : batches.get(0).zone();
        List<String> without = new ArrayList<>(leftOut);
        list.batches().stream()
                .filter(batch -> !Files.exists(batch))
                .forEach(batch -> without.add(CalendarPhrases.say("missing", batch.toString())));
        each.refusals().forEach(refusal -> without.add(CalendarPhrases.say("unread", refusal)));
        return new CalendarUpdate(calendar.toString(), zone, changes, without);
    }

    private CalendarFile file(List<KeptBatch> batches) {
        return new CalendarFile(calendar, Purpose.LIVE, KeptBatch.title(batches));
    }

    private CalendarManner manner() {
        return new CalendarManner(list.units(), list.options());
    }

    /** Those that can be read, each batch once. */
    private List<KeptBatch> there(EachFile each) {
        List<KeptBatch> batches = new ArrayList<>();
        for (Path file : files()) {
            each.read(file, one -> KeptBatch.open(one, reading).notAmong(batches, one))
                    .ifPresent(batches::add);
        }
        return batches;
    }

    private List<Path> files() {
        return list.batches().stream().filter(Files::exists).toList();
    }

    private static List<Path> known(Path calendar) throws StoreException {
        Path file = Beside.liveList(calendar);
        return Files.exists(file) ? LiveFile.readList(file).batches() : List.of();
    }

    private static void mustNotBeShownElsewhere(Path batch, Path calendar) throws StoreException {
        Optional<Path> shown = LiveFile.readMark(Beside.liveMark(batch));
        if (shown.isPresent()
                && !shown.get().equals(calendar)
                && known(shown.get()).contains(batch)) {
            throw new StoreException(batch, "is shown by " + shown.get() + " already; say --take-out there first");
        }
    }

    private static Path whole(Path file) {
        return Links.end(file).toAbsolutePath().normalize();
    }

    private static void remove(Path file) throws StoreException {
        GoodCopy.remove(file);
    }
}
