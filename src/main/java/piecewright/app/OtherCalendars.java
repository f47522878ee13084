package piecewright.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import piecewright.calendar.DatedEvent;
import piecewright.calendar.ExportOptions;
import piecewright.calendar.PublishedCopies;
import piecewright.store.CalendarPlaces;
import piecewright.store.PublishedFile;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;

/**
 * What became of the calendars that show a batch, beside the live one, when its plan changed: files that were imported
 * are written anew, to be imported again; what needs a password or is no longer there holds old times.
 */
public record OtherCalendars(List<Path> rewritten, List<Behind> behind) {
    public OtherCalendars {
        rewritten = List.copyOf(rewritten);
        behind = List.copyOf(behind);
    }

    /**
     * A calendar that still holds old times.
     *
     * @param calendar a file or the address of a collection
     * @param command what brings it up to date
     */
    public record Behind(String calendar, String command) {}

    static OtherCalendars none() {
        return new OtherCalendars(List.of(), List.of());
    }

    /** Brings up to date what can be; the calendar that was just written is passed over. */
    static OtherCalendars of(Path batch, Optional<Path> written, DisplayUnits units, CalendarReading reading)
            throws NotWrittenException {
        try {
            CalendarPlaces places = CalendarHabits.of(batch);
            CalendarManner manner = new CalendarManner(units, places.options().orElseGet(ExportOptions::usual));
            List<Path> rewritten = new ArrayList<>();
            List<Behind> behind = new ArrayList<>();
            Optional<Path> done = written.map(file -> file.toAbsolutePath().normalize());
            for (CalendarPlaces.Export export : places.exports()) {
                if (done.filter(export.calendar()::equals).isPresent()) continue;
                switch (rewritten(export, manner, reading)) {
                    case CHANGED -> rewritten.add(export.calendar());
                    case AS_BEFORE -> {}
                    case NOT_POSSIBLE -> behind.add(behind(export));
                }
            }
            published(batch, places, manner, reading).ifPresent(behind::add);
            return new OtherCalendars(rewritten, behind);
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }

    private enum Rewriting {
        CHANGED,
        AS_BEFORE,
        /** Moved away, or no longer ours. */
        NOT_POSSIBLE
    }

    private static Rewriting rewritten(CalendarPlaces.Export export, CalendarManner manner, CalendarReading reading) {
        Path file = export.calendar();
        if (!Files.exists(file) || !export.batches().stream().allMatch(Files::exists)) return Rewriting.NOT_POSSIBLE;
        try {
            byte[] before = Files.readAllBytes(file);
            OneOffCalendar.of(file, export.batches(), reading).write(manner, reading.now());
            return Arrays.equals(before, Files.readAllBytes(file)) ? Rewriting.AS_BEFORE : Rewriting.CHANGED;
        } catch (IOException | StoreException | NotWrittenException cannot) {
            return Rewriting.NOT_POSSIBLE;
        }
    }

    private static Behind behind(CalendarPlaces.Export export) {
        String file = export.calendar().toString();
        return new Behind(file, command(export.batches(), "--file " + ShellWord.of(file)));
    }

    private static Optional<Behind> published(
            Path batch, CalendarPlaces places, CalendarManner manner, CalendarReading reading) throws StoreException {
        Path file = Beside.published(batch);
        if (!Files.exists(file)) return Optional.empty();
        PublishedCopies copies = PublishedFile.read(file);
        KeptBatch kept = KeptBatch.open(batch, reading);
        List<DatedEvent> events =
                kept.ledger().next(kept.events(manner), reading.now()).forLiveFile();
        if (copies.changesTo(events).isEmpty()) return Optional.empty();
        String user = places.user().map(name -> " --user " + ShellWord.of(name)).orElse("");
        String to = "--collection " + ShellWord.of(copies.collection()) + user;
        return Optional.of(new Behind(copies.collection(), command(List.of(batch), to)));
    }

    private static String command(List<Path> batches, String to) {
        StringBuilder words = new StringBuilder("piecewright calendar");
        for (Path batch : batches) words.append(" --batch ").append(ShellWord.of(batch.toString()));
        return words.append(' ').append(to).toString();
    }
}
