package piecewright.calendar;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Agenda;
import piecewright.plan.Bill;
import piecewright.plan.Caution;
import piecewright.plan.Check;
import piecewright.plan.Expectation;
import piecewright.plan.Phase;
import piecewright.plan.PhaseKind;
import piecewright.plan.Plan;
import piecewright.plan.Setting;
import piecewright.plan.Window;
import piecewright.process.Ledgers;
import piecewright.process.PieceState;
import piecewright.quantity.Moisture;

/** A small invented plan: soak, drain, floor, some turnings, kiln, off, deroot. Figures carry no meaning. */
public record PlanFixture(Instant start, ZoneId zone, Duration soak, int turns) {
    public static final UUID BATCH = UUID.fromString("0f0f3f5e-0b0e-4c1a-8b63-5a7e8d3c0a02");
    public static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    public static final Instant NOW = Instant.parse("2031-03-01T08:00:00Z");
    public static final EventTexts TEXTS = new FixtureTexts();

    /** Begins on the eve of a night when the clocks go forward: 2031-03-30 in Berlin. */
    public static PlanFixture usual() {
        return new PlanFixture(Instant.parse("2031-03-29T19:00:00Z"), BERLIN, Duration.ofHours(8), 6);
    }

    public PlanFixture withSoak(Duration changed) {
        return new PlanFixture(start, zone, changed, turns);
    }

    public PlanFixture withTurns(int changed) {
        return new PlanFixture(start, zone, soak, changed);
    }

    public PlanFixture startingAt(Instant changed) {
        return new PlanFixture(changed, zone, soak, turns);
    }

    public BatchEvents events() {
        return events(BATCH);
    }

    public BatchEvents events(UUID batch) {
        return new PlanEvents(TEXTS, ExportOptions.usual()).of(batch, Agenda.of(plan()));
    }

    /** The events as a first export at {@link #NOW} dates them. */
    public List<DatedEvent> dated() {
        return Ledger.startedFor(BATCH).next(events(), NOW).confirmed();
    }

    public Plan plan() {
        List<Act> acts = new ArrayList<>();
        List<Phase> phases = new ArrayList<>();
        Instant drain = start.plus(soak);
        Instant floor = start.plus(Duration.ofHours(36)); // there is slack: a longer soak moves the drain alone
        Instant load = floor.plus(Duration.ofHours(8L * (turns + 1)));
        Instant off = load.plus(Duration.ofHours(24));
        Instant ready = off.plus(Duration.ofDays(14));
        acts.add(act("steep-1.soak", ActKind.SOAK, start));
        phases.add(phase("steep-1", PhaseKind.IMMERSION, start, drain));
        acts.add(act("steep-1.drain", ActKind.DRAIN, drain));
        phases.add(phase("rest-1", PhaseKind.AIR_REST, drain, floor));
        acts.add(act("floor", ActKind.FLOOR, floor));
        for (int turn = 1; turn <= turns; turn++) {
            acts.add(act("floor.turn-" + turn, ActKind.TURN, floor.plus(Duration.ofHours(8L * turn))));
        }
        phases.add(phase("growth", PhaseKind.GROWTH, floor, load));
        acts.add(act("kiln.load", ActKind.LOAD, load));
        phases.add(phase("drying", PhaseKind.DRYING, load, off));
        acts.add(act("kiln.off", ActKind.OFF, off));
        acts.add(act("deroot", ActKind.DEROOT, off.plus(Duration.ofHours(1))));
        phases.add(phase("resting", PhaseKind.RESTING, off, ready));
        Plan.Subject subject = new Plan.Subject("pale", "Pale malt", "lot 7", zone, ready);
        return new Plan(subject, outcome(), acts, phases, List.of(), List.of(), Bill.empty());
    }

    private static Act act(String id, ActKind kind, Instant at) {
        Window window = new Window(at, at.plus(Duration.ofHours(1)), at.plus(Duration.ofHours(2)));
        Expectation expect = new Expectation(6, Moisture.ofWetBasisPercent(40), 15, OptionalDouble.empty());
        return new Act(
                id, kind, at, Duration.ofMinutes(30), window, Setting.at("tub"), expect, List.of(Caution.LIFTING));
    }

    private static Phase phase(String id, PhaseKind kind, Instant from, Instant until) {
        Moisture moisture = Moisture.ofWetBasisPercent(40);
        return new Phase(id, kind, from, until, "cellar", moisture, moisture);
    }

    private static Plan.Outcome outcome() {
        Moisture dry = Moisture.ofWetBasisPercent(4);
        PieceState finished = PieceState.rawGrain(4, dry, 0, 3, 15);
        return new Plan.Outcome(5, 4, 4, dry, finished, Ledgers.empty());
    }

    private static final class FixtureTexts implements EventTexts {
        @Override
        public String actTitle(Plan.Subject subject, Act act) {
            return act.kind() == ActKind.DRAIN ? "Drain, rinse, weigh" : "Act: " + act.id();
        }

        @Override
        public List<String> actLines(Plan.Subject subject, Act act, Optional<Instant> staysUntil) {
            return List.of("Water 15 °C; weight 6.0 kg, ±50 g", "Smell: cucumber – „süß“ \\ " + act.kind());
        }

        @Override
        public String doneTitle(Plan.Subject subject, Act act, Done done) {
            return "✓ " + actTitle(subject, act);
        }

        @Override
        public List<String> doneLines(Plan.Subject subject, Act act, Done done) {
            return List.of("Done");
        }

        @Override
        public String checkTitle(Plan.Subject subject, Check check) {
            return "Check: " + check.id();
        }

        @Override
        public List<String> checkLines(Plan.Subject subject, Check check) {
            return List.of("Of " + check.about());
        }

        @Override
        public String phaseTitle(Plan.Subject subject, Phase phase) {
            return "Grain: " + phase.id();
        }

        @Override
        public List<String> phaseLines(Plan.Subject subject, Phase phase) {
            return List.of("In the " + phase.place());
        }
    }
}
