package piecewright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every model constant names its source or owns up to being a judgement. */
class SourcedNumbersTest {
    private static final Path MAIN = Path.of("src/main/java/piecewright");
    private static final List<String> MODELS = List.of(
            "process",
            "plan",
            "colour",
            "quantity",
            "assess",
            "purchase",
            "remedy",
            "certainty",
            "calibrate",
            "replan");
    private static final Pattern CONSTANT = Pattern.compile(
            "(?m)^(?:[ \\t]*)(?:(?:public|private|protected)\\s+)?static\\s+final\\s+double(?:\\[\\])*\\s+(\\w+)");
    /** A constant of an interface has no modifiers; only upper-case names with an initialiser are meant. */
    private static final Pattern IN_INTERFACE = Pattern.compile("(?m)^ {4}double\\s+([A-Z][A-Z0-9_]+)\\s*=");

    private static final Pattern LAST_JAVADOC =
            Pattern.compile("(?s).*(/\\*\\*(?:(?!\\*/).)*\\*/)\\s*(?:@\\w+(?:\\([^)]*\\))?\\s*)*$");

    static List<String> unsourced(String name, String source) {
        List<String> found = new ArrayList<>();
        for (Pattern pattern : List.of(CONSTANT, IN_INTERFACE)) {
            Matcher constants = pattern.matcher(source);
            while (constants.find()) {
                Matcher javadoc = LAST_JAVADOC.matcher(source.substring(0, constants.start()));
                boolean sourced = javadoc.matches()
                        && (javadoc.group(1).contains("Source: ")
                                || javadoc.group(1).contains("Judgement: "));
                if (!sourced) found.add(name + ": " + constants.group(1));
            }
        }
        return found;
    }

    private static List<String> unsourcedIn(Path file) {
        try {
            return unsourced(MAIN.relativize(file).toString(), Files.readString(file));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    @Test
    void everyModelConstantNamesItsSourceOrOwnsUpToBeingAJudgement() throws IOException {
        List<String> found = new ArrayList<>();
        int walked = 0;
        for (String model : MODELS) {
            if (!Files.isDirectory(MAIN.resolve(model))) continue;
            try (Stream<Path> files = Files.walk(MAIN.resolve(model))) {
                for (Path file :
                        files.filter(each -> each.toString().endsWith(".java")).toList()) {
                    walked++;
                    found.addAll(unsourcedIn(file));
                }
            }
        }
        assertTrue(walked > 20, "the sources must be where this test looks");
        assertEquals(List.of(), found);
    }

    @Test
    void theRuleSeesWhatItIsFor() {
        String good = "    /** Source: a book. */\n    public static final double A_KG = 1;\n";
        String bare = "    private static final double B_KG = 2;\n";
        String vague = "    /** About two. */\n    static final double C_KG = 2;\n";
        String list = "    /** Judgement: mine. */\n    static final double[] D_KG = {1};\n";
        assertEquals(List.of(), unsourced("x", good + list));
        assertEquals(List.of("x: B_KG", "x: C_KG"), unsourced("x", good + bare + vague));
        assertEquals(List.of("x: E_HOURS"), unsourced("x", "interface I {\n    double E_HOURS = 1;\n}"));
    }
}
