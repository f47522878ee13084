package piecewright.calendar;

import java.time.Duration;
import java.time.Instant;
import net.fortuna.ical4j.model.ParameterList;
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
        VEvent component = new VEvent(false); // without a DTSTAMP of its own
        component.add(new Uid(dated.uid().toString()));
        addStamp(component, dated.stamp());
        component.add(new DtStart<>(event.span().startsAt()));
        component.add(new DtEnd<>(event.span().endsAt()));
        component.add(new Summary(event.summary()));
        if (!event.description().isEmpty()) component.add(new Description(event.description()));
        component.add(new Categories(CATEGORY));
        component.add(new Color(new ParameterList(), event.colour().name()));
        component.add(
                dated.status() == EventStatus.CONFIRMED
                        ? ImmutableStatus.VEVENT_CONFIRMED
                        : ImmutableStatus.VEVENT_CANCELLED);
        component.add(event.attention() == Attention.HANDS_ON ? ImmutableTransp.OPAQUE : ImmutableTransp.TRANSPARENT);
        component.add(ImmutableClazz.PRIVATE);
        component.add(new XProperty(ACT_KEY, event.key()));
        for (Duration alarm : event.alarms()) component.add(alarm(alarm, event.summary()));
        return component;
    }

    private static void addStamp(VEvent component, Stamp stamp) {
        component.add(new DtStamp(stamp.lastModified())); // without METHOD it means the last change, not now
        component.add(new Created(stamp.created()));
        component.add(new LastModified(stamp.lastModified()));
        component.add(new Sequence(stamp.sequence()));
    }

    private static VAlarm alarm(Duration before, String text) {
        VAlarm alarm = new VAlarm();
        alarm.add(ImmutableAction.DISPLAY);
        alarm.add(new Trigger(before.negated()));
        alarm.add(new Description(text));
        return alarm;
    }
}
