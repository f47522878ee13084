package piecewright.store;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import piecewright.text.ColourUnit;
import piecewright.text.UnitSystem;
import tools.jackson.databind.node.ObjectNode;

/** Keeps how somebody left the window in a JSON file, format 1. */
public final class WindowFile {
    private static final List<String> THEMES = List.of("light", "dark");

    private WindowFile() {}

    public static void write(Path file, SavedWindow window) throws StoreException {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        root.put("theme", window.theme());
        root.put("textPercent", window.textPercent());
        root.put("units", window.units().name().toLowerCase(Locale.ROOT));
        root.put("colour", window.colour().key());
        window.wish().ifPresent(wish -> {
            ObjectNode node = root.putObject("wish");
            node.put("style", wish.styleKey());
            node.put("maltKg", wish.maltKg());
            wish.colourEbc().ifPresent(ebc -> node.put("colourEbc", ebc));
            node.put("readyBy", wish.readyBy().toString());
            node.put("lot", wish.lot());
            node.put("house", wish.house());
        });
        window.frame().ifPresent(frame -> {
            ObjectNode node = root.putObject("frame");
            node.put("x", frame.x());
            node.put("y", frame.y());
            node.put("width", frame.width());
            node.put("height", frame.height());
            node.put("full", frame.full());
        });
        window.batch().ifPresent(batch -> root.put("batch", batch));
        GoodCopy.write(file, JsonText.write(root));
    }

    /** The window in this file, at most 1 MB. */
    public static SavedWindow read(Path file) throws StoreException {
        JsonBlock root = JsonBlock.root(
                file,
                TextFile.read(file, TextFile.SMALL_BYTES),
                "theme",
                "textPercent",
                "units",
                "colour",
                "wish",
                "frame",
                "batch");
        String theme = root.text("theme");
        if (!THEMES.contains(theme)) throw root.refused("theme", "must be \"light\" or \"dark\"; write one of them");
        Optional<JsonBlock> wish = root.optionalBlock("wish");
        Optional<JsonBlock> frame = root.optionalBlock("frame");
        return new SavedWindow(
                theme,
                root.whole("textPercent", 100, 200),
                constant(root, "units", UnitSystem.values()),
                constant(root, "colour", ColourUnit.values()),
                wish.isPresent() ? Optional.of(wish(wish.get())) : Optional.empty(),
                frame.isPresent() ? Optional.of(frame(frame.get())) : Optional.empty(),
                root.has("batch") ? Optional.of(root.text("batch", 4096)) : Optional.empty());
    }

    private static SavedWindow.SavedWish wish(JsonBlock block) throws StoreException {
        block.onlyKeys("style", "maltKg", "colourEbc", "readyBy", "lot", "house");
        String day = block.text("readyBy");
        try {
            return new SavedWindow.SavedWish(
                    block.text("style"),
                    block.number("maltKg", 0.001, 1000),
                    block.optionalNumber("colourEbc", 0.001, 1600),
                    LocalDate.parse(day),
                    block.text("lot", 4096),
                    block.text("house", 4096));
        } catch (DateTimeParseException unreadable) {
            throw block.refused("readyBy", "is no day; write it like 2027-05-01");
        }
    }

    private static SavedWindow.Frame frame(JsonBlock block) throws StoreException {
        block.onlyKeys("x", "y", "width", "height", "full");
        return new SavedWindow.Frame(
                block.number("x", -100_000, 100_000),
                block.number("y", -100_000, 100_000),
                block.number("width", 1, 100_000),
                block.number("height", 1, 100_000),
                block.trueOrFalse("full"));
    }

    private static <E extends Enum<E>> E constant(JsonBlock block, String key, E[] all) throws StoreException {
        String word = block.text(key);
        for (E each : all) if (each.name().toLowerCase(Locale.ROOT).equals(word)) return each;
        throw block.refused(key, "is not known; leave the file out to begin afresh");
    }
}
