package piecewright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the documents say is there. */
class DocumentsTest {
    private static final Path README = Path.of("README.md");
    private static final Path DEVELOPERS = Path.of("DEVELOPERS.md");

    private static List<String> found(Path document, String pattern) throws IOException {
        List<String> found = Pattern.compile(pattern)
                .matcher(Files.readString(document))
                .results()
                .map(MatchResult::group)
                .distinct()
                .toList();
        assertTrue(!found.isEmpty(), pattern);
        return found;
    }

    private static String source(String type) throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src"))) {
            Path file = files.filter(each -> each.getFileName().toString().equals(type + ".java"))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no such class: " + type));
            return Files.readString(file);
        }
    }

    @Test
    void everyTestNamedUnderDecisionsExists() throws IOException {
        for (String name : found(DEVELOPERS, "\\w+Test\\.\\w+")) {
            String[] parts = name.split("\\.");
            assertTrue(source(parts[0]).contains(" " + parts[1]), name);
        }
    }

    @Test
    void everyPackageHasItsPhrase() throws IOException {
        String developers = Files.readString(DEVELOPERS);
        try (Stream<Path> packages = Files.list(Path.of("src/main/java/piecewright"))) {
            for (Path each : packages.filter(Files::isDirectory).toList()) {
                assertTrue(developers.contains("\n  " + each.getFileName() + " "), each.toString());
            }
        }
    }

    @Test
    void everyFileAndOptionOfTheReadmeExists() throws IOException {
        for (String file : found(README, "demo-data/[a-z0-9/-]+(\\.json)?"))
            assertTrue(Files.exists(Path.of(file)), file);
        StringBuilder options = new StringBuilder();
        try (Stream<Path> files = Files.list(Path.of("src/main/java/piecewright/cli"))) {
            for (Path file : files.toList()) options.append(Files.readString(file));
        }
        for (String option : found(README, "(?<= |`)--[a-z-]+")) {
            assertTrue(option.equals("--help") || options.indexOf("\"" + option + "\"") >= 0, option);
        }
    }

    @Test
    void theDocumentsStayShort() throws IOException {
        assertTrue(Files.readAllLines(README).size() <= 150, "three screens");
        assertTrue(Files.readAllLines(DEVELOPERS).size() <= 200, "four screens");
        assertEquals("# Piecewright", Files.readAllLines(README).get(0));
    }
}
