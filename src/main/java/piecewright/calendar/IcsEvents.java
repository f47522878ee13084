package piecewright.calendar;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.ParameterList;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Categories;
import net.fortuna.ical4j.model.property.Color;
import net.fortuna.ical4j.model.property.Created;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.LastModified;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Trigger;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.XProperty;
import net.fortuna.ical4j.model.property.immutable.ImmutableAction;
import net.fortuna.ical4j.model.property.immutable.ImmutableClazz;
import net.fortuna.ical4j.model.property.immutable.ImmutableStatus;
import net.fortuna.ical4j.model.property.immutable.ImmutableTransp;

/**
 * Builds the library's components. Times are given as {@link Instant} only: the library writes any other type with an
 * offset as a floating time or with a zone name that no standard knows.
 */
final class IcsEvents {
    /** Names the act; lets us know our own events again on a calendar server. */
    static final String ACT_KEY = "X-PIECEWRIGHT-ACT";

    /** The first and only category; some calendars file events by it, so it never changes. */
    static final String CATEGORY = "Malting";

    private IcsEvents() {}

    static VEvent of(DatedEvent dated) {
        CalendarEvent event = dated.event();
        List<Property> lines = new ArrayList<>();
        lines.add(new Uid(dated.uid().toString()));
        addStamp(lines, dated.stamp());
        lines.add(new DtStart<>(event.span().startsAt()));
        lines.add(new DtEnd<>(event.span().endsAt()));
        lines.add(new Summary(event.summary()));
        if (!event.description().isEmpty()) lines.add(new Description(event.description()));
        lines.add(new Categories(CATEGORY));
        lines.add(new Color(new ParameterList(), event.colour().name()));
        lines.add(
                dated.status() == EventStatus.CONFIRMED
                        ? ImmutableStatus.VEVENT_CONFIRMED
                        : ImmutableStatus.VEVENT_CANCELLED);
        lines.add(event.attention() == Attention.PASSIVE ? ImmutableTransp.TRANSPARENT : ImmutableTransp.OPAQUE);
        lines.add(ImmutableClazz.PRIVATE);
        lines.add(new XProperty(ACT_KEY, event.key()));
        List<VAlarm> alarms = new ArrayList<>();
        for (Duration alarm : event.alarms()) alarms.add(alarm(alarm, event.summary()));
        return new VEvent(new PropertyList(lines), new ComponentList<>(alarms)); // adding one by one copies each time
    }

    private static void addStamp(List<Property> lines, Stamp stamp) {
        lines.add(new DtStamp(stamp.lastModified())); // without METHOD it means the last change, not now
        lines.add(new Created(stamp.created()));
        lines.add(new LastModified(stamp.lastModified()));
        lines.add(new Sequence(stamp.sequence()));
    }

    private static VAlarm alarm(Duration before, String text) {
        return new VAlarm(new PropertyList(
                List.of(ImmutableAction.DISPLAY, new Trigger(before.negated()), new Description(text))));
    }
}
