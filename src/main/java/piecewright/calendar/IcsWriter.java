package piecewright.calendar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Name;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.XProperty;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/**
 * Writes events as an iCalendar file (RFC 5545): UTC throughout, no METHOD, folded by octets. Same events, same bytes,
 * whatever the zone and locale of the machine. Every file is read by {@link IcsChecks} before it is handed out.
 */
public final class IcsWriter {
    static final String PRODUCT = "-//Piecewright//Piecewright 1.0//EN";
    private static final Comparator<DatedEvent> IN_TIME_ORDER = Comparator.comparing(
                    (DatedEvent dated) -> dated.event().span().startsAt())
            .thenComparing(dated -> dated.uid().toString());
    private final IcsChecks checks = new IcsChecks();

    /**
     * One file of all these events, of one batch or of many, in time order.
     *
     * @param name what calendars show for the whole; cut at 120 characters
     * @throws IllegalArgumentException if there is no event, since a calendar must not be empty
     */
    public byte[] file(String name, List<DatedEvent> events) {
        String title = CleanText.line(name, CalendarEvent.LONGEST_SUMMARY);
        return write(title.isEmpty() ? Optional.empty() : Optional.of(title), events);
    }

    /** One event as a calendar server stores it: a calendar of its own, without a name. */
    public byte[] resource(DatedEvent event) {
        return write(Optional.empty(), List.of(event));
    }

    private byte[] write(Optional<String> name, List<DatedEvent> events) {
        if (events.isEmpty()) throw new IllegalArgumentException("events must not be empty");
        List<Property> lines = new ArrayList<>(
                List.of(ImmutableVersion.VERSION_2_0, new ProdId(PRODUCT), ImmutableCalScale.GREGORIAN));
        name.ifPresent(title -> {
            lines.add(new Name(title));
            lines.add(new XProperty("X-WR-CALNAME", title));
        });
        List<VEvent> components =
                events.stream().sorted(IN_TIME_ORDER).map(IcsEvents::of).toList();
        Calendar calendar = new Calendar(new PropertyList(lines), new ComponentList<>(components));
        // the library's outputter is toString() folded by characters; folding it once, by octets, is enough
        byte[] bytes = OctetFolding.fold(calendar.toString());
        List<IcsFault> faults = checks.faultsOf(bytes);
        if (!faults.isEmpty()) throw new IllegalStateException("calendar against our own checks: " + faults);
        return bytes;
    }
}
