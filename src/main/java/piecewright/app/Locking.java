package piecewright.app;

import java.nio.file.Path;
import java.util.Collection;
import piecewright.store.FolderLock;
import piecewright.store.StoreException;

/** Takes the lock of folders for something that is going to be written. */
final class Locking {
    private Locking() {}

    static FolderLock of(Collection<Path> files) throws NotWrittenException {
        try {
            return FolderLock.of(files);
        } catch (StoreException busy) {
            throw new NotWrittenException(busy);
        }
    }
}
