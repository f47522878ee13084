package piecewright.campaign;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import piecewright.oracle.Fault;

/** What was typed and answered in the life of a batch, and what was wrong with it; the first of each kind is kept. */
final class Verdicts {
    /** So much of an answer is kept. */
    private static final int ANSWER = 500;

    /** A wish should take no longer. */
    private static final double LONG_SECONDS = 3;

    private final List<String> told = new ArrayList<>();
    private final Map<String, String> faults = new LinkedHashMap<>();
    private final Map<String, Double> seconds = new TreeMap<>();

    void wrote(Instant now, List<String> words, Terminal.Said said) {
        String typed = words.stream()
                .map(word -> word.matches("[\\w./:=+-]+") ? word : "'" + word.replace("'", "'\\''") + "'")
                .collect(Collectors.joining(" "));
        String answer = (said.out() + said.err()).replaceAll("\\s+", " ");
        told.add("[" + told.size() + "] " + now + " $ piecewright " + typed + "\n  " + said.code() + " "
                + answer.substring(0, Math.min(ANSWER, answer.length())));
    }

    /** Told, never judged: how long something takes is no matter of right or wrong here. */
    void took(String command, double cpuSeconds) {
        if (cpuSeconds > LONG_SECONDS)
            told.add(String.format(Locale.ROOT, "... %s took %.1f s of CPU", command, cpuSeconds));
        seconds.merge(command, cpuSeconds, Double::sum);
    }

    /** Seconds of CPU spent on each command. */
    Map<String, Double> seconds() {
        return seconds;
    }

    void found(String rule, String where, String how) {
        String at = " [" + (told.size() - 1) + "]";
        faults.putIfAbsent(rule + ": " + where, how.strip() + at);
        told.add("!!! " + rule + ": " + where + ": " + how);
    }

    void found(String command, List<Fault> told) {
        told.forEach(one -> found(one.rule(), command + " " + one.step(), one.how()));
    }

    boolean clean() {
        return faults.isEmpty();
    }

    String told() {
        return faults.entrySet().stream()
                .map(one -> "  " + one.getKey() + " | " + one.getValue())
                .collect(Collectors.joining("\n"));
    }

    void keep(Path file) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            Files.write(file, told);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
