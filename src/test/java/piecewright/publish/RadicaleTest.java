package piecewright.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import piecewright.calendar.DatedEvent;
import piecewright.calendar.Ledger;
import piecewright.calendar.PlanFixture;
import piecewright.calendar.PublishedCopies;
import piecewright.calendar.Revision;
import piecewright.publish.CalDavPublisher.IfAbsent;
import piecewright.publish.PublishResult.Counts;

/** From plan to a real server, by a real sync program to a real calendar; all on loopback, ended by the test. */
@Tag("clients")
@Timeout(120)
class RadicaleTest {
    private static final int ALL = PlanFixture.usual().events().events().size();

    @TempDir
    Path folder;

    private Program programs;
    private Process server;
    private CollectionUrl collection;
    private PublishedCopies copies;
    private Ledger ledger = Ledger.startedFor(PlanFixture.BATCH);
    private List<DatedEvent> plan = List.of();

    @BeforeEach
    void start() throws Exception {
        programs = new Program(folder);
        programs.mustBeThere("radicale", "radicale", "--version");
        int port;
        try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            port = free.getLocalPort();
        }
        Files.writeString(folder.resolve("users"), "brew:secret\n");
        Files.writeString(
                folder.resolve("radicale.conf"), """
                [server]
                hosts = 127.0.0.1:%d
                [auth]
                type = htpasswd
                htpasswd_filename = %s
                htpasswd_encryption = plain
                [rights]
                type = owner_only
                [storage]
                filesystem_folder = %s
                """.formatted(port, folder.resolve("users"), folder.resolve("store")));
        server = programs.start(
                "radicale", "--config", folder.resolve("radicale.conf").toString());
        awaitPort(port);
        collection = CollectionUrl.of("http://127.0.0.1:" + port + "/brew/malt/");
        copies = PublishedCopies.none(collection.toString());
    }

    @AfterEach
    void stop() throws InterruptedException {
        if (server == null) return;
        server.destroy();
        if (!server.waitFor(5, TimeUnit.SECONDS)) server.destroyForcibly();
    }

    @Test
    void aPlanPublishedAndChangedArrivesInACalendarExactly() throws Exception {
        programs.mustBeThere("vdirsyncer", "vdirsyncer", "--version");
        programs.mustBeThere("khal", "khal", "--version");
        KhalFolder khal =
                new KhalFolder(programs, folder, folder.resolve("synced").resolve("malt"));
        assertEquals(
                new Counts(ALL, 0, 0, 0),
                published(PlanFixture.usual(), "secret").counts());
        sync();
        assertEquals(KhalFolder.expected(plan), khal.listed());

        PlanFixture changed = PlanFixture.usual().withSoak(Duration.ofHours(11)).withTurns(5);
        Counts counts = published(changed, "secret").counts();
        assertEquals(1, counts.removed());
        assertTrue(counts.updated() > 0 && counts.created() == 0, counts.toString());
        sync();
        assertEquals(KhalFolder.expected(plan), khal.listed());
        assertEquals(plan.size(), khal.files().size());

        Path drain = folder.resolve("synced/malt/" + ledger.uidOf("steep-1.drain") + ".ics");
        Files.writeString(drain, Files.readString(drain).replace("SUMMARY:Drain", "SUMMARY:Ask Jo to drain"));
        sync();
        PublishResult.Published result = published(PlanFixture.usual().withTurns(5), "secret");
        assertEquals(
                List.of(Conflict.Kind.EDITED),
                result.conflicts().stream().map(Conflict::kind).toList());
        sync();
        assertTrue(khal.listed().get(ledger.uidOf("steep-1.drain").toString()).contains("Ask Jo"));

        Decision overwrite = Decision.about(result.conflicts().get(0), Decision.Choice.OVERWRITE);
        assertEquals(
                List.of(),
                published(PlanFixture.usual().withTurns(5), "secret", overwrite).conflicts());
        sync();
        assertEquals(KhalFolder.expected(plan), khal.listed());
    }

    @Test
    void lostRecordsAreMadeGoodThoughTheServerRewroteEveryEvent() {
        published(PlanFixture.usual(), "secret");
        copies = PublishedCopies.none(collection.toString());
        PublishResult.Published again = published(PlanFixture.usual(), "secret");
        assertEquals(List.of(), again.conflicts());
        assertEquals(new Counts(0, 0, 0, ALL), again.counts());
    }

    @Test
    void aWrongPasswordChangesNothing() {
        assertEquals(
                401,
                assertInstanceOf(PublishResult.Refused.class, publish(PlanFixture.usual(), "wrong"))
                        .status());
    }

    private PublishResult.Published published(PlanFixture fixture, String password, Decision... decisions) {
        PublishResult result = publish(fixture, password, decisions);
        return assertInstanceOf(PublishResult.Published.class, result, result.toString());
    }

    private PublishResult publish(PlanFixture fixture, String password, Decision... decisions) {
        Revision revision = ledger.next(fixture.events(), PlanFixture.NOW);
        ledger = revision.ledger();
        plan = revision.forLiveFile();
        try (Account account = new Account("brew", password.toCharArray())) {
            PublishResult result = new CalDavPublisher(collection, account, IfAbsent.MAKE_IT, Patience.usual())
                    .publish(plan, copies, List.of(decisions));
            copies = result.copies();
            return result;
        }
    }

    private void sync() throws IOException, InterruptedException {
        Path config = folder.resolve("vdirsyncer.conf");
        if (!Files.exists(config)) {
            Files.writeString(config, """
                    [general]
                    status_path = "%s"
                    [pair malt]
                    a = "here"
                    b = "there"
                    collections = ["malt"]
                    [storage here]
                    type = "filesystem"
                    path = "%s"
                    fileext = ".ics"
                    [storage there]
                    type = "caldav"
                    url = "%s"
                    username = "brew"
                    password = "secret"
                    """.formatted(
                            folder.resolve("status"),
                            folder.resolve("synced"),
                            collection.uri().resolve("../")));
            programs.run("vdirsyncer", "-c", config.toString(), "discover");
        }
        programs.run("vdirsyncer", "-c", config.toString(), "sync");
    }

    private static void awaitPort(int port) throws InterruptedException {
        for (int tries = 0; tries < 200; tries++) {
            try (Socket socket = new Socket()) {
                socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 200);
                return;
            } catch (IOException notYet) {
                Thread.sleep(100);
            }
        }
        throw new AssertionError("the server did not start");
    }
}
