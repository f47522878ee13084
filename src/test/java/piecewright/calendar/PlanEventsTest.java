package piecewright.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.plan.Agenda;

class PlanEventsTest {
    /** Source: JDK 17 tzdb 2025a and Python zoneinfo agree on these. The span is 8 h of elapsed time in every case. */
    @ParameterizedTest
    @CsvSource(textBlock = """
                    Europe/Berlin,       2027-03-28T00:30+01:00,    20270327T233000Z, 20270328T073000Z, Sun 28 Mar 00:30 (UTC+1) – Sun 28 Mar 09:30 (UTC+2)
                    Europe/Berlin,       2027-10-31T00:30+02:00,    20271030T223000Z, 20271031T063000Z, Sun 31 Oct 00:30 (UTC+2) – Sun 31 Oct 07:30 (UTC+1)
                    America/New_York,    2027-03-13T22:00-05:00,    20270314T030000Z, 20270314T110000Z, Sat 13 Mar 22:00 (UTC-5) – Sun 14 Mar 07:00 (UTC-4)
                    America/New_York,    2027-11-06T22:00-04:00,    20271107T020000Z, 20271107T100000Z, Sat 6 Nov 22:00 (UTC-4) – Sun 7 Nov 05:00 (UTC-5)
                    Australia/Lord_Howe, 2027-04-03T22:00+11:00,    20270403T110000Z, 20270403T190000Z, Sat 3 Apr 22:00 (UTC+11) – Sun 4 Apr 05:30 (UTC+10:30)
                    Australia/Lord_Howe, 2027-10-02T22:00+10:30,    20271002T113000Z, 20271002T193000Z, Sat 2 Oct 22:00 (UTC+10:30) – Sun 3 Oct 06:30 (UTC+11)
                    Asia/Kathmandu,      2027-03-28T22:00+05:45,    20270328T161500Z, 20270329T001500Z, Sun 28 Mar 22:00 (UTC+5:45) – Mon 29 Mar 06:00 (UTC+5:45)
                    """)
    void aSoakOverTheClockChangeKeepsItsEightHours(
            String zone, OffsetDateTime start, String startUtc, String endUtc, String local) {
        PlanFixture fixture = new PlanFixture(start.toInstant(), ZoneId.of(zone), Duration.ofHours(8), 3);
        CalendarEvent soak = find(fixture.events(), "phase.steep-1");
        assertEquals(Duration.ofHours(8), soak.span().length());
        boolean changes = !zone.equals("Asia/Kathmandu");
        assertEquals("In the cellar" + (changes ? "\n" + local : ""), soak.description());
        List<DatedEvent> events = fixture.dated();
        byte[] file = new IcsWriter().file("Malt", events);
        IcsComponent written = IcsReading.calendar(file).orElseThrow().inside("VEVENT").stream()
                .filter(event -> event.value("X-PIECEWRIGHT-ACT").equals("phase.steep-1"))
                .findFirst()
                .orElseThrow();
        assertEquals(startUtc + " " + endUtc, written.value("DTSTART") + " " + written.value("DTEND"));
        assertEquals(ReadBack.planned(events), ReadBack.byIcal4j(file));
        assertEquals(ReadBack.planned(events), ReadBack.byBiweekly(file));
    }

    /** A local hour that occurs twice: both halves are written as different instants and read differently. */
    @ParameterizedTest
    @CsvSource(textBlock = """
                    2027-10-31T02:30+02:00, Sun 31 Oct 02:30 (UTC+2), 20271031T003000Z
                    2027-10-31T02:30+01:00, Sun 31 Oct 02:30 (UTC+1), 20271031T013000Z
                    """)
    void bothHalvesOfARepeatedHourCanBeTold(OffsetDateTime start, String local, String utc) {
        PlanFixture fixture = PlanFixture.usual().startingAt(start.toInstant());
        CalendarEvent soak = find(fixture.events(), "steep-1.soak");
        assertTrue(soak.description().contains("\n" + local), soak.description());
        String file =
                new String(new IcsWriter().file("Malt", fixture.dated()), java.nio.charset.StandardCharsets.UTF_8);
        assertTrue(file.contains("DTSTART:" + utc));
    }

    @Test
    void actsAreBusyWithAlarmsAndPhasesFreeWithout() {
        for (CalendarEvent event : PlanFixture.usual().events().events()) {
            boolean phase = event.key().startsWith("phase.");
            assertEquals(phase ? Attention.PASSIVE : Attention.HANDS_ON, event.attention());
            assertEquals(phase ? List.of() : List.of(Duration.ofMinutes(30)), event.alarms());
        }
    }

    @Test
    void phasesCanBeLeftOutAndTheBatchEndsAllTheSame() {
        ExportOptions actsOnly = new ExportOptions(ExportOptions.PassivePhases.LEFT_OUT, List.of(), Optional.empty());
        BatchEvents events = new PlanEvents(PlanFixture.TEXTS, actsOnly)
                .of(PlanFixture.BATCH, Agenda.of(PlanFixture.usual().plan()));
        assertTrue(events.events().stream().allMatch(event -> event.attention() == Attention.HANDS_ON));
        assertEquals(PlanFixture.usual().plan().acts().size(), events.events().size());
        assertEquals(PlanFixture.usual().events().endsAt(), events.endsAt());
    }

    @Test
    void noEventIsShorterThanAQuarterOfAnHour() {
        BatchEvents events =
                PlanFixture.usual().withSoak(Duration.ofSeconds(90)).events();
        assertEquals(
                Duration.ofMinutes(15), find(events, "phase.steep-1").span().length());
    }

    /** The drain is at 05:00 local; its alarm at 04:30 would wake the house, so it comes the evening before. */
    @Test
    void anAlarmInQuietHoursRingsTheMinuteBeforeTheyBegin() {
        QuietHours night = new QuietHours(LocalTime.of(22, 0), LocalTime.of(6, 0));
        ExportOptions options = new ExportOptions(
                ExportOptions.PassivePhases.SHOWN,
                List.of(Duration.ofMinutes(30), Duration.ofMinutes(60)),
                Optional.of(night));
        BatchEvents events = new PlanEvents(PlanFixture.TEXTS, options)
                .of(PlanFixture.BATCH, Agenda.of(PlanFixture.usual().plan()));
        CalendarEvent drain = find(events, "steep-1.drain");
        Instant start = Instant.parse("2031-03-30T03:00:00Z"); // 05:00 in Berlin, summer time since 03:00
        assertEquals(start, drain.span().startsAt());
        Instant rings = Instant.parse("2031-03-29T20:59:00Z"); // 21:59, still winter time
        assertEquals(List.of(Duration.between(rings, start)), drain.alarms());
        assertEquals(options.alarms(), find(events, "kiln.off").alarms());
    }

    /** Twenty hours before 21:00 is 01:00; a minute before 22:00 the evening before that would be over a day. */
    @Test
    void anAlarmThatWouldComeADayTooSoonWaitsForTheEndOfQuietHours() {
        QuietHours night = new QuietHours(LocalTime.of(20, 0), LocalTime.of(6, 0));
        Instant start = Instant.parse("2031-02-10T20:00:00Z"); // 21:00 in Berlin
        assertEquals(
                List.of(Duration.ofHours(15)), night.spare(start, List.of(Duration.ofHours(20)), PlanFixture.BERLIN));
    }

    private static CalendarEvent find(BatchEvents events, String key) {
        return events.events().stream()
                .filter(event -> event.key().equals(key))
                .findFirst()
                .orElseThrow();
    }
}
