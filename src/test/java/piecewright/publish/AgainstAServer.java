package piecewright.publish;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import piecewright.calendar.CalendarEvent;
import piecewright.calendar.DatedEvent;
import piecewright.calendar.Ledger;
import piecewright.calendar.PlanFixture;
import piecewright.calendar.PublishedCopies;
import piecewright.publish.CalDavPublisher.IfAbsent;

/** A server in memory, a batch that is published there, and what is remembered of it. */
abstract class AgainstAServer {
    static final Patience SHORT = new Patience(Duration.ofSeconds(5), Duration.ofSeconds(5), Duration.ofMillis(10), 3);
    static final int ALL = PlanFixture.usual().events().events().size();

    FakeServer server;
    Ledger ledger = Ledger.startedFor(PlanFixture.BATCH);
    Instant now = PlanFixture.NOW;
    PublishedCopies copies;

    @BeforeEach
    void start() throws IOException {
        server = new FakeServer();
        copies = PublishedCopies.none(server.collection().toString());
    }

    @AfterEach
    void stop() {
        server.close();
    }

    PublishResult publish(PlanFixture plan, Decision... decisions) {
        now = now.plusSeconds(60);
        var revision = ledger.next(plan.events(), now);
        ledger = revision.ledger();
        List<DatedEvent> events = revision.forLiveFile();
        PublishResult result = publisher(IfAbsent.REFUSE).publish(events, copies, List.of(decisions));
        copies = result.copies();
        return result;
    }

    CalDavPublisher publisher(IfAbsent ifAbsent) {
        return new CalDavPublisher(server.collection(), account(), ifAbsent, SHORT);
    }

    static Account account() {
        return new Account("brew", "secret".toCharArray());
    }

    static PublishResult.Published done(PublishResult result) {
        return assertInstanceOf(PublishResult.Published.class, result);
    }

    static List<Conflict.Kind> kinds(PublishResult.Published result) {
        return result.conflicts().stream().map(Conflict::kind).toList();
    }

    static List<String> keys(PublishResult.Published result) {
        return result.restored().stream().map(CalendarEvent::key).toList();
    }

    static String name(String key) {
        return Ledger.startedFor(PlanFixture.BATCH).uidOf(key) + ".ics";
    }
}
