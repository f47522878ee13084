package piecewright.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import piecewright.style.MaltStyle;
import piecewright.text.Quoted;

/** The styles there are: those that come with the program, and a person's own, which take the place of equal keys. */
public final class StyleLibrary {
    private static final String FOLDER = "schedules";

    private final Map<String, MaltStyle> styles;

    private StyleLibrary(Map<String, MaltStyle> styles) {
        this.styles = Map.copyOf(styles);
    }

    /** The styles that come with the program, as schedules/index.txt on the class path lists them. */
    public static StyleLibrary builtIn() throws StoreException {
        Map<String, MaltStyle> styles = new TreeMap<>();
        for (String name : resource("index.txt").lines().toList()) {
            if (name.isBlank()) continue;
            add(styles, Path.of(FOLDER, name), StyleFile.parse(Path.of(FOLDER, name), resource(name)));
        }
        return new StyleLibrary(styles);
    }

    /** These and the *.json files of a folder. */
    public StyleLibrary with(Path folder) throws StoreException {
        if (!Files.isDirectory(folder))
            throw new StoreException(folder, "there is no such folder; make it or name another");
        List<Path> files;
        try (Stream<Path> listed = Files.list(folder)) {
            files = listed.filter(file -> file.getFileName().toString().endsWith(".json"))
                    .sorted()
                    .toList();
        } catch (IOException failed) {
            throw new StoreException(folder, "cannot be listed; check its permissions", failed);
        }
        Map<String, MaltStyle> own = new TreeMap<>();
        for (Path file : files) add(own, file, StyleFile.read(file));
        Map<String, MaltStyle> all = new TreeMap<>(styles);
        all.putAll(own);
        return new StyleLibrary(all);
    }

    /** The style of that key; the refusal names the nearest. */
    public MaltStyle style(String key) throws StoreException {
        MaltStyle style = styles.get(key);
        if (style == null) {
            throw new StoreException(
                    Path.of(FOLDER),
                    "no style \"" + Quoted.shortly(key) + "\"; "
                            + Nearest.hint(
                                    key, styles.keySet().stream().sorted().toList()));
        }
        return style;
    }

    /** All styles in order of their keys. */
    public List<MaltStyle> all() {
        return new ArrayList<>(new TreeMap<>(styles).values());
    }

    private static void add(Map<String, MaltStyle> styles, Path file, MaltStyle style) throws StoreException {
        if (styles.put(style.key(), style) != null) {
            throw new StoreException(
                    file, "key \"style\" \"" + style.key() + "\" is taken by another file; choose another");
        }
    }

    private static String resource(String name) throws StoreException {
        Path named = Path.of(FOLDER, name);
        try (InputStream stream = StyleLibrary.class.getResourceAsStream("/" + FOLDER + "/" + name)) {
            if (stream == null) throw new StoreException(named, "is missing from the program; install it again");
            return TextFile.decoded(named, stream.readNBytes(TextFile.SMALL_BYTES));
        } catch (IOException failed) {
            throw new StoreException(named, "cannot be read from the program; install it again", failed);
        }
    }
}
