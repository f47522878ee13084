package piecewright.store;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.calendar.ExportOptions;
import tools.jackson.databind.node.ObjectNode;

/** Keeps where the entries of a batch went, in a JSON file beside it, format 1. No password. */
public final class PlacesFile {
    private static final int LONGEST_PATH = 4096;

    private PlacesFile() {}

    public static void write(Path file, CalendarPlaces places) throws StoreException {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        places.options().ifPresent(options -> OptionsJson.put(root.putObject("options"), options));
        places.user().ifPresent(user -> root.put("user", user));
        var exports = root.putArray("exports");
        for (CalendarPlaces.Export export : places.exports()) {
            ObjectNode one = exports.addObject();
            one.put("calendar", export.calendar().toString());
            var batches = one.putArray("batches");
            export.batches().forEach(batch -> batches.addObject().put("file", batch.toString()));
        }
        AtomicFile.writeOwn(file, JsonText.write(root));
    }

    /** What is kept there; nothing if the file does not exist. */
    public static CalendarPlaces read(Path file) throws StoreException {
        if (!Files.exists(file)) return CalendarPlaces.none();
        JsonBlock root = JsonBlock.root(file, TextFile.read(file, TextFile.SMALL_BYTES), "options", "user", "exports");
        Optional<JsonBlock> block = root.optionalBlock("options");
        Optional<ExportOptions> options = block.isPresent()
                ? Optional.of(OptionsJson.read(block.get().onlyKeys("phases", "alarms", "quiet")))
                : Optional.empty();
        List<CalendarPlaces.Export> exports = new ArrayList<>();
        for (JsonBlock export : root.blocks("exports")) exports.add(export(export.onlyKeys("calendar", "batches")));
        return new CalendarPlaces(options, exports, root.optionalText("user"));
    }

    private static CalendarPlaces.Export export(JsonBlock block) throws StoreException {
        List<Path> batches = new ArrayList<>();
        for (JsonBlock batch : block.blocks("batches")) batches.add(path(batch.onlyKeys("file"), "file"));
        return new CalendarPlaces.Export(path(block, "calendar"), batches);
    }

    private static Path path(JsonBlock block, String key) throws StoreException {
        try {
            return Path.of(block.text(key, LONGEST_PATH));
        } catch (InvalidPathException notAPath) {
            throw block.refused(key, "is no name of a file; correct it");
        }
    }
}
