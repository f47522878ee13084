package piecewright.app.move;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import piecewright.app.ReadWish;
import piecewright.app.files.EachFile;
import piecewright.app.files.FolderFiles;
import piecewright.store.AtomicFile;
import piecewright.store.LearnedFile;
import piecewright.store.ManifestFile;
import piecewright.store.StoreException;
import piecewright.text.Phrases;

/**
 * Packs a workspace into one ZIP file: all that lies in it but hidden copies and locks, and the lots, houses and readings
 * outside it from which its batches are made. Nothing in the workspace is changed.
 */
public final class Pack {
    /** Judgement: a workspace of many years has some 20 MB; more is probably the wrong folder. */
    private static final long MOST_BYTES = 500L << 20;

    private final Path folder;
    private final Map<String, Path> entries = new TreeMap<>();
    private final Map<String, String> elsewhere = new TreeMap<>();
    private final EachFile each = new EachFile();

    private Pack(Path folder) {
        this.folder = folder;
    }

    /**
     * Packs the workspace into a file that is not in it.
     *
     * @return what could not be taken along, a sentence each
     */
    public static List<String> of(Path workspace, Path target) throws StoreException {
        Path folder = workspace.toAbsolutePath().normalize();
        if (!Files.isDirectory(folder)) throw new StoreException(folder, "there is no workspace here; name its folder");
        if (target.toAbsolutePath().normalize().startsWith(folder)) {
            throw new StoreException(target, "lies in the workspace that is packed; name a file elsewhere");
        }
        if (Files.exists(target)) throw new StoreException(target, "is there already; name a new file");
        AtomicFile.mustHaveAPlace(target);
        Pack pack = new Pack(folder);
        pack.gather();
        AtomicFile.writeOwn(target, pack.zip());
        return pack.each.refusals();
    }

    private void gather() throws StoreException {
        try (Stream<Path> files = Files.walk(folder)) {
            files.filter(this::belongs).forEach(file -> entries.put(name(folder.relativize(file)), file));
        } catch (IOException failed) {
            throw new StoreException(folder, "cannot be listed; check its permissions", failed);
        }
        for (String part : List.of("batches", "demo/batches")) {
            for (Path batch : FolderFiles.in(folder.resolve(part), each)) {
                each.read(batch, ReadWish::filesOf).orElse(List.of()).forEach(this::link);
            }
        }
    }

    private boolean belongs(Path file) {
        for (Path part : folder.relativize(file)) if (part.toString().startsWith(".")) return false;
        return Files.isRegularFile(file);
    }

    private static String name(Path relative) {
        List<String> parts = new ArrayList<>();
        relative.forEach(part -> parts.add(part.toString()));
        return String.join("/", parts);
    }

    /** A lot or house outside goes along with the readings beside it that it names, and with what it taught. */
    private void link(Path file) {
        String path = file.toString();
        if (file.startsWith(folder) || elsewhere.containsKey(path)) return;
        if (!Files.isRegularFile(file)) {
            each.leaveOut(Phrases.say("pack.gone", path));
            return;
        }
        String place = Manifest.ELSEWHERE + (1 + elsewhere.size()) + "/";
        elsewhere.put(path, place + file.getFileName());
        entries.put(place + file.getFileName(), file);
        List<Path> more = new ArrayList<>(each.read(file, ReadWish::readingsOf).orElse(List.of()));
        more.add(LearnedFile.beside(file));
        for (Path beside : more) {
            if (Files.isRegularFile(beside)) entries.put(place + beside.getFileName(), beside);
        }
    }

    private byte[] zip() throws StoreException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        long size = 0;
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            put(
                    zip,
                    ManifestFile.ENTRY,
                    ManifestFile.write(folder.toString(), elsewhere).getBytes(StandardCharsets.UTF_8));
            for (Map.Entry<String, Path> entry : entries.entrySet()) {
                Optional<byte[]> content = each.read(entry.getValue(), Pack::bytes);
                if (content.isEmpty()) continue;
                size += content.get().length;
                if (size > MOST_BYTES) throw new StoreException(folder, "holds more than 500 MB; name a workspace");
                put(zip, entry.getKey(), content.get());
            }
        } catch (IOException impossible) {
            throw new StoreException(folder, "cannot be packed", impossible);
        }
        return bytes.toByteArray();
    }

    private static byte[] bytes(Path file) throws StoreException {
        try {
            return Files.readAllBytes(file);
        } catch (IOException failed) {
            throw new StoreException(file, "cannot be read and was not packed; check its permissions", failed);
        }
    }

    private static void put(ZipOutputStream zip, String name, byte[] content) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(0); // the same workspace gives the same file
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }
}
