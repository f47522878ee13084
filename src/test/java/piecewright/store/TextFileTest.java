package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TextFileTest {
    private static final String LOT =
            "{\"format\":1,\"name\":\"a\",\"grain\":\"rye\",\"moisture\":{\"wetBasisPercent\":12},\"treated\":\"no\"}";

    @TempDir
    private Path folder;

    private String refusal(String name, byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve(name), bytes);
        String message =
                assertThrows(StoreException.class, () -> LotFile.read(file)).getMessage();
        assertEquals(1, message.lines().count());
        return message.substring(folder.toString().length() + 1);
    }

    private String refusal(String text) throws IOException {
        return refusal("f.json", text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void toleratesAByteOrderMark() throws StoreException, IOException {
        Path file = Files.writeString(folder.resolve("bom.json"), "\ufeff" + LOT);
        assertEquals("a", LotFile.read(file).name());
    }

    @Test
    void saysWhatIsWrongWithTheFileItself() throws IOException {
        assertEquals(
                folder + ": this is a folder; name a file in it",
                assertThrows(StoreException.class, () -> LotFile.read(folder)).getMessage());
        assertEquals(
                folder.resolve("no") + ": there is no such file; check the name and the folder",
                assertThrows(StoreException.class, () -> LotFile.read(folder.resolve("no")))
                        .getMessage());
        assertEquals(
                "f.json: line 2: this is not UTF-8 text; save the file as UTF-8",
                refusal("f.json", new byte[] {'{', '\n', '"', (byte) 0xe9, '"', '}'}));
        assertEquals("f.json: the file is empty; it must hold one { … } with \"format\": 1", refusal(" \n"));
        assertEquals("f.json: line 1, column 1: the file must hold one { … } with \"format\": 1", refusal("[1]"));
        assertTrue(refusal(LOT.substring(0, 40)).contains("the text ends too early"));
        assertTrue(refusal("{\"format\":1,\"name\":" + "[".repeat(5000)).contains("longer than any such file needs"));
        assertTrue(refusal("{\"format\":" + "1".repeat(5000) + "}").contains("longer than any such file needs"));
    }

    @Test
    void refusesATooLargeFileWithoutReadingIt() throws IOException, StoreException {
        Path file = folder.resolve("big.json");
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(40L << 30);
        } catch (IOException noRoom) {
            Files.write(file, new byte[(1 << 20) + 1]);
        }
        assertEquals(
                file + ": this is larger than 1 MB; it is probably the wrong file, choose another",
                assertThrows(StoreException.class, () -> LotFile.read(file)).getMessage());
    }

    @Test
    void writesWholeFilesOrNone() throws StoreException, IOException {
        Path file = folder.resolve("out.txt");
        AtomicFile.write(file, "one");
        AtomicFile.write(file, "två");
        assertEquals("två", Files.readString(file));
        try (var files = Files.list(folder)) {
            assertEquals(List.of(file), files.toList());
        }
        var absent = assertThrows(StoreException.class, () -> AtomicFile.write(folder.resolve("no/x"), "x"));
        assertTrue(absent.getMessage().endsWith("its folder does not exist; make the folder first"));
        assertThrows(StoreException.class, () -> AtomicFile.write(folder, "x"));
    }
}
