package piecewright.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import piecewright.history.Contradiction.NoSuchTime;
import piecewright.history.Contradiction.Time;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import piecewright.journal.Report.Measured;
import piecewright.journal.Report.Noted;
import piecewright.journal.Report.Tare;
import piecewright.journal.Report.VesselWeighed;

/** Reads the event log of a batch beside the plan it followed. Pure, and never fails, whatever the log holds. */
public final class EventLog {
    private final Times times;
    private final Map<Integer, Fate> fates = new HashMap<>();
    private final List<Contradiction> contradictions = new ArrayList<>();
    private final List<Entry> read = new ArrayList<>();

    private EventLog(Followed plan, Instant now) {
        this.times = new Times(plan.planned(), now);
    }

    /**
     * What happened until an instant. Entries of one instant count as written down, but what was measured before the act
     * that ends.
     *
     * @param vessels vessels whose weight is remembered
     */
    public static Account account(Followed plan, Journal journal, List<Tare> vessels, Instant now) {
        EventLog log = new EventLog(plan, now);
        log.sort(journal);
        log.read.sort(
                Comparator.comparing(Entry::at).thenComparing(entry -> entry.report() instanceof Measured ? 0 : 1));
        ActsTold acts = new ActsTold(plan, log.times, log.read);
        log.contradictions.addAll(acts.contradictions());
        log.fates.putAll(acts.fates());
        FiguresTold figures = new FiguresTold(plan, acts, log.times, vessels);
        for (Entry entry : log.read) {
            if (!log.fates.containsKey(entry.number())) figures.take(entry);
        }
        figures.end();
        log.contradictions.addAll(figures.contradictions());
        log.fates.putAll(figures.fates());
        log.contradictions.sort(Comparator.comparing(Contradiction::at).thenComparing(Contradiction::entry));
        return new Account(
                acts.done(),
                figures.measurements(),
                log.settings(),
                figures.signs(),
                log.contradictions,
                log.fates,
                figures.found(acts.sprinkledKg()),
                figures.entryByReading(),
                figures.until());
    }

    /** Puts aside what was struck, what comes later, and what cannot have been then. */
    private void sort(Journal journal) {
        Set<Integer> held = new HashSet<>();
        for (Entry entry : journal.effective()) {
            held.add(entry.number());
            Report report = entry.report();
            if (report instanceof Noted || report instanceof VesselWeighed) {
                fates.put(entry.number(), Fate.NOTED);
            } else if (times.later(entry)) {
                fates.put(entry.number(), Fate.LATER);
            } else {
                times.against(entry).ifPresentOrElse(time -> contradict(entry, time), () -> read.add(entry));
            }
        }
        for (Entry entry : journal.entries()) {
            if (entry.report() instanceof Report.Corrected) fates.putIfAbsent(entry.number(), Fate.CORRECTION);
            else if (!held.contains(entry.number())) fates.put(entry.number(), Fate.STRUCK);
        }
    }

    private void contradict(Entry entry, Time time) {
        fates.put(entry.number(), Fate.CONTRADICTED);
        contradictions.add(new NoSuchTime(entry.number(), entry.at(), time));
    }

    private List<Entry> settings() {
        return read.stream()
                .filter(entry -> fates.get(entry.number()) != Fate.CONTRADICTED
                        && (entry.report() instanceof Report.HeatSet || entry.report() instanceof Report.VentsSet))
                .toList();
    }
}
