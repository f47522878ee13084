package piecewright.calendar;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import piecewright.plan.Act;
import piecewright.plan.Agenda;
import piecewright.plan.Phase;
import piecewright.plan.PhaseKind;

/** Phases of a plan where acts that were done began and ended them; the others where the plan has them. */
final class PhasesSoFar {
    private final Agenda agenda;
    private final Map<String, Done> done;

    PhasesSoFar(Agenda agenda, Map<String, Done> done) {
        this.agenda = agenda;
        this.done = done;
    }

    List<Phase> phases() {
        Map<Instant, Instant> was = new HashMap<>();
        for (Act act : agenda.acts()) {
            Done at = done.get(act.id());
            if (at != null) was.putIfAbsent(act.startsAt(), at.at());
        }
        List<Phase> phases = new ArrayList<>();
        for (Phase phase : agenda.phases()) {
            Instant from = was.getOrDefault(phase.from(), phase.from());
            Instant until = was.getOrDefault(phase.until(), phase.until());
            if (from.isBefore(until)) add(phase.between(from, until), phases);
        }
        return phases;
    }

    /** Rest is one stretch, whatever is done to the malt in between. */
    private static void add(Phase phase, List<Phase> phases) {
        int last = phases.size() - 1;
        boolean goesOn = phase.kind() == PhaseKind.RESTING
                && last >= 0
                && phases.get(last).kind() == PhaseKind.RESTING
                && phases.get(last).until().equals(phase.from());
        if (goesOn) phases.set(last, phases.get(last).between(phases.get(last).from(), phase.until()));
        else phases.add(phase);
    }
}
