package piecewright.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Runs programs from outside, bounded in time, with nothing of the person's own settings. */
public final class Program {
    static final String PYTHON = "/usr/bin/python3";
    private static final long LONGEST_SECONDS = 40;

    private final Path home;

    public Program(Path home) {
        this.home = home;
    }

    /** Skips the test with a word on why, unless this command ends well. */
    public void mustBeThere(String what, String... command) {
        boolean there;
        try {
            Process process = builder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            there = process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS) && process.exitValue() == 0;
            process.destroy();
        } catch (IOException absent) {
            there = false;
        } catch (InterruptedException stopped) {
            throw new AssertionError(stopped);
        }
        assumeTrue(there, what + " is not installed here; .ci/run installs it");
    }

    /** What it prints; fails unless it ends well in time. */
    public String run(String... command) throws IOException, InterruptedException {
        Path output = Files.createTempFile(home, "run", ".out");
        Path errors = Files.createTempFile(home, "run", ".err");
        Process process = builder(command)
                .redirectOutput(output.toFile())
                .redirectError(errors.toFile())
                .start();
        boolean ended = process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS);
        process.destroyForcibly();
        assertTrue(ended, String.join(" ", command) + " did not end");
        assertEquals(0, process.exitValue(), () -> String.join(" ", command) + "\n" + read(output) + read(errors));
        return read(output) + read(errors);
    }

    /** A server; the caller destroys it. */
    Process start(String... command) throws IOException {
        return builder(command)
                .redirectOutput(home.resolve("server.out").toFile())
                .redirectError(home.resolve("server.err").toFile())
                .start();
    }

    private ProcessBuilder builder(String... command) {
        ProcessBuilder builder = new ProcessBuilder(List.of(command)).directory(home.toFile());
        builder.environment().put("HOME", home.toString());
        builder.environment().put("XDG_CONFIG_HOME", home.resolve("config").toString());
        builder.environment().put("XDG_DATA_HOME", home.resolve("data").toString());
        builder.environment().put("XDG_CACHE_HOME", home.resolve("cache").toString());
        builder.environment().put("LC_ALL", "C.UTF-8");
        builder.environment().put("TZ", "Asia/Kathmandu"); // a reader that falls back to its own zone shows itself
        return builder;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException failed) {
            return failed.toString();
        }
    }
}
