package piecewright.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Optional;
import java.util.Set;

/** Writes files so that a reader sees the whole old text or the whole new one, whatever fails between. */
public final class AtomicFile {
    private AtomicFile() {}

    /** Replaces or makes the file with this text as UTF-8; the folder must exist. A file keeps the mode it has. */
    public static void write(Path file, String text) throws StoreException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Replaces or makes the file with these bytes. */
    public static void write(Path file, byte[] bytes) throws StoreException {
        write(file, bytes, new FileAttribute<?>[0]);
    }

    /** The same; a file that was not there yet is one that only its owner reads. */
    public static void writeOwn(Path file, String text) throws StoreException {
        writeOwn(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** The same for bytes. */
    public static void writeOwn(Path file, byte[] bytes) throws StoreException {
        write(file, bytes, Modes.ownFile(file));
    }

    private static void write(Path file, byte[] bytes, FileAttribute<?>[] fresh) throws StoreException {
        mustHaveAPlace(file);
        try {
            Path target = Links.end(file).toAbsolutePath();
            Path folder = target.getParent();
            if (folder == null) throw noFolder(file);
            Optional<Set<PosixFilePermission>> mode = Modes.of(target);
            Path unfinished = Unfinished.of(target);
            try {
                writeForced(unfinished, bytes, mode.isPresent() ? Modes.ownFile(target) : fresh);
                if (mode.isPresent()) Modes.give(unfinished, mode.get());
                Files.move(unfinished, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(unfinished);
            }
            forceNames(folder);
        } catch (IOException failed) {
            throw WriteFailure.of(file, "cannot be written", bytes.length, failed);
        }
    }

    /** Makes a folder, and those above it, that only its owner enters; one that is there stays as it is. */
    public static void makeOwnFolder(Path folder) throws StoreException {
        try {
            Files.createDirectories(folder, Modes.ownFolder(folder));
        } catch (IOException failed) {
            throw new StoreException(folder, "cannot be made; check permissions or name another folder", failed);
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

    /** Refuses a file that is a folder, has none to lie in or is read-only, before there is anything to write. */
    public static void mustHaveAPlace(Path file) throws StoreException {
        if (Files.isDirectory(file)) throw new StoreException(file, "this is a folder; name a file in it to write");
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) throw noFolder(file);
        Modes.mustNotBeReadOnly(file);
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

    private static void writeForced(Path fresh, byte[] bytes, FileAttribute<?>[] mode) throws IOException {
        Set<StandardOpenOption> options = Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        try (FileChannel channel = FileChannel.open(fresh, options, mode)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) channel.write(buffer);
            channel.force(true);
        }
    }
}
