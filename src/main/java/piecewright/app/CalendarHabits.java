package piecewright.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import piecewright.calendar.ExportOptions;
import piecewright.store.CalendarPlaces;
import piecewright.store.PlacesFile;
import piecewright.store.StoreException;

/** How somebody wants the entries of a batch, and where they went: asked once, kept beside the batch. */
public final class CalendarHabits {
    private CalendarHabits() {}

    /** What was chosen last for the first of these batches for which anything was. */
    public static Optional<ExportOptions> chosen(List<Path> batches) throws StoreException {
        for (Path batch : batches) {
            Optional<ExportOptions> options = of(batch).options();
            if (options.isPresent()) return options;
        }
        return Optional.empty();
    }

    /** Keeps what was chosen. */
    public static void choose(List<Path> batches, ExportOptions options) throws NotWrittenException {
        try {
            for (Path batch : batches) keep(batch, of(batch).withOptions(options));
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }

    /** Notes that a file to be imported was written. */
    static void exported(Path calendar, List<Path> batches, ExportOptions options) throws StoreException {
        List<Path> whole = batches.stream().map(CalendarHabits::whole).toList();
        for (Path batch : batches) {
            CalendarPlaces places = of(batch).withOptions(options);
            keep(batch, places.withExport(new CalendarPlaces.Export(whole(calendar), whole)));
        }
    }

    /** Notes with which account a batch is published. */
    static void published(Path batch, String user, ExportOptions options) throws StoreException {
        keep(batch, of(batch).withOptions(options).withUser(user));
    }

    static CalendarPlaces of(Path batch) throws StoreException {
        return PlacesFile.read(Beside.places(batch));
    }

    private static void keep(Path batch, CalendarPlaces places) throws StoreException {
        if (!places.equals(of(batch))) PlacesFile.write(Beside.places(batch), places);
    }

    private static Path whole(Path file) {
        return file.toAbsolutePath().normalize();
    }
}
