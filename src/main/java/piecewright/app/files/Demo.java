package piecewright.app.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import piecewright.store.AtomicFile;
import piecewright.store.LearnedFile;
import piecewright.store.StoreException;
import piecewright.store.TextFile;

/**
 * Lots, houses and a piece to look at first. Taken away they are laid aside, never deleted, until they are taken away
 * the next time.
 *
 * @param folder where they lie
 * @param aside where they lie once taken away
 * @param batch what its piece is called
 */
public record Demo(Path folder, Path aside, String batch) {
    private static final List<String> LOTS = List.of(
            "lots/two-row-barley.json",
            "lots/water-sensitive-barley.json",
            "lots/winter-wheat.json",
            "lots/treated-seed.json");
    private static final List<String> HOUSES = List.of("houses/cool-garage.json", "houses/warm-flat.json");
    private static final List<String> AIR = List.of("houses/cool-garage-2027-03.csv", "houses/warm-flat-2027-10.csv");

    public Demo {
        Objects.requireNonNull(folder);
        Objects.requireNonNull(aside);
        Objects.requireNonNull(batch);
    }

    /** Whether any of it lies there. */
    public boolean isThere() {
        return !ours().isEmpty();
    }

    /** Whether something was taken away that can be put back. */
    public boolean isAside() {
        return Files.isDirectory(aside);
    }

    /** Its lots and houses that lie there. */
    public List<Path> lotsAndHouses() {
        return Stream.concat(LOTS.stream(), HOUSES.stream())
                .map(folder::resolve)
                .filter(Files::exists)
                .toList();
    }

    /** Writes its lots and houses anew; the folders must be there. */
    public void add() throws StoreException {
        for (List<String> part : List.of(LOTS, HOUSES, AIR)) {
            for (String name : part) AtomicFile.writeOwn(folder.resolve(name), packed(name));
        }
    }

    private static byte[] packed(String name) throws StoreException {
        Path named = Path.of("demo-data").resolve(name);
        try (InputStream stream = Demo.class.getResourceAsStream("/demo-data/" + name)) {
            if (stream == null) throw new StoreException(named, "is missing from the program; install it again");
            return stream.readAllBytes();
        } catch (IOException failed) {
            throw new StoreException(named, "cannot be read from the program; install it again", failed);
        }
    }

    /** Lays everything of it aside but these lots and houses, with what they name and what they taught. */
    public void layAside(List<Path> stays) throws StoreException {
        List<Path> goes = new ArrayList<>(ours());
        for (Path stay : stays) {
            goes.remove(stay);
            goes.remove(LearnedFile.beside(stay));
            String text = TextFile.read(stay, TextFile.SMALL_BYTES);
            goes.removeIf(
                    file -> file.toString().endsWith(".csv") && text.contains(String.valueOf(file.getFileName())));
        }
        if (goes.isEmpty()) return;
        try {
            empty(aside);
            // copies first: whoever reads meanwhile and finds a file gone must find no copy to mend it from
            goes.sort(Comparator.comparing(Demo::isHidden).reversed());
            for (Path file : goes) move(file, aside.resolve(folder.relativize(file)));
            for (String part : List.of("lots", "houses", "batches", "")) removeIfEmptied(folder.resolve(part));
        } catch (IOException failed) {
            throw new StoreException(folder, "cannot be removed; check its permissions", failed);
        }
    }

    /** Puts everything back that was laid aside; what lies in its place stays. */
    public void putBack() throws StoreException {
        if (!isAside()) return;
        try {
            List<Path> all;
            try (Stream<Path> files = Files.walk(aside)) {
                all = files.filter(Files::isRegularFile)
                        .sorted(Comparator.comparing(Demo::isHidden))
                        .toList();
            }
            for (Path file : all) {
                Path back = folder.resolve(aside.relativize(file));
                if (!Files.exists(back)) move(file, back);
            }
            empty(aside);
        } catch (IOException failed) {
            throw new StoreException(aside, "cannot be put back; check permissions of the folder", failed);
        }
    }

    private static boolean isHidden(Path file) {
        return String.valueOf(file.getFileName()).startsWith(".");
    }

    private static void move(Path from, Path to) throws IOException, StoreException {
        AtomicFile.makeOwnFolder(Objects.requireNonNull(to.getParent()));
        Files.move(from, to);
    }

    /** What is ours of the files that lie there: lots and houses, what they taught, the piece and what lies beside it. */
    private List<Path> ours() {
        List<Path> all = new ArrayList<>();
        for (Path file : lotsAndHouses()) {
            all.add(file);
            Path learned = LearnedFile.beside(file);
            all.add(learned);
            all.add(learned.resolveSibling("." + learned.getFileName() + ".copy"));
        }
        AIR.forEach(name -> all.add(folder.resolve(name)));
        all.addAll(piece());
        return all.stream().filter(Files::exists).toList();
    }

    private List<Path> piece() {
        Path lain = folder.resolve("batches");
        if (!Files.isDirectory(lain)) return List.of();
        try (Stream<Path> files = Files.list(lain)) {
            return files.filter(file ->
                            file.getFileName().toString().replaceAll("^\\.", "").startsWith(batch + "."))
                    .toList();
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    /** A folder that holds nothing but locks goes with them. */
    private static void removeIfEmptied(Path emptied) throws IOException {
        if (!Files.isDirectory(emptied)) return;
        try (Stream<Path> files = Files.list(emptied)) {
            List<Path> left = files.toList();
            if (!left.stream().allMatch(file -> file.getFileName().toString().startsWith("."))) return;
            for (Path file : left) Files.delete(file);
        }
        Files.delete(emptied);
    }

    private static void empty(Path old) throws IOException {
        if (!Files.exists(old)) return;
        Files.walkFileTree(old, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(
                    Path folder, java.io.@org.jspecify.annotations.Nullable IOException failed) throws IOException {
                Files.delete(folder);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
