package piecewright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where links lead: what belongs to a file lies beside the file itself, by whatever name somebody calls it. */
public final class Links {
    private Links() {}

    /** The file a link leads to; any other path, and a link that leads nowhere, as it is. */
    public static Path end(Path file) {
        if (!Files.isSymbolicLink(file)) return file;
        try {
            return file.toRealPath();
        } catch (IOException leadsNowhere) {
            return file;
        }
    }
}
