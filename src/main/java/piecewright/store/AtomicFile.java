package piecewright.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes files so that a reader sees the whole old text or the whole new one, whatever fails between. */
public final class AtomicFile {
    private static final String UNFINISHED = ".tmp";

    private AtomicFile() {}

    /** Replaces or makes the file with this text as UTF-8; the folder must exist. */
    public static void write(Path file, String text) throws StoreException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Replaces or makes the file with these bytes; the folder must exist. */
    public static void write(Path file, byte[] bytes) throws StoreException {
        mustHaveAPlace(file);
        try {
            Path target = Files.isSymbolicLink(file) && Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
            Path folder = target.getParent();
            if (folder == null) throw noFolder(file);
            Path fresh = folder.resolve("." + target.getFileName() + "." + UUID.randomUUID() + UNFINISHED);
            try {
                writeForced(fresh, bytes);
                Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(fresh);
            }
            forceNames(folder);
        } catch (IOException failed) {
            throw WriteFailure.of(file, "cannot be written", bytes.length, failed);
        }
    }

    /** Removes the file; one that is not there is no failure. */
    public static void remove(Path file) throws StoreException {
        try {
            Files.deleteIfExists(file);
        } catch (IOException failed) {
            throw new StoreException(file, "cannot be removed; check permissions of the folder", failed);
        }
    }

    /** Refuses a file that is a folder or has none to lie in, before there is anything to write. */
    public static void mustHaveAPlace(Path file) throws StoreException {
        if (Files.isDirectory(file)) throw new StoreException(file, "this is a folder; name a file in it to write");
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) throw noFolder(file);
    }

    /** Removes what a write of this file left behind that was killed; to be called by whoever holds the folder's lock. */
    static void removeUnfinished(Path file) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null) return;
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, each -> isUnfinished(each, file))) {
            for (Path each : left) Files.deleteIfExists(each);
        }
    }

    private static boolean isUnfinished(Path each, Path file) {
        String name = String.valueOf(each.getFileName());
        String start = "." + file.getFileName() + ".";
        return name.startsWith(start)
                && name.substring(start.length()).matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}\\.tmp");
    }

    /** The new name too is on the disk then; systems that cannot open a folder see to that themselves. */
    private static void forceNames(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException noFolderOpens) {
            // the file is whole either way
        }
    }

    private static StoreException noFolder(Path file) {
        return new StoreException(file, "its folder does not exist; make the folder first");
    }

    private static void writeForced(Path fresh, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) channel.write(buffer);
            channel.force(true);
        }
    }
}
