package piecewright.app.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whether two names lead to one file, through links or not, whether it is there or not. */
public final class SameFile {
    private SameFile() {}

    public static boolean are(Path one, Path other) {
        try {
            if (Files.exists(one) && Files.exists(other)) return Files.isSameFile(one, other);
        } catch (IOException unknown) {
            return whole(one).equals(whole(other));
        }
        return whole(one).equals(whole(other));
    }

    private static Path whole(Path file) {
        return file.toAbsolutePath().normalize();
    }
}
