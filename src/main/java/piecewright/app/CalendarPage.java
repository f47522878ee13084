package piecewright.app;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import piecewright.calendar.CalendarChanges;
import piecewright.calendar.CalendarEvent;
import piecewright.publish.Conflict;
import piecewright.publish.PublishResult;
import piecewright.text.CalendarPhrases;

/** What calendars were told, in lines: "3 moved, 1 dropped, 1 new, 22 unchanged", then each from when to when. */
public final class CalendarPage {
    /** Judgement: more names than these help nobody. */
    private static final int NAMED = 5;

    private final Locale locale;

    public CalendarPage(Locale locale) {
        this.locale = locale;
    }

    public String written(CalendarUpdate update) {
        CalendarChanges changes = update.changes();
        String head = changes.isEmpty()
                ? CalendarPhrases.say("same", update.calendar())
                : CalendarPhrases.say("written", update.calendar(), counts(changes));
        return page(head, update);
    }

    /** The same before anything is written. */
    public String preview(CalendarUpdate update) {
        CalendarChanges changes = update.changes();
        String head = changes.isEmpty()
                ? CalendarPhrases.say("preview.same", update.calendar())
                : CalendarPhrases.say("preview", update.calendar(), counts(changes));
        return page(head, update);
    }

    /** Each change from when to when, without counts. */
    public String changed(CalendarUpdate update) {
        StringBuilder page = new StringBuilder();
        lines(update).forEach(line -> page.append(CalendarPhrases.paragraph("  ", line)));
        return page.toString();
    }

    /** How to use it: "file", "live". */
    public String how(String kind) {
        return "\n" + CalendarPhrases.paragraph("", CalendarPhrases.say(kind + ".how"));
    }

    /** How one publication went, and what was left alone. */
    public String published(CalendarUpdate update, PublishResult result) {
        String address = update.calendar();
        return CalendarPhrases.paragraph(
                        "",
                        result.match(
                                done -> counts(address, done),
                                offline -> CalendarPhrases.say("collection.offline", address, offline.reason()),
                                refused -> CalendarPhrases.say(
                                        "collection.refused." + refusal(refused.status()),
                                        address,
                                        Integer.toString(refused.status())),
                                other -> CalendarPhrases.say("collection.not-a-calendar", address)))
                + restored(update, result)
                + conflicts(update, result);
    }

    /** What was missing there, by name unless it was much. */
    private String restored(CalendarUpdate update, PublishResult result) {
        if (!(result instanceof PublishResult.Published done) || done.restored().size() > NAMED) return "";
        StringBuilder lines = new StringBuilder();
        for (CalendarEvent event : done.restored()) {
            String when = phrases(update).moment(event.span().startsAt());
            lines.append(CalendarPhrases.paragraph(
                    "  ", CalendarPhrases.say("collection.restored", event.summary(), when, event.key())));
        }
        return lines.toString();
    }

    /** What all calendars of a batch were told when its plan changed. */
    public String told(Keeping.Kept kept) {
        StringBuilder page = new StringBuilder();
        kept.calendar().ifPresent(update -> page.append(written(update)));
        kept.live().ifPresent(update -> page.append(written(update)));
        return page.append(others(kept.others())).toString();
    }

    /** The same where nobody types commands: a calendar that holds old times is named alone. */
    public String noted(Keeping.Kept kept) {
        OtherCalendars others = kept.others();
        List<OtherCalendars.Behind> named = others.behind().stream()
                .map(each -> new OtherCalendars.Behind(each.calendar(), ""))
                .toList();
        return told(new Keeping.Kept(kept.calendar(), kept.live(), new OtherCalendars(others.rewritten(), named)));
    }

    /** What became of the other calendars of a batch, and what is left to do about them. */
    public String others(OtherCalendars others) {
        StringBuilder page = new StringBuilder();
        for (Path file : others.rewritten()) {
            page.append(CalendarPhrases.paragraph("", CalendarPhrases.say("import-again", file.toString())));
        }
        for (OtherCalendars.Behind behind : others.behind()) {
            boolean typed = !behind.command().isEmpty();
            String key = typed ? "behind" : "behind.window";
            page.append(CalendarPhrases.paragraph("", CalendarPhrases.say(key, behind.calendar())));
            if (typed) page.append("  ").append(behind.command()).append('\n');
        }
        return page.toString();
    }

    public String nothingForgotten() {
        return CalendarPhrases.paragraph("", CalendarPhrases.say("collection.forgotten.none"));
    }

    /** What was let go without asking the server. */
    public String forgotten(CollectionCalendar.Forgotten forgotten) {
        return CalendarPhrases.paragraph(
                "",
                CalendarPhrases.say("collection.forgotten", forgotten.batch().toString(), forgotten.collection()));
    }

    private String conflicts(CalendarUpdate update, PublishResult result) {
        if (!(result instanceof PublishResult.Published published)) return "";
        StringBuilder lines = new StringBuilder();
        for (Conflict conflict : published.conflicts()) {
            lines.append(CalendarPhrases.paragraph("  ", conflict(update, conflict)));
        }
        return lines.toString();
    }

    private String conflict(CalendarUpdate update, Conflict conflict) {
        Optional<CalendarEvent> wanted = conflict.wanted();
        String kind = conflict.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        boolean dropped = wanted.isEmpty() && conflict.kind() == Conflict.Kind.EDITED;
        return CalendarPhrases.say(
                "conflict." + kind + (dropped ? ".dropped" : ""),
                wanted.map(CalendarEvent::summary).orElse(conflict.key()),
                wanted.map(event -> phrases(update).moment(event.span().startsAt()))
                        .orElse(""),
                conflict.key());
    }

    private static String counts(String address, PublishResult.Published done) {
        PublishResult.Counts counts = done.counts();
        return CalendarPhrases.say(
                done.restored().isEmpty() ? "collection.done" : "collection.done.restored",
                address,
                Integer.toString(counts.created()),
                Integer.toString(counts.updated()),
                Integer.toString(counts.removed()),
                Integer.toString(counts.unchanged()),
                Integer.toString(done.restored().size()));
    }

    private static String refusal(int status) {
        return switch (status) {
            case 401 -> "account";
            case 403, 405 -> "read-only";
            case 404, 410 -> "absent";
            case 507 -> "full";
            default -> "other";
        };
    }

    private String page(String head, CalendarUpdate update) {
        StringBuilder page = new StringBuilder(CalendarPhrases.paragraph("", head));
        lines(update).forEach(line -> page.append(CalendarPhrases.paragraph("  ", line)));
        update.leftOut().forEach(sentence -> page.append(CalendarPhrases.paragraph("  ", sentence)));
        return page.toString();
    }

    /** Each change from when to when; a calendar told for the first time has only news, and they are the plan. */
    private List<String> lines(CalendarUpdate update) {
        CalendarChanges changes = update.changes();
        CalendarPhrases phrases = phrases(update);
        List<Line> lines = new ArrayList<>();
        changes.moved().forEach(moved -> lines.add(new Line(moved.to().startsAt(), moved(phrases, moved))));
        for (CalendarChanges.Dropped gone : changes.dropped()) {
            Instant at = gone.span().startsAt();
            lines.add(new Line(at, phrases.dropped(gone.summary(), at)));
        }
        boolean first = changes.unchanged() + changes.reworded() + lines.size() == 0;
        if (first) return List.of();
        for (CalendarEvent fresh : changes.added()) {
            Instant at = fresh.span().startsAt();
            lines.add(new Line(at, phrases.added(fresh.summary(), at)));
        }
        return lines.stream()
                .sorted(Comparator.comparing(Line::at))
                .map(Line::words)
                .toList();
    }

    /** One change, and when what it is about will be or would have been. */
    private record Line(Instant at, String words) {}

    private static String moved(CalendarPhrases phrases, CalendarChanges.Moved moved) {
        Instant from = moved.from().startsAt();
        Instant to = moved.to().startsAt();
        String title = moved.event().summary();
        return from.equals(to)
                ? phrases.lasting(title, to, moved.from().endsAt(), moved.to().endsAt())
                : phrases.moved(title, from, to);
    }

    private CalendarPhrases phrases(CalendarUpdate update) {
        return new CalendarPhrases(update.zone(), locale);
    }

    private static String counts(CalendarChanges changes) {
        String moved = Integer.toString(changes.moved().size());
        String dropped = Integer.toString(changes.dropped().size());
        String added = Integer.toString(changes.added().size());
        String unchanged = Integer.toString(changes.unchanged());
        return changes.reworded() == 0
                ? CalendarPhrases.say("counts", moved, dropped, added, unchanged)
                : CalendarPhrases.say(
                        "counts.reworded", moved, dropped, added, Integer.toString(changes.reworded()), unchanged);
    }
}
