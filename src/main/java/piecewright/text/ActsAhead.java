package piecewright.text;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import piecewright.plan.Act;
import piecewright.plan.Check;
import piecewright.text.Columns.Side;

/**
 * What is to do in several batches, as one list in time order.
 *
 * @param next the first after them, where there are none
 * @param unread a sentence for each batch of which nothing can be said
 */
public record ActsAhead(ZoneId zone, Instant now, List<Ahead> acts, Optional<Ahead> next, List<String> unread) {
    /** Judgement: nobody waits so long for the next step of a batch under way; the clock may be wrong. */
    private static final Duration LONG_AHEAD = Duration.ofDays(180);

    public ActsAhead {
        Objects.requireNonNull(zone);
        Objects.requireNonNull(now);
        Objects.requireNonNull(next);
        acts = List.copyOf(acts);
        unread = List.copyOf(unread);
    }

    /** One thing to do. */
    public sealed interface Ahead {
        /** What the batch is called. */
        String batch();

        Instant startsAt();

        Duration work();

        /** Lasting name within its batch. */
        String id();

        String title();

        /** Until when whoever begins it must stay near; empty where they may go when it is done. */
        Optional<Instant> staysUntil();

        /** An act of the piece. */
        record ToDo(String batch, Act act, Optional<Instant> staysUntil) implements Ahead {
            @Override
            public Instant startsAt() {
                return act.startsAt();
            }

            @Override
            public Duration work() {
                return act.work();
            }

            @Override
            public String id() {
                return act.id();
            }

            @Override
            public String title() {
                return ActNames.title(act.kind(), act.id());
            }
        }

        /** A test before its first act. */
        record ToCheck(String batch, Check check) implements Ahead {
            @Override
            public Instant startsAt() {
                return check.startsAt();
            }

            @Override
            public Duration work() {
                return check.work();
            }

            @Override
            public String id() {
                return check.id();
            }

            @Override
            public String title() {
                return CheckWords.title(check);
            }

            @Override
            public Optional<Instant> staysUntil() {
                return Optional.empty();
            }
        }
    }

    /** A page with a table for each day; lines end with LF. */
    public String page(DisplayUnits units) {
        String acts = this.acts.isEmpty() ? Paragraph.of("", nothing(units)) : table(units);
        if (unread.isEmpty()) return acts;
        StringBuilder page = new StringBuilder(acts).append('\n');
        page.append(Paragraph.of("", Phrases.say("ahead.unread")));
        unread.forEach(sentence -> page.append(Paragraph.of("  ", sentence)));
        return page.toString();
    }

    private String nothing(DisplayUnits units) {
        String nothing = Phrases.say("ahead.nothing");
        if (next.isEmpty()) return nothing;
        MomentFormat moments = new MomentFormat(zone, units.locale());
        Ahead one = next.get();
        boolean far = Duration.between(now, one.startsAt()).compareTo(LONG_AHEAD) > 0;
        return nothing + " "
                + Phrases.say("ahead.next", one.title(), one.batch(), moments.dated(one.startsAt()))
                + (far ? " " + Phrases.say("ahead.far") : "");
    }

    /** Whether it should have been done before. */
    public boolean isOverdue(Ahead act) {
        return act.startsAt().plus(act.work()).isBefore(now);
    }

    private String table(DisplayUnits units) {
        MomentFormat moments = new MomentFormat(zone, units.locale());
        Columns table = new Columns(List.of(
                ActPages.column("start", Side.LEFT),
                ActPages.column("minutes", Side.RIGHT),
                ActPages.column("act", Side.LEFT),
                ActPages.column("batch", Side.LEFT)));
        for (Ahead act : acts) {
            String minutes = Long.toString(act.work().toMinutes());
            table.add(moments.clock(act.startsAt()), minutes, title(act, moments), act.batch());
        }
        StringBuilder page = new StringBuilder();
        var days = acts.stream()
                .collect(Collectors.groupingBy(
                        act -> LocalDate.ofInstant(act.startsAt(), zone), TreeMap::new, Collectors.counting()));
        int row = 0;
        for (var day : days.entrySet()) {
            if (row > 0) page.append('\n');
            page.append(moments.dayHeading(day.getKey())).append('\n');
            page.append("  ").append(table.titles()).append('\n');
            for (int end = row + day.getValue().intValue(); row < end; row++) {
                page.append("  ").append(table.row(row)).append('\n');
            }
        }
        return page.toString();
    }

    private String title(Ahead act, MomentFormat moments) {
        if (isOverdue(act)) return Phrases.say("ahead.overdue", act.title());
        return act.staysUntil()
                .map(until -> act.title() + ", " + Phrases.say("stay.ahead", near(act.startsAt(), until, moments)))
                .orElseGet(act::title);
    }

    private String near(Instant from, Instant until, MomentFormat moments) {
        boolean sameDay = LocalDate.ofInstant(from, zone).equals(LocalDate.ofInstant(until, zone));
        return sameDay ? moments.clock(until) : moments.moment(until);
    }
}
