package piecewright.app;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.calendar.Done;
import piecewright.calendar.EventTexts;
import piecewright.plan.Act;
import piecewright.plan.Check;
import piecewright.plan.Phase;
import piecewright.plan.Plan;
import piecewright.text.DisplayUnits;
import piecewright.text.EntryTitles;
import piecewright.text.Wording;

/**
 * The words of calendar entries, in a person's units: first what to do and decide, then when it may be done, what to
 * find and what is dangerous. What a small screen has no room for stands on the sheet.
 */
public final class CalendarWords implements EventTexts {
    /** Judgement: a phone shows so much of an entry without being asked, characters. */
    static final int ROOM = 640;

    private final Wording wording;
    private final EntryTitles titles;
    private final DateTimeFormatter moment;

    public CalendarWords(DisplayUnits units, ZoneId zone) {
        this.wording = new Wording(units, zone);
        this.titles = new EntryTitles(units);
        this.moment = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", units.locale());
    }

    @Override
    public String actTitle(Plan.Subject subject, Act act) {
        return titles.toDo(act) + " – " + subject.title();
    }

    @Override
    public List<String> actLines(Plan.Subject subject, Act act, Optional<Instant> staysUntil) {
        List<String> first = new ArrayList<>();
        first.add(wording.whatToDo(act));
        first.add(wording.window(act));
        staysUntil.ifPresent(until -> first.add(wording.stay(act, until)));
        first.add(wording.expectation(act.expect()));
        List<String> inner = new ArrayList<>();
        act.inner().ifPresent(block -> inner.add(wording.innerHead(block)));
        inner.addAll(wording.innerRows(act));
        List<String> dangers =
                act.cautions().stream().map(wording::namedCaution).toList();
        List<String> named = act.cautions().isEmpty() ? List.of() : List.of(wording.cautionNames(act.cautions()));
        List<String> look = List.of(wording.lookFor(act));
        return fitting(List.of(
                lines(first, dangers, inner, look),
                lines(first, dangers, inner),
                lines(first, dangers, look),
                lines(first, dangers),
                lines(first, named, inner),
                lines(first, named, look),
                lines(first, named),
                lines(List.of(wording.firstSentence(first.get(0))), first.subList(1, first.size()), named)));
    }

    @SafeVarargs
    private static List<String> lines(List<String>... parts) {
        List<String> all = new ArrayList<>();
        for (List<String> part : parts) all.addAll(part);
        return all;
    }

    /** The first that a small screen has room for, else the last, which is the shortest. */
    private static List<String> fitting(List<List<String>> choices) {
        return choices.stream()
                .filter(lines -> String.join("\n", lines).length() <= ROOM)
                .findFirst()
                .orElse(choices.get(choices.size() - 1));
    }

    @Override
    public String doneTitle(Plan.Subject subject, Act act, Done done) {
        return titles.done(act, done.massKg(), done.grainC()) + " – " + subject.title();
    }

    @Override
    public List<String> doneLines(Plan.Subject subject, Act act, Done done) {
        List<String> lines = new ArrayList<>();
        lines.add(titles.doneAt(moment.format(done.at().atZone(subject.zone()))));
        if (done.massKg().isPresent()) lines.add(titles.foreseen(act));
        return lines;
    }

    @Override
    public String checkTitle(Plan.Subject subject, Check check) {
        return wording.checkTitle(check) + " – " + subject.title();
    }

    @Override
    public List<String> checkLines(Plan.Subject subject, Check check) {
        List<String> first = List.of(wording.checkToDo(check));
        List<String> entry = List.of(wording.checkEntry(check));
        return fitting(List.of(lines(first, List.of(wording.checkGain(check)), entry), lines(first, entry), first));
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
