package piecewright.learn;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import piecewright.history.Account;
import piecewright.history.Measurement;
import piecewright.house.Scale;
import piecewright.journal.Entry;
import piecewright.journal.Report;
import piecewright.plan.Setup;
import piecewright.plan.Timetable.Visit;

/** What happened to a batch as its run: what was really done, when, and what was observed of it. Pure. */
public final class Retold {
    private final Doings doings;
    private final Readings readings;
    private final List<Observation> observations = new ArrayList<>();

    private Retold(Setup setup, String lot, Scale scale, Instant origin) {
        FittedStages stages = new FittedStages(setup, lot);
        this.doings = new Doings(stages, origin);
        this.readings = new Readings(scale, setup);
    }

    /**
     * The batch until an instant; empty when nothing was soaked until then.
     *
     * @param setup what the plan assumes; its air begins at origin
     * @param lot name of the lot the unknowns belong to
     * @param account what happened
     */
    public static Optional<Rerun> of(Setup setup, String lot, Scale scale, Account account, Until horizon) {
        Retold retold = new Retold(setup, lot, scale, horizon.origin());
        List<Event> events = new ArrayList<>();
        for (Measurement found : account.measurements()) {
            events.add(new Event(found.at(), () -> retold.measured(found, horizon.until())));
        }
        for (Account.Done done : account.acts()) {
            Visit visit = done.visit();
            events.add(new Event(visit.at(), () -> retold.doings.act(visit.kind(), visit.at(), done.waterKg())));
        }
        account.settings().forEach(entry -> events.add(new Event(entry.at(), () -> retold.set(entry))));
        account.signs().forEach(entry -> events.add(new Event(entry.at(), () -> retold.seen(entry))));
        events.stream()
                .filter(event -> !event.at().isAfter(horizon.until()))
                .sorted(Comparator.comparing(Event::at))
                .forEach(event -> event.told().run());
        return retold.doings
                .finished(horizon.until())
                .map(stretches -> new Rerun(horizon.origin(), retold.doings.raw(), stretches, retold.observations));
    }

    /** Zero of the hours of the setup's air, and the end of what is told. */
    public record Until(Instant origin, Instant until) {}

    /** One thing of the account; of one instant what was measured comes before acts, and dials after them. */
    private record Event(Instant at, Runnable told) {}

    private void set(Entry entry) {
        if (entry.report() instanceof Report.HeatSet set) doings.dialled(set.airOnC(), entry.at());
        if (entry.report() instanceof Report.VentsSet vents) doings.vented(vents.openFraction(), entry.at());
    }

    private void seen(Entry entry) {
        if (entry.report() instanceof Report.Observed observed) doings.sign(observed.sign(), entry.at());
    }

    private void measured(Measurement found, Instant until) {
        if (!doings.begun()) return;
        Instant at = doings.actsAt(found.at()) ? found.at().plus(Duration.ofSeconds(1)) : found.at();
        if (at.isAfter(until)) return;
        readings.of("" + found.entry().number(), at, found.found(), found.keeping())
                .ifPresent(observations::add);
    }
}
