package piecewright.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import piecewright.grain.GrainLot;
import piecewright.house.House;
import piecewright.store.AirLogCsv;
import piecewright.store.AtomicFile;
import piecewright.store.HouseFile;
import piecewright.store.LearnedFile;
import piecewright.store.LotFile;
import piecewright.store.SavedWindow;
import piecewright.store.StoreException;
import piecewright.store.TextFile;
import piecewright.store.WindowFile;

/**
 * A folder in which somebody keeps lots, houses and batches: "lots", "houses" and "batches" in it, and "demo" with lots
 * and houses of ours until it is removed. Beside each batch lies what belongs to it: its journal, the ledger of its
 * calendar entries. Whatever changes a file holds the lock of its folder meanwhile.
 */
public final class Workspace {
    private static final String DEMO = "demo";
    private static final String DEMO_BATCH = "pale-malt";
    private static final List<String> DEMO_FILES = List.of(
            "lots/two-row-barley.json",
            "lots/water-sensitive-barley.json",
            "lots/winter-wheat.json",
            "lots/treated-seed.json",
            "houses/cool-garage.json",
            "houses/cool-garage-2027-03.csv",
            "houses/warm-flat.json",
            "houses/warm-flat-2027-10.csv");

    private final Path folder;

    private Workspace(Path folder) {
        this.folder = folder;
    }

    /** The workspace in this folder; made, with its demo, when there is none. */
    public static Workspace open(Path folder) throws StoreException {
        Workspace workspace = new Workspace(folder);
        boolean fresh = !Files.exists(folder);
        for (String part : List.of("lots", "houses", "batches")) made(folder.resolve(part));
        if (fresh) workspace.addDemo();
        return workspace;
    }

    public Path folder() {
        return folder;
    }

    public Path batches() {
        return folder.resolve("batches");
    }

    /** The files in which batches are kept, in order of their names; the demo's last. */
    public List<Path> batchFiles() throws StoreException {
        List<Path> files = new ArrayList<>(jsonFiles(batches()));
        files.addAll(jsonFiles(demoBatch().resolveSibling("")));
        return files;
    }

    /** Names by which files of the workspace are called. */
    public WorkspaceNames names() {
        return new WorkspaceNames(folder);
    }

    /** Puts back what can no longer be read and has a good copy; a sentence for each. */
    public List<String> mend() throws StoreException {
        List<String> mended = new ArrayList<>(Mending.window(windowFile()));
        for (Path batch : batchFiles()) mended.addAll(Mending.batch(batch));
        for (String part : List.of("lots", "houses", "demo/lots", "demo/houses")) {
            for (Path file : jsonFiles(folder.resolve(part))) mended.addAll(Mending.learned(file));
        }
        return mended;
    }

    /** Where the demo's piece is kept. */
    public Path demoBatch() {
        return folder.resolve(DEMO).resolve("batches").resolve(DEMO_BATCH + ".json");
    }

    /** True when there is a demo whose piece was never laid out. */
    public boolean lacksDemoBatch() {
        return hasDemo() && !Files.exists(demoBatch());
    }

    /** Whether a file is one of the demo's. */
    public boolean isDemo(Path file) {
        return file.startsWith(folder.resolve(DEMO));
    }

    /** The lot and the house the demo's piece is made from. */
    public DemoFiles demoFiles() {
        return new DemoFiles(
                folder.resolve(DEMO).resolve("lots/two-row-barley.json"),
                folder.resolve(DEMO).resolve("houses/cool-garage.json"));
    }

    /** A lot and a house of the demo. */
    public record DemoFiles(Path lot, Path house) {}

    /** A file for a new batch of that name, not there yet. */
    public Path newBatch(String name) {
        String plain = name.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        Path file = batches().resolve(plain + ".json");
        for (int number = 2; Files.exists(file); number++) file = batches().resolve(plain + "-" + number + ".json");
        return file;
    }

    /** Something read from a file of the workspace. */
    public record Kept<T>(Path file, T thing, Origin origin) {
        public Kept {
            Objects.requireNonNull(file);
            Objects.requireNonNull(thing);
            Objects.requireNonNull(origin);
        }
    }

    /** Whose it is. */
    public enum Origin {
        OWN,
        DEMO
    }

    /** Everything readable, own things first; a refusal for each file that is not. */
    public record Contents(List<Kept<GrainLot>> lots, List<Kept<House>> houses, List<String> refusals) {
        public Contents {
            lots = List.copyOf(lots);
            houses = List.copyOf(houses);
            refusals = List.copyOf(refusals);
        }
    }

    public Contents contents() throws StoreException {
        List<String> refusals = new ArrayList<>();
        List<Kept<GrainLot>> lots = new ArrayList<>();
        List<Kept<House>> houses = new ArrayList<>();
        for (Origin origin : Origin.values()) {
            Path root = origin == Origin.OWN ? folder : folder.resolve(DEMO);
            lots.addAll(read(root.resolve("lots"), origin, LotFile::read, refusals));
            houses.addAll(read(root.resolve("houses"), origin, HouseFile::read, refusals));
        }
        return new Contents(lots, houses, refusals);
    }

    /** Changes whenever a file of the workspace does. */
    public long stamp() {
        long stamp = 17;
        for (String part : List.of("lots", "houses", "batches", "demo/lots", "demo/houses", "demo/batches")) {
            Path looked = folder.resolve(part);
            if (!Files.isDirectory(looked)) continue;
            try (Stream<Path> files = Files.list(looked)) {
                for (Path file : files.sorted().toList()) {
                    stamp = stamp * 31 + file.hashCode();
                    stamp = stamp * 31 + Files.getLastModifiedTime(file).hashCode();
                    stamp = stamp * 31 + Files.size(file);
                }
            } catch (IOException vanished) {
                stamp = stamp * 31 + 1;
            }
        }
        return stamp;
    }

    /** How the window was left; empty when it never was. */
    public Optional<SavedWindow> window() throws StoreException {
        return Files.exists(windowFile()) ? Optional.of(WindowFile.read(windowFile())) : Optional.empty();
    }

    public void keepWindow(SavedWindow window) throws StoreException {
        WindowFile.write(windowFile(), window);
    }

    private Path windowFile() {
        return folder.resolve("window.json");
    }

    /** Copies a lot, a house or temperatures from elsewhere into the workspace, after reading it; the copy's place. */
    public Path take(Path file) throws StoreException {
        String name = file.getFileName().toString();
        if (name.endsWith(".csv")) return takeTemperatures(file, name);
        if (!name.endsWith(".json")) {
            throw new StoreException(
                    file,
                    "is no lot, no house and no temperatures; drop a JSON file of one, or a CSV file of readings");
        }
        String text = TextFile.read(file, TextFile.SMALL_BYTES);
        boolean lot = looksLikeLot(file, text);
        if (!lot) HouseFile.parse(file, text);
        Path target = folder.resolve(lot ? "lots" : "houses").resolve(name);
        if (Files.exists(target)) throw new StoreException(target, "is there already; rename the file you drop");
        AtomicFile.write(target, text);
        return target;
    }

    /** Readings are laid beside the houses, where a place may name them. */
    private Path takeTemperatures(Path file, String name) throws StoreException {
        AirLogCsv.read(file, ZoneOffset.UTC);
        Path target = folder.resolve("houses").resolve(name);
        if (Files.exists(target)) throw new StoreException(target, "is there already; rename the file you drop");
        AtomicFile.write(target, TextFile.read(file, TextFile.LARGE_BYTES));
        return target;
    }

    private static boolean looksLikeLot(Path file, String text) throws StoreException {
        try {
            LotFile.parse(file, text);
            return true;
        } catch (StoreException refused) {
            if (text.contains("\"grain\"")) throw refused;
            return false;
        }
    }

    public boolean hasDemo() {
        return Files.isDirectory(folder.resolve(DEMO));
    }

    /** Copies the demo's files into the folder. */
    public void addDemo() throws StoreException {
        made(folder.resolve(DEMO).resolve("lots"));
        made(folder.resolve(DEMO).resolve("houses"));
        made(folder.resolve(DEMO).resolve("batches"));
        for (String name : DEMO_FILES) AtomicFile.write(folder.resolve(DEMO).resolve(name), demoText(name));
    }

    /** Removes the demo's own files; whatever else somebody put beside them stays. */
    public void removeDemo() throws StoreException {
        try {
            for (String name : DEMO_FILES) {
                Files.deleteIfExists(folder.resolve(DEMO).resolve(name));
                Files.deleteIfExists(LearnedFile.beside(folder.resolve(DEMO).resolve(name)));
            }
            removeDemoBatch();
            for (String part : List.of("lots", "houses", "batches", "")) {
                removeIfEmptied(folder.resolve(DEMO).resolve(part));
            }
        } catch (IOException failed) {
            throw new StoreException(folder.resolve(DEMO), "cannot be removed; check its permissions", failed);
        }
    }

    /** The demo's piece with its journal and whatever else was written beside it. */
    private void removeDemoBatch() throws IOException {
        Path lain = demoBatch().resolveSibling("");
        if (!Files.isDirectory(lain)) return;
        try (Stream<Path> files = Files.list(lain)) {
            for (Path file : files.toList()) {
                if (file.getFileName().toString().startsWith(DEMO_BATCH + ".")) Files.delete(file);
            }
        }
    }

    /** A folder that holds nothing but locks and good copies goes with them. */
    private static void removeIfEmptied(Path emptied) throws IOException {
        if (!Files.isDirectory(emptied)) return;
        try (Stream<Path> files = Files.list(emptied)) {
            List<Path> left = files.toList();
            if (!left.stream().allMatch(file -> file.getFileName().toString().startsWith("."))) return;
            for (Path file : left) Files.delete(file);
        }
        Files.delete(emptied);
    }

    private static byte[] demoText(String name) throws StoreException {
        Path named = Path.of("demo-data").resolve(name);
        try (InputStream stream = Workspace.class.getResourceAsStream("/demo-data/" + name)) {
            if (stream == null) throw new StoreException(named, "is missing from the program; install it again");
            return stream.readAllBytes();
        } catch (IOException failed) {
            throw new StoreException(named, "cannot be read from the program; install it again", failed);
        }
    }

    private static void made(Path folder) throws StoreException {
        try {
            Files.createDirectories(folder);
        } catch (IOException failed) {
            throw new StoreException(folder, "cannot be made; check permissions or name another folder", failed);
        }
    }

    private interface Reader<T> {
        T read(Path file) throws StoreException;
    }

    private static <T> List<Kept<T>> read(Path folder, Origin origin, Reader<T> reader, List<String> refusals)
            throws StoreException {
        List<Kept<T>> kept = new ArrayList<>();
        for (Path file : jsonFiles(folder)) {
            if (file.getFileName().toString().endsWith(".learned.json")) continue;
            try {
                kept.add(new Kept<>(file, reader.read(file), origin));
            } catch (StoreException refused) {
                refusals.add(String.valueOf(refused.getMessage()));
            }
        }
        return kept;
    }

    private static List<Path> jsonFiles(Path folder) throws StoreException {
        if (!Files.isDirectory(folder)) return List.of();
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(WorkspaceNames::isThing).sorted().toList();
        } catch (IOException failed) {
            throw new StoreException(folder, "cannot be listed; check its permissions", failed);
        }
    }
}
