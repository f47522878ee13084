package piecewright.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Agenda;
import piecewright.plan.Check;
import piecewright.plan.Phase;
import piecewright.plan.PhaseKind;
import piecewright.plan.Plan;

/** Turns a plan into events: each act hands-on with its alarms, each attended phase busy, other phases free if wanted. */
public final class PlanEvents {
    private final EventTexts texts;
    private final ExportOptions options;

    public PlanEvents(EventTexts texts, ExportOptions options) {
        this.texts = texts;
        this.options = options;
    }

    /** The events of this agenda under the batch's identity, with nothing done and nobody's hours known. */
    public BatchEvents of(UUID batch, Agenda agenda) {
        return of(batch, agenda, Circumstances.unknown());
    }

    /** The events of this agenda under the batch's identity, checks and acts first, each in time order. */
    public BatchEvents of(UUID batch, Agenda agenda, Circumstances now) {
        AlarmHours hours = new AlarmHours(now.house(), options.quietHours());
        List<CalendarEvent> events = new ArrayList<>();
        for (Check check : agenda.checks()) events.add(event(agenda.subject(), check, hours));
        for (Act act : agenda.acts()) {
            Done done = now.done().get(act.id());
            events.add(done == null ? event(agenda, act, hours) : event(agenda.subject(), act, done));
        }
        boolean all = options.phases() == ExportOptions.PassivePhases.SHOWN;
        for (Phase phase : new PhasesSoFar(agenda, now.done()).phases()) {
            if (all || phase.attended()) events.add(event(agenda.subject(), phase));
        }
        return new BatchEvents(batch, end(agenda), events);
    }

    private CalendarEvent event(Plan.Subject subject, Check check, AlarmHours hours) {
        Span span = Span.atLeast(CalendarEvent.SHORTEST, check.startsAt(), check.endsAt());
        return new CalendarEvent(
                check.id(),
                span,
                texts.checkTitle(subject, check),
                description(span, subject.zone(), texts.checkLines(subject, check)),
                Attention.HANDS_ON,
                new CssColour("goldenrod"),
                hours.of(span.startsAt(), options.alarms(), subject.zone()));
    }

    /** Done is done: where it was done, with what was found, and it rings no more. */
    private CalendarEvent event(Plan.Subject subject, Act act, Done done) {
        Span span = Span.atLeast(CalendarEvent.SHORTEST, done.at(), done.at().plus(act.work()));
        return new CalendarEvent(
                act.id(),
                span,
                texts.doneTitle(subject, act, done),
                description(span, subject.zone(), texts.doneLines(subject, act, done)),
                Attention.HANDS_ON,
                colour(act.kind()),
                List.of());
    }

    private CalendarEvent event(Agenda agenda, Act act, AlarmHours hours) {
        Plan.Subject subject = agenda.subject();
        Span span = Span.atLeast(CalendarEvent.SHORTEST, act.startsAt(), act.endsAt());
        ZoneId zone = subject.zone();
        return new CalendarEvent(
                act.id(),
                span,
                texts.actTitle(subject, act),
                description(span, zone, texts.actLines(subject, act, agenda.staysUntil(act))),
                Attention.HANDS_ON,
                colour(act.kind()),
                hours.of(span.startsAt(), options.alarms(), zone));
    }

    private CalendarEvent event(Plan.Subject subject, Phase phase) {
        Span span = Span.atLeast(CalendarEvent.SHORTEST, phase.from(), phase.until());
        return new CalendarEvent(
                "phase." + phase.id(),
                span,
                texts.phaseTitle(subject, phase),
                description(span, subject.zone(), texts.phaseLines(subject, phase)),
                phase.attended() ? Attention.STAYING : Attention.PASSIVE,
                colour(phase.kind()),
                List.of());
    }

    /** What decides comes first; local time last, and only where the clocks change around it. */
    private String description(Span span, ZoneId zone, List<String> lines) {
        List<String> all = new ArrayList<>(lines);
        if (clocksChange(span, zone)) {
            all.add(local(span.startsAt(), zone) + " – " + local(span.endsAt(), zone));
        }
        return String.join("\n", all);
    }

    /** Whether the clocks change on a day it touches, so that a time alone might be taken for another. */
    private static boolean clocksChange(Span span, ZoneId zone) {
        Instant from =
                LocalDate.ofInstant(span.startsAt(), zone).atStartOfDay(zone).toInstant();
        Instant until = LocalDate.ofInstant(span.endsAt(), zone)
                .plusDays(1)
                .atStartOfDay(zone)
                .toInstant();
        ZoneOffsetTransition change = zone.getRules().nextTransition(from.minusNanos(1));
        return change != null && change.getInstant().isBefore(until);
    }

    /** Local time with its offset, so that both halves of a repeated hour read differently. */
    private String local(Instant at, ZoneId zone) {
        ZonedDateTime there = at.atZone(zone);
        return texts.moment(there) + " (" + offset(there.getOffset().getTotalSeconds()) + ")";
    }

    private static String offset(int seconds) {
        if (seconds == 0) return "UTC";
        int minutes = Math.abs(seconds) / 60;
        String rest = minutes % 60 == 0 ? "" : (minutes % 60 < 10 ? ":0" : ":") + minutes % 60;
        return "UTC" + (seconds < 0 ? "-" : "+") + minutes / 60 + rest;
    }

    private static Instant end(Agenda agenda) {
        Instant end = agenda.subject().readyAt();
        for (Act act : agenda.acts()) end = act.endsAt().isAfter(end) ? act.endsAt() : end;
        for (Phase phase : agenda.phases()) end = phase.until().isAfter(end) ? phase.until() : end;
        return end;
    }

    private static CssColour colour(ActKind kind) {
        return new CssColour(
                switch (kind) {
                    case SOAK, DRAIN -> "steelblue";
                    case HEAP, LOOK, FLOOR, TURN, SPRINKLE, WITHER -> "seagreen";
                    case PACK, CHECK, BREAK -> "chocolate";
                    case STEW, LOAD, STIR, RAISE, LOWER, CURE, OFF, ROAST -> "firebrick";
                    case DEROOT -> "peru";
                });
    }

    private static CssColour colour(PhaseKind kind) {
        return new CssColour(
                switch (kind) {
                    case IMMERSION, AIR_REST -> "lightsteelblue";
                    case WET_COUCHING, GROWTH, WITHERING -> "darkseagreen";
                    case COUCHING, COOLING -> "burlywood";
                    case DRYING, CURING -> "lightcoral";
                    case STORED, RESTING -> "tan";
                });
    }
}
