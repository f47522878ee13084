package piecewright.calendar;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import piecewright.text.CalendarPhrases;

/** Finds our own events in a file written earlier, so that an export after a crash or a lost ledger knows them. */
public final class WrittenEvents {
    private static final Instant LATEST_STAMP = Instant.parse("9000-01-01T00:00:00Z");

    private WrittenEvents() {}

    /** Our events in these octets, damaged ones left out; empty if this is no calendar that we wrote. */
    public static Optional<List<WrittenEvent>> in(byte[] octets) {
        return IcsReading.calendar(octets)
                .filter(calendar -> calendar.value("PRODID").equals(IcsWriter.PRODUCT))
                .map(WrittenEvents::events);
    }

    private static List<WrittenEvent> events(IcsComponent calendar) {
        List<WrittenEvent> events = new ArrayList<>();
        for (IcsComponent component : calendar.inside("VEVENT")) {
            event(component).ifPresent(events::add);
        }
        return List.copyOf(events);
    }

    private static Optional<WrittenEvent> event(IcsComponent component) {
        String key = component.value(IcsEvents.ACT_KEY);
        Optional<UUID> uid = uid(component.value("UID"));
        Optional<Stamp> stamp = stamp(component);
        Optional<Span> span = span(component);
        if (uid.isEmpty() || stamp.isEmpty() || span.isEmpty() || !CalendarEvent.isKey(key)) return Optional.empty();
        boolean cancelled = component.value("STATUS").equals("CANCELLED");
        String said = component.first("SUMMARY").map(IcsLine::text).orElse("");
        String summary = cancelled ? CalendarPhrases.ofCancelled(said).orElse(said) : said;
        if (summary.isBlank()) return Optional.empty();
        EventStatus status = cancelled ? EventStatus.CANCELLED : EventStatus.CONFIRMED;
        return Optional.of(new WrittenEvent(uid.get(), key, stamp.get(), status, span.get(), summary));
    }

    private static Optional<UUID> uid(String value) {
        return EventChecks.isLowerCaseUuid(value) ? Optional.of(UUID.fromString(value)) : Optional.empty();
    }

    private static Optional<Stamp> stamp(IcsComponent component) {
        Optional<Instant> created = IcsTimes.utc(component.value("CREATED"));
        Optional<Instant> modified = IcsTimes.utc(component.value("LAST-MODIFIED"));
        String sequence = component.value("SEQUENCE");
        if (created.isEmpty() || modified.isEmpty() || !EventChecks.isSequence(sequence)) return Optional.empty();
        if (created.get().isAfter(modified.get()) || modified.get().isAfter(LATEST_STAMP)) return Optional.empty();
        return Optional.of(new Stamp(Integer.parseInt(sequence), created.get(), modified.get()));
    }

    private static Optional<Span> span(IcsComponent component) {
        Optional<Instant> start = IcsTimes.utc(component.value("DTSTART"));
        Optional<Instant> end = IcsTimes.utc(component.value("DTEND"));
        if (start.isEmpty() || end.isEmpty()) return Optional.empty();
        try {
            Span span = new Span(start.get(), end.get());
            return span.length().compareTo(CalendarEvent.SHORTEST) < 0 ? Optional.empty() : Optional.of(span);
        } catch (IllegalArgumentException notASpan) {
            return Optional.empty();
        }
    }
}
