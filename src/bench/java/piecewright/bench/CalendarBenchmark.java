package piecewright.bench;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.parameter.Related;
import biweekly.property.Trigger;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import piecewright.calendar.Attention;
import piecewright.calendar.BatchEvents;
import piecewright.calendar.CalendarEvent;
import piecewright.calendar.CssColour;
import piecewright.calendar.IcsWriter;
import piecewright.calendar.Ledger;
import piecewright.calendar.Span;

/** A calendar of 10,000 acts: ours with its ledger and its own checks, beside another library's bare writing. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
public class CalendarBenchmark {
    private static final Instant START = Instant.parse("2031-02-01T08:00:00Z");
    private static final UUID BATCH = UUID.fromString("5b0e86a1-6f1c-4b5e-9d5a-0a6c1d1c9b33");
    private static final int ACTS = 10_000;

    private BatchEvents events;

    /** Invents the acts, one an hour. */
    @Setup
    public void invent() {
        List<CalendarEvent> acts = new ArrayList<>();
        for (int i = 0; i < ACTS; i++) {
            Instant at = START.plus(Duration.ofHours(i));
            acts.add(new CalendarEvent(
                    "floor.turn-" + i,
                    new Span(at, at.plus(Duration.ofMinutes(20))),
                    "Turn " + i + " – Pale malt",
                    "Turn the piece from the bottom up and the edge inwards, part matted roots gently by hand, and"
                            + " level it.\nExpect 7.390 kg, 42.9 % moisture, grain at 18.3 °C.",
                    Attention.HANDS_ON,
                    new CssColour("seagreen"),
                    List.of(Duration.ofMinutes(30))));
        }
        events = new BatchEvents(BATCH, START.plus(Duration.ofHours(ACTS)), acts);
    }

    @Benchmark
    public byte[] ours() {
        return new IcsWriter()
                .file("Malt", Ledger.startedFor(BATCH).next(events, START).forImportFile());
    }

    @Benchmark
    public String biweekly() {
        ICalendar calendar = new ICalendar();
        for (CalendarEvent act : events.events()) calendar.addEvent(event(act));
        return Biweekly.write(calendar).go();
    }

    private static VEvent event(CalendarEvent act) {
        VEvent event = new VEvent();
        event.setUid(BATCH + act.key());
        event.setDateTimeStamp(Date.from(START));
        event.setDateStart(Date.from(act.span().startsAt()));
        event.setDateEnd(Date.from(act.span().endsAt()));
        event.setSummary(act.summary());
        event.setDescription(act.description());
        event.addCategories("Malting");
        biweekly.util.Duration lead =
                biweekly.util.Duration.builder().prior(true).minutes(30).build();
        event.addAlarm(VAlarm.display(new Trigger(lead, Related.START), act.summary()));
        return event;
    }
}
