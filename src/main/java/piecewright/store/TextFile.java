package piecewright.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads whole text files: UTF-8 only, a byte order mark is dropped, never more than a cap into memory. */
public final class TextFile {
    /** Cap of lots, houses and styles, bytes. */
    public static final int SMALL_BYTES = 1 << 20;

    /** Cap of logger files and saved batches, bytes. */
    public static final int LARGE_BYTES = 20 << 20;

    private TextFile() {}

    /** The text of a file of at most that many bytes. */
    public static String read(Path file, int mostBytes) throws StoreException {
        return decoded(file, bytes(file, mostBytes));
    }

    /** The bytes of a file of at most that many. */
    static byte[] bytes(Path file, int mostBytes) throws StoreException {
        if (Files.isDirectory(file)) throw new StoreException(file, "this is a folder; name a file in it");
        if (!Files.exists(file)) throw absent(file);
        if (!Files.isRegularFile(file))
            throw new StoreException(file, "this is not an ordinary file; name a text file");
        try (InputStream stream = Files.newInputStream(file)) {
            if (Files.size(file) > mostBytes) throw tooLarge(file, mostBytes);
            byte[] bytes = stream.readNBytes(mostBytes + 1);
            if (bytes.length > mostBytes) throw tooLarge(file, mostBytes);
            return bytes;
        } catch (NoSuchFileException gone) {
            throw absent(file);
        } catch (IOException failed) {
            throw new StoreException(
                    file, "cannot be read (" + failed.getClass().getSimpleName() + "); check its permissions", failed);
        }
    }

    /** Bytes as text; the file is only named in refusals. */
    static String decoded(Path file, byte[] bytes) throws StoreException {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        try {
            String text = decoder.decode(buffer).toString();
            return text.startsWith("\ufeff") ? text.substring(1) : text;
        } catch (CharacterCodingException malformed) {
            int line = 1;
            for (int i = 0; i < buffer.position(); i++) if (bytes[i] == '\n') line++;
            throw new StoreException(
                    file, "line " + line + ": this is not UTF-8 text; save the file as UTF-8", malformed);
        }
    }

    private static StoreException absent(Path file) {
        return new StoreException(file, "there is no such file; check the name and the folder");
    }

    private static StoreException tooLarge(Path file, int mostBytes) {
        return new StoreException(
                file,
                "this is larger than " + (mostBytes >> 20) + " MB; it is probably the wrong file, choose another");
    }
}
