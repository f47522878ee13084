package piecewright.calendar;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Phase;
import piecewright.plan.PhaseKind;
import piecewright.plan.Plan;

/** Turns a plan into events: each act hands-on with its alarms, each passive phase free time if wanted. */
public final class PlanEvents {
    private final EventTexts texts;
    private final ExportOptions options;

    public PlanEvents(EventTexts texts, ExportOptions options) {
        this.texts = texts;
        this.options = options;
    }

    /** The events of this plan under the batch's identity, acts first, both in time order. */
    public BatchEvents of(UUID batch, Plan plan) {
        List<CalendarEvent> events = new ArrayList<>();
        for (Act act : plan.acts()) events.add(event(plan, act));
        if (options.phases() == ExportOptions.PassivePhases.SHOWN) {
            for (Phase phase : plan.phases()) events.add(event(plan, phase));
        }
        return new BatchEvents(batch, end(plan), events);
    }

    private CalendarEvent event(Plan plan, Act act) {
        Span span = Span.atLeast(CalendarEvent.SHORTEST, act.startsAt(), act.endsAt());
        ZoneId zone = plan.subject().zone();
        List<Duration> alarms = options.quietHours()
                .map(quiet -> quiet.spare(span.startsAt(), options.alarms(), zone))
                .orElse(options.alarms());
        return new CalendarEvent(
                act.id(),
                span,
                texts.actTitle(plan, act),
                description(span, zone, texts.actLines(plan, act)),
                Attention.HANDS_ON,
                colour(act.kind()),
                alarms);
    }

    private CalendarEvent event(Plan plan, Phase phase) {
        Span span = Span.atLeast(CalendarEvent.SHORTEST, phase.from(), phase.until());
        return new CalendarEvent(
                "phase." + phase.id(),
                span,
                texts.phaseTitle(plan, phase),
                description(span, plan.subject().zone(), texts.phaseLines(plan, phase)),
                Attention.PASSIVE,
                colour(phase.kind()),
                List.of());
    }

    private String description(Span span, ZoneId zone, List<String> lines) {
        List<String> all = new ArrayList<>();
        all.add(local(span.startsAt(), zone) + " – " + local(span.endsAt(), zone));
        all.addAll(lines);
        return String.join("\n", all);
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

    private static Instant end(Plan plan) {
        Instant end = plan.subject().readyAt();
        for (Act act : plan.acts()) end = act.endsAt().isAfter(end) ? act.endsAt() : end;
        for (Phase phase : plan.phases()) end = phase.until().isAfter(end) ? phase.until() : end;
        return end;
    }

    private static CssColour colour(ActKind kind) {
        return new CssColour(
                switch (kind) {
                    case SOAK, DRAIN -> "steelblue";
                    case FLOOR, TURN, SPRINKLE, WITHER -> "seagreen";
                    case PACK, CHECK, BREAK -> "chocolate";
                    case LOAD, STIR, RAISE, CURE, OFF -> "firebrick";
                    case DEROOT -> "peru";
                });
    }

    private static CssColour colour(PhaseKind kind) {
        return new CssColour(
                switch (kind) {
                    case IMMERSION, AIR_REST -> "lightsteelblue";
                    case GROWTH, WITHERING -> "darkseagreen";
                    case COUCHING, COOLING -> "burlywood";
                    case DRYING, CURING -> "lightcoral";
                    case RESTING -> "tan";
                });
    }
}
