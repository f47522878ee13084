package piecewright.app.move;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import piecewright.app.ReadWish;
import piecewright.app.files.EachFile;
import piecewright.app.files.FolderFiles;
import piecewright.store.AtomicFile;
import piecewright.store.BatchFile;
import piecewright.store.LiveFile;
import piecewright.store.LiveList;
import piecewright.store.ManifestFile;
import piecewright.store.SavedBatch;
import piecewright.store.SavedBatch.RequestTexts;
import piecewright.store.StoreException;
import piecewright.text.Phrases;

/**
 * Lays a packed workspace out in a new folder and leads what names a file to where it lies now. Nothing is written
 * before the whole pack was read.
 */
public final class Unpack {
    private static final long MOST_BYTES = 500L << 20;
    private static final int MOST_FILES = 20_000;
    private static final String LIVE_MARK = ".live.json";
    private static final String LIVE_LIST = ".batches.json";

    private final Path folder;
    private final Manifest manifest;
    private final EachFile each = new EachFile();

    private Unpack(Path folder, Manifest manifest) {
        this.folder = folder;
        this.manifest = manifest;
    }

    /**
     * Unpacks into a folder that is not there yet, or is empty.
     *
     * @return what is not as it was, a sentence each
     */
    public static List<String> of(Path pack, Path workspace) throws StoreException {
        Path folder = workspace.toAbsolutePath().normalize();
        mustBeEmpty(folder);
        Map<String, byte[]> entries = read(pack);
        byte[] said = entries.remove(ManifestFile.ENTRY);
        if (said == null) throw new StoreException(pack, "is no packed workspace; name a file made by pack");
        ManifestFile.Content content = ManifestFile.read(pack, new String(said, StandardCharsets.UTF_8));
        Map<Path, byte[]> files = new TreeMap<>();
        for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
            files.put(within(pack, folder, entry.getKey()), entry.getValue());
        }
        for (Map.Entry<Path, byte[]> file : files.entrySet()) {
            AtomicFile.makeOwnFolder(Objects.requireNonNull(file.getKey().getParent()));
            AtomicFile.writeOwn(file.getKey(), file.getValue());
        }
        Unpack unpack = new Unpack(folder, new Manifest(content.root(), content.elsewhere()));
        unpack.lead();
        return unpack.each.refusals();
    }

    private static void mustBeEmpty(Path folder) throws StoreException {
        if (!Files.exists(folder)) return;
        try (Stream<Path> there = Files.list(folder)) {
            if (there.findAny().isEmpty()) return;
        } catch (IOException noFolder) {
            throw new StoreException(folder, "is no folder to unpack into; name a new one", noFolder);
        }
        throw new StoreException(folder, "is not empty; name a new folder, so that nothing in it is replaced");
    }

    private static Map<String, byte[]> read(Path pack) throws StoreException {
        Map<String, byte[]> entries = new TreeMap<>();
        long left = MOST_BYTES;
        try (InputStream file = Files.newInputStream(pack);
                ZipInputStream zip = new ZipInputStream(file, StandardCharsets.UTF_8)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.isDirectory()) continue;
                byte[] content = zip.readNBytes((int) Math.min(Integer.MAX_VALUE - 8, left + 1));
                left -= content.length;
                if (left < 0 || entries.size() >= MOST_FILES) {
                    throw new StoreException(pack, "holds more than a workspace does; name a file made by pack");
                }
                entries.put(entry.getName(), content);
            }
            return entries;
        } catch (ZipException damaged) {
            throw new StoreException(pack, "is damaged, and nothing was unpacked; copy it again", damaged);
        } catch (IOException failed) {
            throw new StoreException(pack, "cannot be read; check its name and permissions", failed);
        }
    }

    /** Refuses an entry that would lie outside the folder, or hidden in it. */
    private static Path within(Path pack, Path folder, String entry) throws StoreException {
        try {
            Path file = folder.resolve(entry).normalize();
            boolean hidden = false;
            if (file.startsWith(folder)) {
                for (Path part : folder.relativize(file))
                    hidden |= part.toString().startsWith(".");
                if (!hidden && !file.equals(folder) && entry.indexOf('\\') < 0) return file;
            }
        } catch (InvalidPathException noPath) {
            throw new StoreException(pack, "names a file this system cannot have; nothing was unpacked", noPath);
        }
        throw new StoreException(pack, "names a file outside the workspace; nothing was unpacked");
    }

    private void lead() throws StoreException {
        for (String part : List.of("batches", "demo/batches")) {
            for (Path batch : FolderFiles.in(folder.resolve(part), each)) {
                each.read(batch, this::batch).ifPresent(done -> {});
            }
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = String.valueOf(file.getFileName());
                if (name.endsWith(LIVE_MARK)) each.read(file, this::mark).ifPresent(done -> {});
                if (name.endsWith(LIVE_LIST)) each.read(file, this::list).ifPresent(done -> {});
            }
        } catch (IOException failed) {
            throw new StoreException(folder, "cannot be listed; check its permissions", failed);
        }
    }

    private Path batch(Path file) throws StoreException {
        SavedBatch saved = BatchFile.read(file);
        Map<String, String> wish = new HashMap<>(saved.request().wish());
        for (String key : ReadWish.FILE_KEYS) {
            String path = wish.get(key);
            if (path == null) continue;
            manifest.led(path, folder)
                    .ifPresentOrElse(
                            now -> wish.put(key, now.toString()),
                            () -> each.leaveOut(Phrases.say("pack.not-here", file.toString(), path)));
        }
        RequestTexts old = saved.request();
        BatchFile.write(
                file, saved.withRequest(new RequestTexts(old.styleKey(), old.lotText(), old.houseText(), wish)));
        return file;
    }

    /** A calendar outside the workspace belongs to the other machine, which goes on showing it there. */
    private Path mark(Path file) throws StoreException {
        Path calendar = LiveFile.readMark(file).orElseThrow();
        var now = manifest.led(calendar.toString(), folder);
        if (now.isPresent()) {
            LiveFile.writeMark(file, now.get());
        } else {
            AtomicFile.remove(file);
            each.leaveOut(Phrases.say("pack.calendar-stays", calendar.toString()));
        }
        return file;
    }

    private Path list(Path file) throws StoreException {
        LiveList list = LiveFile.readList(file);
        List<Path> batches = new ArrayList<>();
        for (Path batch : list.batches()) manifest.led(batch.toString(), folder).ifPresent(batches::add);
        LiveFile.writeList(file, new LiveList(batches, list.units(), list.options()));
        return file;
    }
}
