package piecewright.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import piecewright.plan.ActKind;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.UnderWay;

/** Whatever a log holds: it is read, and every entry counts as one thing. */
class EventLogPropertyTest {
    private static final Followed PLAN = Plans.pale();
    private static final Instant FROM = PLAN.planned().get(0).at();
    private static final Instant UNTIL = FROM.plus(Duration.ofDays(14));

    @Provide
    Arbitrary<Journal> logs() {
        return RandomLogs.about(FROM, UNTIL, 60);
    }

    private static Account account(Journal journal) {
        return EventLog.account(PLAN, journal, journal.vessels(), UNTIL);
    }

    @Property(tries = 2000, edgeCases = EdgeCasesMode.NONE, seed = "2031")
    void everyEntryCountsAsOneThing(@ForAll("logs") Journal journal) {
        Account account = account(journal);
        assertEquals(numbers(journal.entries()), account.fates().keySet());
        Set<Integer> doubted =
                account.contradictions().stream().map(Contradiction::entry).collect(Collectors.toSet());
        assertEquals(doubted, having(account, Fate.CONTRADICTED));
        assertEquals(doubted.size(), account.contradictions().size(), "asked about once");
        assertEquals(
                numbers(account.measurements().stream().map(Measurement::entry).toList()),
                having(account, Fate.MEASURED));
        assertEquals(numbers(account.settings()), having(account, Fate.SET));
        assertEquals(numbers(account.signs()), having(account, Fate.SEEN));
        Set<Integer> told = having(account, Fate.DONE);
        told.addAll(having(account, Fate.SET));
        account.acts().forEach(done -> done.entry().ifPresent(entry -> assertTrue(told.contains(entry))));
    }

    @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE, seed = "2032")
    void whatWasDoneStandsInTheOrderOfTheCraft(@ForAll("logs") Journal journal) {
        List<Visit> visits = account(journal).visits();
        Set<String> ids = new HashSet<>();
        Instant last = Instant.MIN;
        int rank = 0;
        for (Visit visit : visits) {
            assertTrue(ids.add(visit.id()), "once only: " + visit.id());
            assertFalse(visit.at().isBefore(last), "in time order: " + visit);
            last = visit.at();
            if (visit.kind() == ActKind.RAISE || visit.kind() == ActKind.CURE) continue; // turned down and up again
            if (!UnderWay.bounds(visit.kind()) || visit.kind() == ActKind.DEROOT || visit.kind() == ActKind.LOWER)
                continue;
            assertTrue(Order.rank(visit) > rank, visit + " after rank " + rank);
            rank = Order.rank(visit);
        }
        if (!visits.isEmpty()) assertEquals(ActKind.SOAK, visits.get(0).kind());
    }

    @Property(tries = 500, edgeCases = EdgeCasesMode.NONE, seed = "2033")
    void anyEntryCanBeStruck(@ForAll("logs") Journal journal) {
        for (Entry entry : account(journal).contradictions().stream()
                .map(doubted -> journal.entry(doubted.entry()).orElseThrow())
                .toList()) {
            Journal struck = journal.with(new Entry(
                    journal.nextNumber(),
                    UNTIL,
                    UNTIL,
                    Optional.empty(),
                    new Report.Corrected(entry.number(), Optional.empty())));
            assertEquals(Fate.STRUCK, account(struck).fates().get(entry.number()));
        }
    }

    private static Set<Integer> having(Account account, Fate fate) {
        return account.fates().entrySet().stream()
                .filter(each -> each.getValue() == fate)
                .map(java.util.Map.Entry::getKey)
                .collect(Collectors.toSet());
    }

    private static Set<Integer> numbers(List<Entry> entries) {
        return entries.stream().map(Entry::number).collect(Collectors.toSet());
    }
}
