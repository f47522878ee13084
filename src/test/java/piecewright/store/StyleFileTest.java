package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StyleFileTest {
    @TempDir
    private Path folder;

    private static String pale() throws IOException {
        return Files.readString(Path.of("schedules/pale.json"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    "judgement: fitted with | "fitted with | key "kiln.colourBase.source" must say "published: author, title …", "judgement: why" or "common practice, no source"
                    "style": "pale"      | "style": "Pale!"     | key "style" must be lower-case letters
                    ["barley"]           | ["barely"]           | key "grains" "barely" is not a grain; did you mean "barley"?
                    ["barley"]           | []                   | impossible value: grains must not be empty
                    [0.42, 0.45]         | [0.45, 0.46]         | key "steep": impossible value: targetFraction must lie in acceptable
                    [0.42, 0.45]         | [0.42]               | key "steep.acceptableMoistureWetBasisFraction" must be two figures
                    [0.42, 0.45]         | [42, 45]             | key "steep.acceptableMoistureWetBasisFraction" must be from 0.3 to 0.5, not 42
                    "airOnC": 60         | "airOnC": 45         | key "kiln": impossible value: ladder must fall in moisture and rise in temperature at rung 2
                    "airOnC": 60         | "airOnC": 160        | key "kiln.ladder[1].airOnC" must be from 20 to 120, not 160
                    "restDays": 21       | "restDays": 35       | key "finish": impossible value: need 0 <= restDays <= preferredRestDays
                    "fewestImmersions"   | "fewestImersions"    | did you mean "fewestImmersions"?
                    """)
    void refusesInOneLineWithFileKeyAndMend(String from, String to, String part) throws IOException {
        String broken =
                pale().replaceFirst(java.util.regex.Pattern.quote(from), java.util.regex.Matcher.quoteReplacement(to));
        assertTrue(!broken.equals(pale()), from);
        var refused = assertThrows(StoreException.class, () -> StyleFile.parse(Path.of("s.json"), broken));
        assertTrue(
                refused.getMessage().startsWith("s.json: ")
                        && refused.getMessage().contains(part),
                refused.getMessage());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    [0.3, 0.42]       | [0.4, 0.42]      | key "hotCouch": impossible value: packingFraction must lie in packing
                    [7, 14]           | [13, 14]         | key "hotCouch": impossible value: indexHours must lie in acceptableIndex
                    "spreadAboveC": 53 | "spreadAboveC": 80 | key "hotCouch.spreadAboveC" must be from 30 to 60, not 80
                    "checkHours"      | "chekHours"      | did you mean "checkHours"?
                    """)
    void aCouchOutOfRangeIsRefusedByItsKey(String from, String to, String part) throws IOException {
        String munich = Files.readString(Path.of("schedules/munich.json"));
        String broken =
                munich.replaceFirst(java.util.regex.Pattern.quote(from), java.util.regex.Matcher.quoteReplacement(to));
        assertTrue(!broken.equals(munich), from);
        var refused = assertThrows(StoreException.class, () -> StyleFile.parse(Path.of("s.json"), broken));
        assertTrue(refused.getMessage().contains(part), refused.getMessage());
    }

    @Test
    void aBlockWithoutASourceIsRefused() throws IOException {
        for (String block : new String[] {"steep", "growth", "kiln", "colourBase", "finish"}) {
            String broken = pale().replaceFirst("(?s)(\"" + block + "\": \\{\\s*)\"source\": \"[^\"]*\",", "$1");
            var refused = assertThrows(StoreException.class, () -> StyleFile.parse(Path.of("s.json"), broken));
            assertTrue(refused.getMessage().endsWith(block + ".source\" is missing; add it"), refused.getMessage());
        }
    }

    @Test
    void aPersonsOwnStyleTakesThePlaceOfTheOneThatCame() throws StoreException, IOException {
        Files.writeString(folder.resolve("mine.json"), pale().replace("\"Pale malt\"", "\"My pale\""));
        Files.writeString(folder.resolve("notes.txt"), "not a style");
        StyleLibrary library = StyleLibrary.builtIn().with(folder);
        assertEquals("My pale", library.style("pale").title());
        assertEquals(StyleLibrary.builtIn().all().size(), library.all().size());
        Files.writeString(folder.resolve("twice.json"), pale());
        var refused =
                assertThrows(StoreException.class, () -> StyleLibrary.builtIn().with(folder));
        assertEquals(
                folder.resolve("twice.json") + ": key \"style\" \"pale\" is taken by another file; choose another",
                refused.getMessage());
    }

    @Test
    void anUnknownStyleNamesTheNearest() throws StoreException {
        StyleLibrary library = StyleLibrary.builtIn();
        var refused = assertThrows(StoreException.class, () -> library.style("plae"));
        assertEquals("schedules: no style \"plae\"; did you mean \"pale\"?", refused.getMessage());
        assertThrows(StoreException.class, () -> library.with(folder.resolve("absent")));
    }
}
