package piecewright.app;

import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import piecewright.calendar.Done;
import piecewright.history.Account;
import piecewright.journal.Entry;
import piecewright.journal.Report.TemperatureRead;
import piecewright.journal.Report.Weighed;
import piecewright.plan.Timetable.Visit;
import piecewright.replan.Batch;

/** What a batch's journal has as done, each with what was found at the same time. */
final class DoneSoFar {
    private DoneSoFar() {}

    static Map<String, Done> of(Batch batch, Instant now) {
        Account account = batch.account(batch.journal().vessels(), now);
        Set<Integer> doubted = new HashSet<>();
        account.contradictions().forEach(question -> doubted.add(question.entry()));
        List<Entry> entries = batch.journal().effectiveUntil(now).stream()
                .filter(entry -> !doubted.contains(entry.number()))
                .toList();
        Map<String, Done> done = new HashMap<>();
        for (Visit visit : account.visits()) {
            boolean told = account.entryByAct().containsKey(visit.id());
            List<Entry> beside = told ? entries : List.of();
            done.put(visit.id(), new Done(visit.at(), weighed(beside, visit), read(beside, visit)));
        }
        return done;
    }

    private static OptionalDouble weighed(List<Entry> entries, Visit visit) {
        OptionalDouble found = OptionalDouble.empty();
        for (Entry entry : entries) {
            if (belongs(entry, visit) && entry.report() instanceof Weighed weighed) {
                found = OptionalDouble.of(weighed.netKg());
            }
        }
        return found;
    }

    private static OptionalDouble read(List<Entry> entries, Visit visit) {
        OptionalDouble found = OptionalDouble.empty();
        for (Entry entry : entries) {
            boolean belongs = belongs(entry, visit);
            if (belongs
                    && entry.report() instanceof TemperatureRead read
                    && read.spot().inGrain()) {
                found = OptionalDouble.of(read.readC());
            }
        }
        return found;
    }

    private static boolean belongs(Entry entry, Visit visit) {
        return entry.actId()
                .map(id -> id.equals(visit.id()))
                .orElseGet(() -> entry.at().equals(visit.at()));
    }
}
