package piecewright.calendar;

import java.time.Instant;
import java.util.Objects;
import java.util.UUID;

/**
 * What was last written of one event.
 *
 * @param schedule fingerprint of times and status; empty if not known
 * @param content fingerprint of everything but the stamp; empty if not known
 * @param lastSpan where it last stood
 */
public record LedgerEntry(
        UUID uid, Stamp stamp, EventStatus state, String schedule, String content, Span lastSpan, String lastSummary) {
    /** Goes into every fingerprint; count it up when {@link IcsWriter} writes the same event differently. */
    private static final String FORMAT = "1";

    public LedgerEntry {
        Objects.requireNonNull(uid);
        Objects.requireNonNull(stamp);
        Objects.requireNonNull(state);
        Objects.requireNonNull(schedule);
        Objects.requireNonNull(content);
        Objects.requireNonNull(lastSpan);
        if (lastSpan.length().compareTo(CalendarEvent.SHORTEST) < 0) {
            throw new IllegalArgumentException("lastSpan must be 15 minutes or more: " + lastSpan);
        }
        if (lastSummary.isBlank()) throw new IllegalArgumentException("lastSummary must not be blank: " + uid);
    }

    static LedgerEntry first(UUID uid, CalendarEvent event, Instant nowSeconds) {
        return written(uid, new Stamp(0, nowSeconds, nowSeconds), EventStatus.CONFIRMED, event);
    }

    /** The entry after this event was written over the old one. */
    LedgerEntry followedBy(CalendarEvent event, Instant nowSeconds) {
        LedgerEntry next = written(uid, stamp, EventStatus.CONFIRMED, event);
        if (next.content.equals(content)) return this;
        boolean sameTimes = next.schedule.equals(schedule);
        return next.withStamp(sameTimes ? stamp.reworded(nowSeconds) : stamp.rescheduled(nowSeconds));
    }

    /** The entry after the event was dropped; an entry already cancelled stays as it is. */
    LedgerEntry cancelled(String key, Instant nowSeconds) {
        LedgerEntry next = written(uid, stamp, EventStatus.CANCELLED, stub(key));
        if (state == EventStatus.CANCELLED && next.content.equals(content)) return this;
        return new LedgerEntry(
                uid,
                stamp.rescheduled(nowSeconds),
                EventStatus.CANCELLED,
                next.schedule,
                next.content,
                lastSpan,
                lastSummary);
    }

    /** Whether the event was last written just so. */
    boolean says(CalendarEvent event) {
        return written(uid, stamp, EventStatus.CONFIRMED, event).content.equals(content);
    }

    CalendarEvent stub(String key) {
        return CalendarEvent.cancelled(key, lastSpan, lastSummary);
    }

    /** Not behind what a file was seen to say: its stamp if that is newer, and then the content as not known. */
    LedgerEntry caughtUpWith(WrittenEvent seen) {
        Stamp other = seen.stamp();
        boolean behind =
                other.sequence() > stamp.sequence() || other.lastModified().isAfter(stamp.lastModified());
        if (!behind) return this;
        int sequence = Math.max(stamp.sequence(), other.sequence());
        Instant modified =
                other.lastModified().isAfter(stamp.lastModified()) ? other.lastModified() : stamp.lastModified();
        Stamp newest = new Stamp(sequence, stamp.created(), modified);
        return new LedgerEntry(uid, newest, state, "", "", lastSpan, lastSummary);
    }

    private LedgerEntry withStamp(Stamp changed) {
        return new LedgerEntry(uid, changed, state, schedule, content, lastSpan, lastSummary);
    }

    private static LedgerEntry written(UUID uid, Stamp stamp, EventStatus state, CalendarEvent event) {
        String times = event.span().startsAt() + " " + event.span().endsAt() + " " + state;
        String rest = String.join(
                "\u0000",
                FORMAT,
                times,
                event.key(),
                event.summary(),
                event.description(),
                event.attention().name(),
                event.colour().name(),
                event.alarms().toString());
        return new LedgerEntry(
                uid,
                stamp,
                state,
                NamedUuid.fingerprint(times),
                NamedUuid.fingerprint(rest),
                event.span(),
                event.summary());
    }
}
