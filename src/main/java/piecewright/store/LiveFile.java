package piecewright.store;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import piecewright.text.ColourUnit;
import piecewright.text.DisplayUnits;
import piecewright.text.Quoted;
import piecewright.text.UnitSystem;
import tools.jackson.databind.node.ObjectNode;

/** Keeps what a live calendar shows, and at a batch which calendar that is: two JSON files, format 1. */
public final class LiveFile {
    private static final int LONGEST_PATH = 4096;

    private LiveFile() {}

    public static void writeList(Path file, LiveList list) throws StoreException {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        var batches = root.putArray("batches");
        list.batches().forEach(batch -> batches.addObject().put("file", batch.toString()));
        root.put("units", key(list.units().system()));
        root.put("colourUnit", key(list.units().colour()));
        root.put("locale", list.units().locale().toLanguageTag());
        OptionsJson.put(root, list.options());
        GoodCopy.write(file, JsonText.write(root));
    }

    public static LiveList readList(Path file) throws StoreException {
        JsonBlock root = JsonBlock.root(
                file,
                TextFile.read(file, TextFile.SMALL_BYTES),
                "batches",
                "units",
                "colourUnit",
                "locale",
                "phases",
                "alarms",
                "quiet");
        List<Path> batches = new ArrayList<>();
        for (JsonBlock batch : root.blocks("batches")) batches.add(path(batch.onlyKeys("file"), "file"));
        DisplayUnits units = new DisplayUnits(
                constant(root, "units", UnitSystem.values()),
                constant(root, "colourUnit", ColourUnit.values()),
                Locale.forLanguageTag(root.text("locale")));
        return new LiveList(batches, units, OptionsJson.read(root));
    }

    /** Notes at a batch that this calendar shows it. */
    public static void writeMark(Path file, Path calendar) throws StoreException {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        root.put("calendar", calendar.toString());
        GoodCopy.write(file, JsonText.write(root));
    }

    /** The calendar that shows a batch; empty if the file does not exist. */
    public static Optional<Path> readMark(Path file) throws StoreException {
        if (!Files.exists(file)) return Optional.empty();
        JsonBlock root = JsonBlock.root(file, TextFile.read(file, TextFile.SMALL_BYTES), "calendar");
        return Optional.of(path(root, "calendar"));
    }

    private static Path path(JsonBlock block, String key) throws StoreException {
        try {
            return Path.of(block.text(key, LONGEST_PATH));
        } catch (InvalidPathException notAPath) {
            throw block.refused(key, "is no name of a file; correct it");
        }
    }

    private static <T extends Enum<T>> T constant(JsonBlock block, String key, T[] known) throws StoreException {
        String word = block.text(key);
        return Arrays.stream(known)
                .filter(constant -> key(constant).equals(word))
                .findFirst()
                .orElseThrow(() -> block.refused(
                        key,
                        "\"" + Quoted.shortly(word) + "\" is not known here; write one such as \"" + key(known[0])
                                + "\""));
    }

    private static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
