package piecewright.app;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.calendar.EventTexts;
import piecewright.plan.Act;
import piecewright.plan.Check;
import piecewright.plan.Phase;
import piecewright.plan.Plan;
import piecewright.text.DisplayUnits;
import piecewright.text.Wording;

/** The words of calendar entries, in a person's units: first what decides, last why. */
public final class CalendarWords implements EventTexts {
    private final Wording wording;
    private final DateTimeFormatter moment;

    public CalendarWords(DisplayUnits units, ZoneId zone) {
        this.wording = new Wording(units, zone);
        this.moment = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", units.locale());
    }

    @Override
    public String actTitle(Plan.Subject subject, Act act) {
        return wording.actTitle(act) + " – " + subject.title();
    }

    @Override
    public List<String> actLines(Plan.Subject subject, Act act, Optional<Instant> staysUntil) {
        List<String> lines = new ArrayList<>();
        staysUntil.ifPresent(until -> lines.add(wording.stay(act, until)));
        lines.add(wording.window(act));
        lines.add(wording.expectation(act.expect()));
        lines.add(wording.whatToDo(act));
        act.inner().ifPresent(inner -> lines.add(wording.innerHead(inner)));
        lines.addAll(wording.innerRows(act));
        act.cautions().forEach(caution -> lines.add(wording.namedCaution(caution)));
        lines.add(wording.lookFor(act));
        lines.add(wording.why(act));
        return lines;
    }

    @Override
    public String checkTitle(Plan.Subject subject, Check check) {
        return wording.checkTitle(check) + " – " + subject.title();
    }

    @Override
    public List<String> checkLines(Plan.Subject subject, Check check) {
        return List.of(wording.checkToDo(check), wording.checkGain(check), wording.checkEntry(check));
    }

    @Override
    public String phaseTitle(Plan.Subject subject, Phase phase) {
        String title = phase.attended() ? wording.stayTitle(phase.kind()) : wording.phaseTitle(phase.kind());
        return title + " – " + subject.title();
    }

    @Override
    public List<String> phaseLines(Plan.Subject subject, Phase phase) {
        return phase.attended() ? List.of(wording.mayNotBeLeft(), wording.phase(phase)) : List.of(wording.phase(phase));
    }

    @Override
    public String moment(ZonedDateTime at) {
        return moment.format(at);
    }
}
