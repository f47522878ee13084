package piecewright.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import piecewright.history.Account.Done;
import piecewright.history.Contradiction.NoSuchTime;
import piecewright.history.Contradiction.Time;
import piecewright.journal.Entry;
import piecewright.journal.Report.HeatSet;
import piecewright.journal.Report.Measured;
import piecewright.journal.Report.Observed;
import piecewright.journal.Report.Tare;
import piecewright.journal.Report.VentsSet;
import piecewright.journal.Report.Weighed;
import piecewright.journal.Sign;
import piecewright.plan.ActKind;
import piecewright.plan.Found;
import piecewright.plan.Found.ColdSpell;
import piecewright.plan.Reading;
import piecewright.plan.Timetable.Visit;

/** What a log tells beside acts, in time order, each held against the acts that were done by then. */
final class FiguresTold {
    private final List<Done> acts;
    private final Times times;
    private final Weights weights;
    private final Figures figures = new Figures();
    private final Map<Integer, Fate> fates = new HashMap<>();
    private final List<Contradiction> contradictions = new ArrayList<>();
    private final List<Measurement> measurements = new ArrayList<>();
    private final List<Entry> signs = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    private final List<Integer> entryByReading = new ArrayList<>();
    private final List<ColdSpell> coldSpells = new ArrayList<>();
    private Optional<Entry> coldSince = Optional.empty();
    private Keeping keeping = Keeping.STEEPING;
    private int passed;

    FiguresTold(Followed plan, ActsTold acts, Times times, List<Tare> vessels) {
        this.acts = acts.done();
        this.times = times;
        this.weights = new Weights(plan.dryKg(), vessels);
    }

    void take(Entry entry) {
        while (passed < acts.size() && acts.get(passed).visit().at().isBefore(entry.at())) pass(acts.get(passed++));
        if (entry.report() instanceof Measured measured) {
            measured(entry, measured);
        } else if (entry.report() instanceof Observed observed) {
            observed(entry, observed);
        } else if (entry.report() instanceof HeatSet || entry.report() instanceof VentsSet) {
            fates.put(entry.number(), Fate.SET);
        }
    }

    private void pass(Done done) {
        Visit visit = done.visit();
        if (visit.kind() == ActKind.SOAK) weights.soaked();
        if (visit.kind() == ActKind.TURN) weights.sprinkled(done.waterKg().orElse(0));
        if (!visit.kind().looksIntoAHeap()) figures.disturbed();
        keeping = switch (visit.kind()) {
            case SOAK, DRAIN, HEAP -> Keeping.STEEPING;
            case FLOOR, WITHER, BREAK -> Keeping.GROWING;
            case PACK -> Keeping.COUCHED;
            case LOAD, RAISE, LOWER, CURE -> Keeping.HEATED;
            case OFF, DEROOT, ROAST -> Keeping.DONE;
            case LOOK, TURN, SPRINKLE, CHECK, STEW, STIR -> keeping;
        };
    }

    private void measured(Entry entry, Measured measured) {
        if (passed == 0) {
            fates.put(entry.number(), Fate.NOTED);
            return;
        }
        Measurement measurement = new Measurement(entry, measured, keeping);
        Optional<Contradiction> against = against(measurement);
        if (against.isPresent()) {
            contradict(entry, against.get());
            return;
        }
        fates.put(entry.number(), Fate.MEASURED);
        measurements.add(measurement);
        measurement.reading().ifPresent(reading -> {
            readings.add(reading);
            entryByReading.add(entry.number());
        });
    }

    private boolean tooLong(Entry entry) {
        return keeping == Keeping.DONE ? !times.canBeWorked(entry.at()) : !times.canBeGreen(entry.at());
    }

    private static Contradiction tooLate(Entry entry) {
        return new NoSuchTime(entry.number(), entry.at(), Time.AFTER_THE_BATCH);
    }

    private void contradict(Entry entry, Contradiction why) {
        fates.put(entry.number(), Fate.CONTRADICTED);
        contradictions.add(why);
    }

    private Optional<Contradiction> against(Measurement measurement) {
        Entry entry = measurement.entry();
        if (tooLong(entry)) return Optional.of(tooLate(entry));
        return measurement.found() instanceof Weighed weighed
                ? weights.against(entry, weighed, keeping)
                : figures.against(measurement);
    }

    private void observed(Entry entry, Observed observed) {
        if (tooLong(entry)) {
            contradict(entry, tooLate(entry));
            return;
        }
        fates.put(entry.number(), Fate.SEEN);
        signs.add(entry);
        if (observed.sign() == Sign.POWER_OUT && coldSince.isEmpty()) coldSince = Optional.of(entry);
        if (observed.sign() == Sign.POWER_BACK && coldSince.isPresent()) {
            cold(coldSince.get().at(), entry.at(), entry.number());
            coldSince = Optional.empty();
        }
    }

    private void cold(Instant from, Instant until, int entry) {
        if (!from.isBefore(until)) return;
        coldSpells.add(new ColdSpell(from, until));
        readings.add(Reading.nothing(until));
        entryByReading.add(entry);
    }

    /** Power that is out still stays out until now. */
    void end() {
        while (passed < acts.size()) pass(acts.get(passed++));
        coldSince.ifPresent(since -> cold(since.at(), until(), since.number()));
    }

    /** Until when a forecast follows the grain. */
    Instant until() {
        return keeping == Keeping.DONE ? times.maltFollowed() : times.followed();
    }

    Found found(Map<String, Double> sprinkledKg) {
        return new Found(readings, sprinkledKg, coldSpells);
    }

    List<Integer> entryByReading() {
        return entryByReading;
    }

    List<Measurement> measurements() {
        return measurements;
    }

    List<Entry> signs() {
        return signs;
    }

    Map<Integer, Fate> fates() {
        return fates;
    }

    List<Contradiction> contradictions() {
        return contradictions;
    }
}
