package piecewright.store;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Files that are being written, under names of their own until they are whole; and what is left of them after a kill. */
final class Unfinished {
    private static final Pattern NAME =
            Pattern.compile("\\..+\\.(?:([0-9]{1,10})-)?[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}\\.tmp");

    private Unfinished() {}

    /** A fresh name for a file that is going to take this one's place; it says which process writes it. */
    static Path of(Path target) {
        return target.resolveSibling(
                "." + target.getFileName() + "." + ProcessHandle.current().pid() + "-" + UUID.randomUUID() + ".tmp");
    }

    /** Those in a folder that nobody will finish any more; none where it cannot be listed. */
    static List<Path> left(Path folder) {
        List<Path> left = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, Unfinished::isLeft)) {
            files.forEach(left::add);
        } catch (IOException cannotBeListed) {
            return List.of();
        }
        return left;
    }

    private static boolean isLeft(Path file) {
        Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
        if (!name.matches()) return false;
        String writer = name.group(1);
        return writer == null || ProcessHandle.of(Long.parseLong(writer)).isEmpty();
    }

    /** Removes them; to be called by whoever holds the folder's lock. */
    static void sweep(Path folder) {
        for (Path each : left(folder)) {
            try {
                Files.deleteIfExists(each);
            } catch (IOException leftLying) {
                // it takes some room and harms nothing
            }
        }
    }
}
