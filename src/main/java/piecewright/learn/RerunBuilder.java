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

/** Runs a batch again as its account says it was: its stretches, and what was observed of it. Pure. */
public final class RerunBuilder {
    /** What is read at the moment of an act but written down after it counts as read just after it. */
    private static final Duration JUST_AFTER = Duration.ofSeconds(1);

    private final Account account;
    private final StretchBuilder stretches;
    private final Readings readings;
    private final List<Observation> observations = new ArrayList<>();

    private RerunBuilder(Setup setup, String lot, Scale scale, Account account, Instant origin) {
        this.account = account;
        this.stretches = new StretchBuilder(new FittedStages(setup, lot), origin, account.visits());
        this.readings = new Readings(scale, setup);
    }

    /**
     * The run up to an instant; empty when nothing was soaked.
     *
     * @param setup what the plan assumes; its air begins at origin
     * @param lot name of the lot the unknowns belong to
     */
    public static Optional<Rerun> of(Setup setup, String lot, Scale scale, Account account, Horizon horizon) {
        RerunBuilder builder = new RerunBuilder(setup, lot, scale, account, horizon.origin());
        builder.events().stream()
                .filter(event -> !event.at().isAfter(horizon.until()))
                .sorted(Comparator.comparing(Event::at))
                .forEach(event -> event.told().run());
        account.measurements().forEach(found -> builder.measured(found, horizon.until()));
        return builder.stretches
                .finished(horizon.until())
                .map(done ->
                        new Rerun(horizon.origin(), builder.stretches.raw(), done, List.copyOf(builder.observations)));
    }

    /** Zero of the hours of the setup's air, and the end of what is told. */
    public record Horizon(Instant origin, Instant until) {}

    /** One thing of the account; of one instant acts come before dials. */
    private record Event(Instant at, Runnable told) {}

    private List<Event> events() {
        List<Event> events = new ArrayList<>();
        for (Account.Done done : account.acts()) {
            events.add(new Event(done.visit().at(), () -> stretches.act(done.visit(), done.waterKg())));
        }
        account.settings().forEach(entry -> events.add(new Event(entry.at(), () -> set(entry))));
        account.signs().forEach(entry -> events.add(new Event(entry.at(), () -> seen(entry))));
        return events;
    }

    private void set(Entry entry) {
        if (entry.report() instanceof Report.HeatSet set) stretches.dialled(set.airOnC(), entry.at());
        if (entry.report() instanceof Report.VentsSet vents) stretches.vented(vents.openFraction(), entry.at());
    }

    private void seen(Entry entry) {
        if (entry.report() instanceof Report.Observed observed) stretches.sign(observed.sign(), entry.at());
    }

    private void measured(Measurement found, Instant until) {
        Instant at = afterAnAct(found) ? found.at().plus(JUST_AFTER) : found.at();
        if (at.isAfter(until)) return;
        readings.of("" + found.entry().number(), at, found.found(), found.keeping())
                .ifPresent(observations::add);
    }

    private boolean afterAnAct(Measurement found) {
        return account.acts().stream()
                .anyMatch(done -> done.visit().at().equals(found.at())
                        && StretchBuilder.changesAtOnce(done.visit().kind())
                        && done.entry()
                                .filter(entry -> entry < found.entry().number())
                                .isPresent());
    }
}
