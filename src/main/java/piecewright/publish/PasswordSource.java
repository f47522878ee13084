package piecewright.publish;

import java.io.IOException;
import java.io.InputStream;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Where an app password comes from if it is not typed: an environment variable, or a file only its owner may read. */
public final class PasswordSource {
    private static final int LONGEST_BYTES = 4096;
    private static final Set<PosixFilePermission> OTHERS = EnumSet.of(
            PosixFilePermission.GROUP_READ,
            PosixFilePermission.GROUP_WRITE,
            PosixFilePermission.OTHERS_READ,
            PosixFilePermission.OTHERS_WRITE);

    private PasswordSource() {}

    /** A password, or why there is none. */
    public sealed interface Answer {
        /** The caller wipes it after use. */
        record Found(char[] password) implements Answer {
            @Override
            public String toString() {
                return "Found[]";
            }
        }

        record NotSet(String where) implements Answer {}

        /** Other people on this machine could read or change it. */
        record OpenToOthers(Path file) implements Answer {}

        record Unreadable(Path file) implements Answer {}
    }

    /** The variable of this name, unless it is absent or empty. */
    public static Answer inEnvironment(Map<String, String> environment, String variable) {
        String value = environment.getOrDefault(variable, "");
        return value.isEmpty() ? new Answer.NotSet(variable) : new Answer.Found(value.toCharArray());
    }

    /** The first line of a file of at most 4,096 bytes that nobody but its owner may read or write. */
    public static Answer inFile(Path file) {
        try (InputStream stream = Files.newInputStream(file)) {
            PosixFileAttributeView rights = Files.getFileAttributeView(file, PosixFileAttributeView.class);
            if (rights != null) {
                Set<PosixFilePermission> open = EnumSet.noneOf(PosixFilePermission.class);
                open.addAll(rights.readAttributes().permissions());
                open.retainAll(OTHERS);
                if (!open.isEmpty()) return new Answer.OpenToOthers(file);
            }
            return firstLine(stream.readNBytes(LONGEST_BYTES))
                    .<Answer>map(Answer.Found::new)
                    .orElseGet(() -> new Answer.NotSet(file.toString()));
        } catch (IOException unreadable) {
            return new Answer.Unreadable(file);
        }
    }

    private static Optional<char[]> firstLine(byte[] octets) {
        int end = 0;
        while (end < octets.length && octets[end] != '\n' && octets[end] != '\r') end++;
        CharBuffer text = StandardCharsets.UTF_8.decode(java.nio.ByteBuffer.wrap(octets, 0, end));
        char[] password = new char[text.remaining()];
        text.get(password);
        Arrays.fill(octets, (byte) 0);
        Arrays.fill(text.array(), '\0');
        return password.length == 0 ? Optional.empty() : Optional.of(password);
    }
}
