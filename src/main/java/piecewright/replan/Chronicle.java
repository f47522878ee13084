package piecewright.replan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import piecewright.journal.Entry;
import piecewright.journal.Report;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.HeatSet;
import piecewright.journal.Report.Measured;
import piecewright.journal.Report.Observed;
import piecewright.journal.Report.Started;
import piecewright.journal.Report.Tare;
import piecewright.journal.Report.Weighed;
import piecewright.journal.Sign;
import piecewright.plan.ActKind;
import piecewright.plan.Found;
import piecewright.plan.Found.ColdSpell;
import piecewright.plan.Reading;
import piecewright.plan.Timetable.Visit;

/**
 * Reads a journal beside a plan: which act each entry tells of, which must have been done though nobody wrote it down,
 * which entries cannot be true. Scratch space of one reading.
 */
final class Chronicle {
    private final Batch batch;
    private final Instant now;
    private final DoneActs done;
    private final Weights weights;
    private final List<Reading> readings = new ArrayList<>();
    private final List<Integer> entryByReading = new ArrayList<>();
    private final Map<String, Double> sprinkledKg = new HashMap<>();
    private final List<Question> questions = new ArrayList<>();
    private final List<Entry> signs = new ArrayList<>();
    private final List<ColdSpell> coldSpells = new ArrayList<>();
    private Optional<Instant> coldSince = Optional.empty();

    private Chronicle(Batch batch, List<Tare> vessels, Instant now) {
        this.batch = batch;
        this.now = now;
        this.done = new DoneActs(batch.request().style(), batch.planned());
        this.weights = new Weights(batch.dryKg(), vessels);
    }

    /** What happened until now. Entries of one instant count as written down: measured before the act that ends. */
    static Happened of(Batch batch, List<Tare> vessels, Instant now) {
        Chronicle chronicle = new Chronicle(batch, vessels, now);
        List<Entry> entries = new ArrayList<>(batch.journal().effectiveUntil(now));
        entries.sort(
                Comparator.comparing(Entry::at).thenComparing(entry -> entry.report() instanceof Measured ? 0 : 1));
        entries.forEach(chronicle::take);
        return chronicle.happened();
    }

    private void take(Entry entry) {
        Report report = entry.report();
        if (report instanceof Did did) act(entry, did.act(), did.waterL().orElse(0));
        else if (report instanceof Started started) act(entry, started.act(), 0);
        else if (report instanceof HeatSet heat) done.actOf(heat).ifPresent(act -> act(entry, act, 0));
        else if (report instanceof Measured measured) measured(entry, measured);
        else if (report instanceof Observed observed) observed(entry, observed);
    }

    private void act(Entry entry, ActKind kind, double waterL) {
        Optional<Visit> before = done.add(entry, kind);
        if (before.isPresent()) {
            questions.add(new Question.OutOfOrder(
                    entry.number(), entry.at(), kind, before.get().id()));
            return;
        }
        if (kind == ActKind.SOAK) weights.soaked();
        if (kind == ActKind.TURN || kind == ActKind.SPRINKLE) {
            String id = done.lastId();
            sprinkledKg.merge(id, kind == ActKind.SPRINKLE ? waterL : 0, Double::sum);
            weights.sprinkled(waterL);
        }
    }

    private void measured(Entry entry, Measured measured) {
        if (done.isEmpty()) return;
        if (measured instanceof Weighed weighed) {
            Optional<Question> question = weights.against(entry, weighed);
            if (question.isPresent()) {
                questions.add(question.get());
                return;
            }
        }
        (done.couched() ? Readings.ofCouch(entry, measured) : Readings.of(entry, measured)).ifPresent(reading -> {
            readings.add(reading);
            entryByReading.add(entry.number());
        });
    }

    private void observed(Entry entry, Observed observed) {
        signs.add(entry);
        if (observed.sign() == Sign.POWER_OUT && coldSince.isEmpty()) coldSince = Optional.of(entry.at());
        if (observed.sign() == Sign.POWER_BACK && coldSince.isPresent()) {
            cold(coldSince.get(), entry.at(), entry.number());
            coldSince = Optional.empty();
        }
    }

    private void cold(Instant from, Instant until, int entry) {
        if (!from.isBefore(until)) return;
        coldSpells.add(new ColdSpell(from, until));
        readings.add(Reading.nothing(until));
        entryByReading.add(entry);
    }

    private Happened happened() {
        coldSince.ifPresent(
                since -> cold(since, now, signs.get(signs.size() - 1).number()));
        List<Visit> visits = done.visits();
        Map<String, Integer> entryByAct = done.entryByAct();
        return new Happened(
                visits,
                entryByAct,
                done.assumed(),
                new Found(readings, sprinkledKg, coldSpells),
                entryByReading,
                questions,
                signs);
    }

    /** Whether two instants are so close that they tell of one act. */
    static boolean close(Instant one, Instant other, Duration within) {
        return Duration.between(one, other).abs().compareTo(within) <= 0;
    }
}
