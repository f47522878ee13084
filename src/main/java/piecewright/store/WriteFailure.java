package piecewright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Says why something could not be written, and what to do about it. */
final class WriteFailure {
    private static final long SPARE_BYTES = 8192;

    private WriteFailure() {}

    /**
     * @param what what could not be done, such as "cannot be written"
     * @param bytes how much was to be written
     */
    static StoreException of(Path file, String what, long bytes, IOException failed) {
        String why = isFull(file, bytes, failed)
                ? "the disk is full. Nothing kept before is lost; make room and do it again"
                : failed.getClass().getSimpleName()
                        + ". Nothing kept before is lost; check permissions of the folder and do it again";
        return new StoreException(file, what + ": " + why, failed);
    }

    /** By what the system says, or where it says so in another language, by the room that is left. */
    private static boolean isFull(Path file, long bytes, IOException failed) {
        String said = String.valueOf(failed.getMessage());
        if (said.contains("No space left") || said.contains("not enough space") || said.contains("quota")) return true;
        Path folder = file.toAbsolutePath().getParent();
        try {
            return folder != null
                    && Files.isWritable(folder)
                    && Files.getFileStore(folder).getUsableSpace() < bytes + SPARE_BYTES;
        } catch (IOException unknown) {
            return false;
        }
    }
}
