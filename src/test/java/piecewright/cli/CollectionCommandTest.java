package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.calendar.Ledger;
import piecewright.calendar.PlanFixture;
import piecewright.plan.PlanResult;
import piecewright.publish.FakeServer;

/** Publishing to a collection from the command line, against a server in memory on loopback. */
class CollectionCommandTest {
    private static final Instant LATER = Run.NOW.plus(Duration.ofHours(3));
    private static final PlanFixture USUAL = PlanFixture.usual();
    private static final Secrets TYPED = new Secrets(Map.of(), () -> Optional.of("secret".toCharArray()));
    private static final String DRAIN = Ledger.startedFor(Run.BATCH).uidOf("steep-1.drain") + ".ics";

    @TempDir
    private Path folder;

    private FakeServer server;

    @BeforeEach
    void start() throws IOException {
        server = new FakeServer();
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private String batch() {
        return folder.resolve("b.json").toString();
    }

    private void keep(PlanFixture fixture, Instant now) {
        List<String> arguments = Run.plan(
                "pale",
                "two-row-barley",
                "cool-garage",
                "--malt",
                "4 kg",
                "--ready-by",
                "2027-05-01",
                "--skip-checks",
                "--into",
                batch());
        assertEquals(
                0,
                Run.of(request -> new PlanResult.Planned(fixture.plan()), now, arguments)
                        .code());
    }

    private Run publish(Secrets secrets, Instant now, String... more) {
        List<String> arguments = new ArrayList<>(List.of("calendar", "--batch", batch(), "--user", "brew"));
        arguments.addAll(List.of("--collection", server.collection().toString()));
        arguments.addAll(List.of(more));
        return Run.of(Run.NEVER, now, secrets, arguments);
    }

    private Run publish(Instant now, String... more) {
        return publish(TYPED, now, more);
    }

    private String files() throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) all.append(Files.readString(file));
        }
        return all.toString();
    }

    @Test
    void aPlanIsPublishedAndThenOnlyWhatTheNextOneChanges() throws IOException {
        keep(USUAL, Run.NOW);
        Run first = publish(Run.NOW);
        assertEquals(0, first.code(), first.err());
        assertTrue(first.out().contains("17 entries made, 0 changed, 0 removed, 0 as before."), first.out());
        keep(USUAL.withTurns(5), LATER);
        Run preview = publish(LATER, "--preview");
        assertTrue(preview.out().contains("dropped: Turn 6 – Pale malt"), preview.out());
        assertEquals(17, server.count("PUT"), "a preview sends nothing");
        Run second = publish(LATER);
        assertTrue(second.out().contains("1 removed,"), second.out());
        assertTrue(publish(LATER).out().contains("0 entries made, 0 changed, 0 removed, 16 as before."));
        assertFalse(files().contains("secret"), "the password is nowhere on disk");
    }

    @Test
    void anEditedEntryIsLeftAloneUntilToldAndTheRunSaysSo() {
        keep(USUAL, Run.NOW);
        publish(Run.NOW);
        server.edit(DRAIN, "SUMMARY:Drain 1", "SUMMARY:My own drain");
        keep(USUAL.withSoak(Duration.ofHours(11)), LATER);
        Run asked = publish(LATER);
        assertEquals(1, asked.code());
        assertTrue(asked.out().replace("\n  ", " ").contains("Say --overwrite steep-1.drain"), asked.out());
        assertTrue(server.text(DRAIN).contains("SUMMARY:My own drain"));
        Run kept = publish(LATER, "--keep", "steep-1.drain");
        assertEquals(0, kept.code(), kept.out());
        assertTrue(server.text(DRAIN).contains("SUMMARY:My own drain"));
        keep(USUAL.withSoak(Duration.ofHours(12)), LATER.plusSeconds(60));
        assertEquals(1, publish(LATER.plusSeconds(60)).code(), "asked again once the plan changes it again");
        assertEquals(
                0,
                publish(LATER.plusSeconds(60), "--overwrite", "steep-1.drain").code());
        assertTrue(server.text(DRAIN).contains("SUMMARY:Drain 1"));
    }

    @Test
    void takenOutNothingOfOursIsLeftThereNorBesideTheBatch() throws IOException {
        keep(USUAL, Run.NOW);
        publish(Run.NOW);
        Run out = publish(LATER, "--take-out");
        assertEquals(0, out.code(), out.err());
        assertTrue(out.out().contains("17 removed"), out.out());
        assertFalse(Files.exists(folder.resolve("b.json.published.json")));
    }

    @Test
    void anotherCollectionIsRefusedWhileTheBatchIsInOne() throws IOException {
        keep(USUAL, Run.NOW);
        publish(Run.NOW);
        try (FakeServer other = new FakeServer()) {
            Run refused = Run.of(
                    Run.NEVER,
                    LATER,
                    TYPED,
                    List.of(
                            "calendar",
                            "--batch",
                            batch(),
                            "--user",
                            "brew",
                            "--collection",
                            other.collection().toString()));
            assertEquals(2, refused.code());
            assertTrue(refused.err().contains("take it out there first"), refused.err());
        }
    }

    @Test
    void aWrongPasswordChangesNothingAndIsSaidPlainly() throws IOException {
        keep(USUAL, Run.NOW);
        Run run = publish(new Secrets(Map.of("PW", "wrong"), Optional::empty), Run.NOW, "--password-env", "PW");
        assertEquals(3, run.code());
        assertTrue(run.err().contains("refuses this name or password"), run.err());
        assertFalse((run.out() + run.err() + files()).contains("wrong"));
        assertEquals(0, server.count("PUT"));
    }

    @Test
    void thePasswordMayComeFromTheEnvironmentOrAFileOfTheOwnerAlone() throws IOException {
        keep(USUAL, Run.NOW);
        Secrets inEnvironment = new Secrets(Map.of("PW", "secret"), Optional::empty);
        assertEquals(0, publish(inEnvironment, Run.NOW, "--password-env", "PW").code());
        Path file = Files.createTempFile("password", "");
        try {
            Files.writeString(file, "secret\n");
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
            Run open = publish(Secrets.none(), Run.NOW, "--password-file", file.toString());
            assertEquals(2, open.code());
            assertTrue(open.err().contains("chmod 600"), open.err());
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
            assertEquals(
                    0,
                    publish(Secrets.none(), Run.NOW, "--password-file", file.toString())
                            .code());
        } finally {
            Files.delete(file);
        }
    }

    @Test
    void offlineLosesNothing() throws IOException {
        keep(USUAL, Run.NOW);
        int closed;
        try (ServerSocket socket = new ServerSocket(0)) {
            closed = socket.getLocalPort();
        }
        String before = files();
        Run run = Run.of(
                Run.NEVER,
                Run.NOW,
                TYPED,
                List.of(
                        "calendar",
                        "--batch",
                        batch(),
                        "--user",
                        "brew",
                        "--collection",
                        "http://127.0.0.1:" + closed + "/m/"));
        assertEquals(3, run.code());
        assertTrue(run.err().replace("\n", " ").contains("Nothing is lost"), run.err());
        assertTrue(files().contains(before.substring(0, before.length() / 2)));
        assertEquals(0, publish(LATER).code(), "and the next run makes up for it");
    }

    @Test
    void aMissingCollectionIsMadeOnlyIfAsked() {
        keep(USUAL, Run.NOW);
        server.exists = false;
        Run refused = publish(Run.NOW);
        assertEquals(3, refused.code());
        assertTrue(refused.err().contains("--make"), refused.err());
        assertEquals(0, publish(Run.NOW, "--make").code());
    }

    @Test
    void whatTheServerLostIsMadeAgainAndSaid() {
        keep(USUAL, Run.NOW);
        publish(Run.NOW);
        server.lose(DRAIN);
        Run run = publish(LATER);
        assertEquals(0, run.code(), run.err());
        assertTrue(
                run.out().replace("\n", " ").contains("16 as before; 1 were missing there and were made again."),
                run.out());
        assertTrue(run.out().contains("made again: Drain 1"), run.out());
        server.loseAll();
        assertTrue(publish(LATER, "--make").out().replace("\n", " ").contains("17 were missing there"));
    }

    /** A server that is gone cannot be asked, so the batch is let go without asking. */
    @Test
    void aBatchIsLetGoOfAServerThatIsGone() throws IOException {
        keep(USUAL, Run.NOW);
        publish(Run.NOW);
        String gone = server.collection().toString();
        server.close();
        Run forgotten = Run.of(Run.NEVER, LATER, List.of("calendar", "--batch", batch(), "--forget"));
        assertEquals(0, forgotten.code(), forgotten.err());
        assertTrue(forgotten.out().replace("\n", " ").contains("no longer published to " + gone), forgotten.out());
        server = new FakeServer();
        assertTrue(publish(LATER).out().contains("17 entries made"));
    }
}
