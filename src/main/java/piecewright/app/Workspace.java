package piecewright.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import piecewright.app.files.Demo;
import piecewright.app.files.EachFile;
import piecewright.app.files.FolderFiles;
import piecewright.app.files.SameFile;
import piecewright.grain.GrainLot;
import piecewright.house.House;
import piecewright.store.AirLogCsv;
import piecewright.store.AtomicFile;
import piecewright.store.FolderLock;
import piecewright.store.HouseFile;
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
    private static final List<String> PARTS =
            List.of("", "lots", "houses", "batches", "demo/lots", "demo/houses", "demo/batches");

    private final Path folder;

    private Workspace(Path folder) {
        this.folder = folder;
    }

    /** The workspace in this folder; made, with its demo, when there is none. */
    public static Workspace open(Path folder) throws StoreException {
        Workspace workspace = new Workspace(folder);
        boolean fresh = !Files.exists(folder);
        for (String part : List.of("lots", "houses", "batches")) made(folder.resolve(part));
        for (String part : PARTS) FolderLock.sweep(folder.resolve(part));
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
    public List<Path> batchFiles() {
        return batchFiles(new EachFile());
    }

    /** The same; a folder that cannot be listed is told of. */
    public List<Path> batchFiles(EachFile told) {
        List<Path> files = new ArrayList<>(FolderFiles.in(batches(), told));
        files.addAll(FolderFiles.in(demoBatch().resolveSibling(""), told));
        return files;
    }

    /** Names by which files of the workspace are called. */
    public WorkspaceNames names() {
        return new WorkspaceNames(folder);
    }

    /** Puts back what can no longer be read and has a good copy; a sentence for each. */
    public List<String> mend() {
        EachFile each = new EachFile();
        List<String> mended =
                new ArrayList<>(each.read(windowFile(), Mending::window).orElse(List.of()));
        for (Path batch : batchFiles(each)) {
            mended.addAll(each.read(batch, Mending::batch).orElse(List.of()));
        }
        for (String part : List.of("lots", "houses", "demo/lots", "demo/houses")) {
            for (Path file : FolderFiles.in(folder.resolve(part), each)) {
                mended.addAll(each.read(file, Mending::learned).orElse(List.of()));
            }
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

    public Contents contents() {
        EachFile each = new EachFile();
        List<Kept<GrainLot>> lots = new ArrayList<>();
        List<Kept<House>> houses = new ArrayList<>();
        for (Origin origin : Origin.values()) {
            Path root = origin == Origin.OWN ? folder : folder.resolve(DEMO);
            lots.addAll(read(root.resolve("lots"), origin, LotFile::read, each));
            houses.addAll(read(root.resolve("houses"), origin, HouseFile::read, each));
        }
        return new Contents(lots, houses, each.refusals());
    }

    private static <T> List<Kept<T>> read(Path folder, Origin origin, EachFile.Reader<T> reader, EachFile each) {
        List<Kept<T>> kept = new ArrayList<>();
        for (Path file : FolderFiles.in(folder, each)) {
            each.read(file, reader).ifPresent(thing -> kept.add(new Kept<>(file, thing, origin)));
        }
        return kept;
    }

    /** Changes whenever a file of the workspace does. */
    public long stamp() {
        long stamp = 17;
        for (String part : PARTS) {
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
        AtomicFile.writeOwn(target, text);
        return target;
    }

    /** Readings are laid beside the houses, where a place may name them. */
    private Path takeTemperatures(Path file, String name) throws StoreException {
        AirLogCsv.read(file, ZoneOffset.UTC);
        Path target = folder.resolve("houses").resolve(name);
        if (Files.exists(target)) throw new StoreException(target, "is there already; rename the file you drop");
        AtomicFile.writeOwn(target, TextFile.read(file, TextFile.LARGE_BYTES));
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
        return demo().isThere();
    }

    /** Copies the demo's files into the folder. */
    public void addDemo() throws StoreException {
        for (String part : List.of("lots", "houses", "batches"))
            made(folder.resolve(DEMO).resolve(part));
        try (FolderLock lock = FolderLock.of(demoBatch())) {
            if (lock.holds()) demo().add();
        }
    }

    /**
     * Takes the demo away, its piece with it, and lays it aside for {@link #restoreDemo}. What a kept batch was made from
     * stays, and so does whatever else somebody put beside it; where a batch cannot be read, every lot and house stays.
     *
     * @return the lots and houses that stay because they are used
     */
    public List<Path> removeDemo() throws StoreException {
        if (!hasDemo()) return List.of();
        EachFile each = new EachFile();
        Set<Path> used = new HashSet<>();
        for (Path batch : FolderFiles.in(batches(), each))
            each.read(batch, ReadWish::filesOf).ifPresent(used::addAll);
        boolean allKnown = each.refusals().isEmpty();
        List<Path> stays = demo().lotsAndHouses().stream()
                .filter(file -> !allKnown || used.stream().anyMatch(other -> SameFile.are(file, other)))
                .toList();
        try (FolderLock lock = FolderLock.of(folder.resolve("window.json"))) {
            if (lock.holds()) demo().layAside(stays);
        }
        return stays;
    }

    /** Puts back what {@link #removeDemo} took away last, as it was; what came in its place meanwhile stays. */
    public void restoreDemo() throws StoreException {
        demo().putBack();
    }

    /** Whether there is something to put back. */
    public boolean canRestoreDemo() {
        return demo().isAside();
    }

    private Demo demo() {
        return new Demo(folder.resolve(DEMO), folder.resolve(".removed-demo"), DEMO_BATCH);
    }

    private static void made(Path folder) throws StoreException {
        if (!Files.exists(folder)) AtomicFile.makeOwnFolder(folder);
    }
}
