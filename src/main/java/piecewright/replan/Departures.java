package piecewright.replan;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import piecewright.history.Account;
import piecewright.plan.Simulation.Course;
import piecewright.plan.Simulation.Read;
import piecewright.plan.Timetable.Visit;

/** How far each entry of a journal departs from its plan, as hours of an act. Scratch space of one comparison. */
final class Departures {
    /** Judgement: less than a quarter of an hour moves nothing. */
    private static final double LEAST_HOURS = 0.25;
    /** Judgement: a point of moisture is worth as much as two hours. */
    private static final double HOURS_PER_POINT = 2;
    /** Judgement: a tenth of acrospire is worth as much as ten hours, about its time to grow. */
    private static final double HOURS_PER_TENTH = 10;

    private final Batch batch;
    private final Account account;
    private final Map<Integer, Double> byEntryHours = new HashMap<>();

    Departures(Batch batch, Account account) {
        this.batch = batch;
        this.account = account;
        Map<String, Visit> planned = new HashMap<>();
        for (Visit visit : batch.planned()) planned.put(visit.id(), visit);
        for (Visit visit : account.visits()) {
            Integer entry = account.entryByAct().get(visit.id());
            if (entry == null) continue;
            Visit plan = planned.get(visit.id());
            note(
                    entry,
                    plan == null
                            ? 1
                            : Duration.between(plan.at(), visit.at()).abs().toMinutes() / 60.0);
        }
        account.found()
                .coldSpells()
                .forEach(spell -> account.signs().stream()
                        .filter(sign -> sign.at().equals(spell.from()))
                        .forEach(sign -> note(
                                sign.number(),
                                Duration.between(spell.from(), spell.until()).toMinutes() / 60.0)));
    }

    /** Takes in how far readings lie from what was forecast. */
    void readings(Course course) {
        List<Read> reads = course.reads();
        for (int i = 0; i < Math.min(reads.size(), account.entryByReading().size()); i++) {
            Read read = reads.get(i);
            double points = 100
                    * Math.abs(read.held().mass().moisture().wetBasisFraction()
                            - read.forecast().mass().moisture().wetBasisFraction());
            double tenths = 10
                    * Math.abs(read.held().growth().growthRatio()
                            - read.forecast().growth().growthRatio());
            note(account.entryByReading().get(i), HOURS_PER_POINT * points + HOURS_PER_TENTH * tenths);
        }
    }

    private void note(int entry, double hours) {
        if (entry > batch.known()) byEntryHours.merge(entry, hours, Math::max);
    }

    /** The entry that departs most, if by so many hours or more; the later of two equal ones. */
    Optional<Integer> largestOver(double hours) {
        return byEntryHours.entrySet().stream()
                .filter(each -> each.getValue() >= Math.max(LEAST_HOURS, hours))
                .max(Map.Entry.<Integer, Double>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey);
    }
}
