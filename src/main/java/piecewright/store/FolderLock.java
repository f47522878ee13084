package piecewright.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Held while files of some folders are read and then changed, so that a window and a terminal cannot write over each
 * other. The system lets go of it when its program ends, however it ends. Not to be taken again by who holds it.
 */
public final class FolderLock implements AutoCloseable {
    private static final String NAME = ".piecewright.lock";
    private static final Duration PATIENCE = Duration.ofSeconds(10);
    private static final long PAUSE_MILLIS = 15;

    private final List<FileChannel> held = new ArrayList<>();

    private FolderLock() {}

    /** The lock of the folders in which these files lie. */
    public static FolderLock of(Collection<Path> files) throws StoreException {
        return of(files, PATIENCE);
    }

    /** The lock of the folder in which this file lies. */
    public static FolderLock of(Path file) throws StoreException {
        return of(List.of(file), PATIENCE);
    }

    /** All folders in one order, so that two who want the same ones never wait for each other. */
    static FolderLock of(Collection<Path> files, Duration patience) throws StoreException {
        TreeSet<Path> folders = new TreeSet<>();
        for (Path file : files) {
            AtomicFile.mustHaveAPlace(file);
            folders.add(folder(file));
        }
        FolderLock lock = new FolderLock();
        try {
            for (Path folder : folders) lock.take(folder, patience.toMillis() / PAUSE_MILLIS);
            folders.forEach(Unfinished::sweep);
            return lock;
        } catch (StoreException failed) {
            lock.close();
            throw failed;
        }
    }

    /** Removes what a program that was killed left in this folder, if nobody is writing there now. */
    public static void sweep(Path folder) {
        if (Unfinished.left(folder).isEmpty()) return;
        try (FolderLock lock = of(List.of(folder.resolve(NAME + ".swept")), Duration.ZERO)) {
            if (lock.holds()) return; // whoever takes the lock sweeps
        } catch (StoreException later) {
            // whoever writes there next sweeps
        }
    }

    private static Path folder(Path file) throws StoreException {
        Path parent = Links.end(file).toAbsolutePath().normalize().getParent();
        try {
            return parent == null ? file : parent.toRealPath();
        } catch (IOException gone) {
            throw new StoreException(file, "its folder does not exist; make the folder first", gone);
        }
    }

    private void take(Path folder, long pauses) throws StoreException {
        FileChannel channel = open(folder);
        held.add(channel);
        for (long pause = 0; !taken(channel, folder); pause++) {
            if (pause >= pauses) throw busy(folder);
            try {
                Thread.sleep(PAUSE_MILLIS);
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
                throw busy(folder);
            }
        }
    }

    private static FileChannel open(Path folder) throws StoreException {
        try {
            Set<StandardOpenOption> options = Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            return FileChannel.open(folder.resolve(NAME), options, Modes.ownFile(folder));
        } catch (IOException failed) {
            if (Files.isWritable(folder)) throw WriteFailure.of(folder, "cannot be written to", 0, failed);
            throw new StoreException(
                    folder, "this folder cannot be written to; check its permissions or name another", failed);
        }
    }

    private static boolean taken(FileChannel channel, Path folder) throws StoreException {
        try {
            FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException otherThread) {
            return false;
        } catch (IOException failed) {
            throw new StoreException(
                    folder, "files on this disk cannot be locked; keep them on a disk of this machine", failed);
        }
    }

    private static StoreException busy(Path folder) {
        return new StoreException(
                folder,
                "another Piecewright, a window or a terminal, is writing here. Nothing was changed; wait until it is"
                        + " done, or close it, and do it again");
    }

    /** Whether it is still held; true until it is closed. */
    public boolean holds() {
        return held.stream().allMatch(FileChannel::isOpen);
    }

    @Override
    public void close() {
        for (FileChannel channel : held) {
            try {
                channel.close();
            } catch (IOException letGo) {
                // the system lets go of the lock with the channel either way
            }
        }
    }
}
