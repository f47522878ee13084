package piecewright.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.calendar.PlanFixture;
import piecewright.calendar.PublishedCopies;
import piecewright.publish.CalDavPublisher.IfAbsent;

/** What servers refuse, break off or answer wrongly: against one in memory; status codes and conditions as in RFC 4791 and RFC 9110. */
@Timeout(60)
class CalDavTroubleTest extends AgainstAServer {
    @Test
    void breakingOffHalfWayLosesNothing() {
        publish(PlanFixture.usual().withTurns(0));
        int before = server.stored.size();
        server.after("PUT", 3, new FakeServer.Scripted(507, Map.of(), new byte[0]));
        PublishResult result = publish(PlanFixture.usual());
        assertEquals(507, assertInstanceOf(PublishResult.Refused.class, result).status());
        assertEquals(server.stored.size(), copies.copies().size());
        assertTrue(server.stored.size() > before);
        assertEquals(0, done(publish(PlanFixture.usual())).conflicts().size());
        assertEquals(ALL, server.stored.size());
    }

    @ParameterizedTest
    @ValueSource(ints = {401, 403, 415, 500})
    void aRefusalSaysItsStatus(int status) {
        server.next.add(new FakeServer.Scripted(status, Map.of(), new byte[0]));
        assertEquals(
                status,
                assertInstanceOf(PublishResult.Refused.class, publish(PlanFixture.usual()))
                        .status());
        assertEquals(0, server.stored.size());
    }

    @Test
    void aWrongPasswordIsRefused() {
        Account wrong = new Account("brew", "wrong".toCharArray());
        PublishResult result = new CalDavPublisher(server.collection(), wrong, IfAbsent.REFUSE, SHORT)
                .publish(PlanFixture.usual().dated(), copies, List.of());
        assertEquals(401, assertInstanceOf(PublishResult.Refused.class, result).status());
    }

    @Test
    void aBusyServerIsTriedAgainButNotForEver() {
        for (int busy = 0; busy < 2; busy++) {
            server.next.add(new FakeServer.Scripted(503, Map.of("Retry-After", "3600"), new byte[0]));
        }
        assertEquals(ALL, done(publish(PlanFixture.usual())).counts().created());
        for (int busy = 0; busy < 3; busy++) server.next.add(new FakeServer.Scripted(429, Map.of(), new byte[0]));
        assertEquals(
                429,
                assertInstanceOf(PublishResult.Refused.class, publish(PlanFixture.usual()))
                        .status());
    }

    /** Servers close connections that were kept open; whether the request was heard before that is not known. */
    @Test
    void aConnectionThatDiesIsNotTheEnd() {
        server.after("PUT", 3, new FakeServer.Scripted(FakeServer.HANG_UP, Map.of(), new byte[0]));
        assertEquals(ALL, done(publish(PlanFixture.usual())).counts().created());
        server.deafOnPut = true;
        PlanFixture longer = PlanFixture.usual().withSoak(Duration.ofHours(11));
        PublishResult.Published result = done(publish(longer));
        assertEquals(List.of(), result.conflicts());
        assertEquals(2, result.counts().updated(), "the third was found to be there already");
        for (int time = 0; time < 3; time++) {
            server.next.add(new FakeServer.Scripted(FakeServer.HANG_UP, Map.of(), new byte[0]));
        }
        assertInstanceOf(PublishResult.Offline.class, publish(PlanFixture.usual()));
        assertEquals(0, server.next.size());
    }

    @Test
    void redirectsAreFollowedOnTheSameServerOnly() {
        server.next.add(new FakeServer.Scripted(308, Map.of("Location", "/cal/malt/"), new byte[0]));
        assertEquals(ALL, done(publish(PlanFixture.usual())).counts().created());
        String elsewhere = "http://localhost:" + server.collection().uri().getPort() + "/cal/malt/";
        for (String target : List.of(elsewhere, "https://evil.example.org/", "http://[", "file:///etc/passwd")) {
            int before = server.log.size();
            server.next.add(new FakeServer.Scripted(302, Map.of("Location", target), new byte[0]));
            assertEquals(
                    302,
                    assertInstanceOf(PublishResult.Refused.class, publish(PlanFixture.usual()))
                            .status());
            assertEquals(before + 1, server.log.size());
        }
        for (int turn = 0; turn < 9; turn++) {
            server.next.add(new FakeServer.Scripted(307, Map.of("Location", "/cal/malt/"), new byte[0]));
        }
        assertInstanceOf(PublishResult.Refused.class, publish(PlanFixture.usual()));
        server.next.clear();
    }

    @Test
    void aMissingCollectionIsMadeOnlyIfWanted() {
        server.exists = false;
        assertEquals(
                404,
                assertInstanceOf(PublishResult.Refused.class, publish(PlanFixture.usual()))
                        .status());
        PublishResult result =
                publisher(IfAbsent.MAKE_IT).publish(PlanFixture.usual().dated(), copies, List.of());
        assertEquals(ALL, done(result).counts().created());
        assertEquals(1, server.count("MKCALENDAR"));
    }

    @Test
    void anAddressThatIsNoCalendarForEventsIsSaidSo() {
        server.components = "<C:comp name=\"VTODO\"/>";
        assertInstanceOf(PublishResult.NotACalendar.class, publish(PlanFixture.usual()));
        server.components = "";
        server.type = "";
        assertInstanceOf(PublishResult.NotACalendar.class, publish(PlanFixture.usual()));
        server.next.add(new FakeServer.Scripted(200, Map.of(), "<html/>".getBytes(StandardCharsets.UTF_8)));
        assertInstanceOf(PublishResult.NotACalendar.class, publish(PlanFixture.usual()));
        assertEquals(0, server.count("PUT"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/passwd\">]><multistatus xmlns=\"DAV:\">&b;</multistatus>",
                "<!DOCTYPE a [<!ENTITY b \"bbbb\"><!ENTITY c \"&b;&b;&b;\">]><a>&c;</a>",
                "not xml",
                ""
            })
    void hostileOrBrokenAnswersEndItQuietly(String xml) {
        server.next.add(new FakeServer.Scripted(207, Map.of(), xml.getBytes(StandardCharsets.UTF_8)));
        assertInstanceOf(PublishResult.Offline.class, publish(PlanFixture.usual()));
        assertEquals(0, server.count("PUT"));
    }

    @Test
    void anEndlessAnswerIsCutOff() {
        server.next.add(new FakeServer.Scripted(207, Map.of(), new byte[9 << 20]));
        assertInstanceOf(PublishResult.Offline.class, publish(PlanFixture.usual()));
    }

    @Test
    void noServerMeansOfflineAndNothingLost() throws IOException {
        publish(PlanFixture.usual());
        PublishedCopies before = copies;
        server.close();
        PublishResult result = publish(PlanFixture.usual().withTurns(5));
        assertEquals(
                before, assertInstanceOf(PublishResult.Offline.class, result).copies());
    }

    @Test
    void aServerThatNeverAnswersIsGivenUp() throws IOException {
        try (ServerSocket silent = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
            CollectionUrl there = CollectionUrl.of("http://127.0.0.1:" + silent.getLocalPort() + "/malt/");
            Patience brief = new Patience(Duration.ofSeconds(1), Duration.ofMillis(300), Duration.ofMillis(10), 1);
            PublishResult result = new CalDavPublisher(there, account(), IfAbsent.REFUSE, brief)
                    .publish(PlanFixture.usual().dated(), PublishedCopies.none(there.toString()), List.of());
            assertInstanceOf(PublishResult.Offline.class, result);
        }
    }
}
