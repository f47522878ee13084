package piecewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.publish.FakeServer;

/** A batch under way in its calendars: what is done is ticked, a new plan says which calendars it leaves behind. */
class DoneIsDoneTest {
    private static final ZoneId CLOCK = ZoneId.of("Europe/Oslo");
    private static final Secrets TYPED = new Secrets(Map.of(), () -> Optional.of("secret".toCharArray()));

    @TempDir
    private Path folder;

    @BeforeEach
    void keep() {
        List<String> words = new ArrayList<>(
                Run.plan("pale", "two-row-barley", "cool-garage", "--malt", "2 kg", "--ready-by", "2027-05-20"));
        words.addAll(List.of("--skip-checks", "--into", batch()));
        assertEquals(0, Run.of(Run.REAL, Run.NOW, words).code());
    }

    private String batch() {
        return folder.resolve("b.json").toString();
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    private Run run(String... words) {
        return Run.of(Run.NEVER, Run.NOW, TYPED, List.of(words));
    }

    private VEvent event(String calendar, String act) throws IOException {
        return Biweekly.parse(Files.readString(folder.resolve(calendar))).first().getEvents().stream()
                .filter(event -> act.equals(
                        event.getExperimentalProperty("X-PIECEWRIGHT-ACT").getValue()))
                .findFirst()
                .orElseThrow();
    }

    private Instant at(String act) throws IOException {
        return event("c.ics", act).getDateStart().getValue().toInstant();
    }

    private static String now(Instant at) {
        return LocalDateTime.ofInstant(at, CLOCK).toString();
    }

    /** Soaked as planned, drained twenty minutes late at 2.900 kg. */
    private void soakedAndDrained() throws IOException {
        Instant soak = at("steep-1.soak");
        assertEquals(
                0,
                run("record", batch(), "soaked", "--now", now(soak.plus(Duration.ofMinutes(5))))
                        .code());
        Instant drain = at("steep-1.drain").plus(Duration.ofMinutes(20));
        Run drained = run("record", batch(), "drained 2.900 kg", "--now", now(drain));
        assertEquals(0, drained.code(), drained.out() + drained.err());
    }

    @Test
    void whatIsRecordedIsTickedInTheLiveFileAtOnce() throws IOException {
        assertEquals(
                0, run("calendar", "--batch", batch(), "--live", file("c.ics")).code());
        Instant planned = at("steep-1.drain");
        assertFalse(event("c.ics", "steep-1.drain").getAlarms().isEmpty());
        assertTrue(event("c.ics", "steep-1.drain").getSummary().getValue().startsWith("Drain 1 → "));
        soakedAndDrained();
        VEvent drain = event("c.ics", "steep-1.drain");
        assertTrue(drain.getSummary().getValue().startsWith("✓ Drain 1: 2.900 kg"), drain.toString());
        assertEquals(List.of(), drain.getAlarms());
        assertEquals(planned.plus(Duration.ofMinutes(20)), at("steep-1.drain"));
        assertEquals(
                planned.plus(Duration.ofMinutes(20)),
                event("c.ics", "phase.steep-1.soak-immersion")
                        .getDateEnd()
                        .getValue()
                        .toInstant());
        assertTrue(event("c.ics", "steep-1.soak").getSummary().getValue().startsWith("✓ Soak 1"));
        Run struck = run("record", batch(), "void 2", "--now", now(planned.plus(Duration.ofMinutes(30))));
        assertEquals(0, struck.code(), struck.out());
        run("record", batch(), "void 3", "--now", now(planned.plus(Duration.ofMinutes(30))));
        assertTrue(event("c.ics", "steep-1.drain").getSummary().getValue().startsWith("Drain 1"), "unticked");
    }

    @Test
    void whatIsWrittenDownStaysWhenTheLiveFileCannotBeTold() throws IOException {
        assertEquals(
                0, run("calendar", "--batch", batch(), "--live", file("c.ics")).code());
        Instant soak = at("steep-1.soak");
        Files.writeString(folder.resolve("c.ics"), "not ours");
        Run kept = run("record", batch(), "soaked", "--now", now(soak));
        assertEquals(0, kept.code());
        assertTrue(kept.err().contains("What you wrote down is kept"), kept.err());
        assertTrue(run("record", batch()).out().contains("1. "));
    }

    @Test
    void anAcceptedPlanNamesTheCalendarsItLeavesBehind() throws IOException {
        try (FakeServer server = new FakeServer()) {
            assertEquals(
                    0,
                    run("calendar", "--batch", batch(), "--live", file("c.ics")).code());
            assertEquals(
                    0,
                    run("calendar", "--batch", batch(), "--file", file("once.ics"))
                            .code());
            assertEquals(
                    0,
                    run("calendar", "--batch", batch(), "--file", file("moved away.ics"))
                            .code());
            Files.delete(folder.resolve("moved away.ics"));
            assertEquals(
                    0,
                    run(
                                    "calendar",
                                    "--batch",
                                    batch(),
                                    "--user",
                                    "brew",
                                    "--collection",
                                    server.collection().toString())
                            .code());
            soakedAndDrained();
            String now = now(at("steep-1.drain").plus(Duration.ofMinutes(5)));
            Run replanned = Run.of(Run.REAL, Run.NOW, List.of("replan", batch(), "--accept", "--now", now));
            assertEquals(0, replanned.code(), replanned.out() + replanned.err());
            String said = replanned.out().replaceAll("\\s+", " ");
            assertTrue(said.contains("once.ics was written anew: import it again"), said);
            assertTrue(
                    said.contains(
                            "piecewright calendar --batch " + batch() + " --file '" + file("moved away.ics") + "'"),
                    said);
            assertTrue(said.contains("--collection " + server.collection() + " --user brew"), said);
            assertTrue(
                    event("once.ics", "steep-1.drain").getSummary().getValue().startsWith("✓ "));
        }
    }

    @Test
    void choicesAreAskedOnce() throws IOException {
        assertEquals(
                0,
                run(
                                "calendar",
                                "--batch",
                                batch(),
                                "--file",
                                file("a.ics"),
                                "--alarm",
                                "45",
                                "--quiet",
                                "23:00-06:00",
                                "--no-phases")
                        .code());
        assertEquals(
                0, run("calendar", "--batch", batch(), "--live", file("c.ics")).code());
        List<VEvent> events = Biweekly.parse(Files.readString(folder.resolve("c.ics")))
                .first()
                .getEvents();
        assertTrue(
                events.stream().flatMap(event -> event.getAlarms().stream()).anyMatch(alarm -> minutes(alarm) == 45));
        assertTrue(events.stream()
                .filter(event -> event.getTransparency().isTransparent())
                .toList()
                .isEmpty());
        assertEquals(
                0,
                run("calendar", "--batch", batch(), "--live", file("c.ics"), "--phases", "--alarm", "10")
                        .code());
        assertTrue(minutes(event("c.ics", "kiln.off").getAlarms().get(0)) <= 10);
        assertTrue(Files.readString(folder.resolve("c.ics")).contains("phase.floor"));
    }

    private static long minutes(VAlarm alarm) {
        return -alarm.getTrigger().getDuration().toMillis() / 60_000;
    }

    /** No alarm rings before anybody's hours begin: the house's file says 06:00 on weekdays, 07:00 at weekends. */
    @Test
    void alarmsRingInSomebodysHoursOnly() throws IOException {
        assertEquals(
                0,
                run("calendar", "--batch", batch(), "--live", file("c.ics"), "--alarm", "120", "--alarm", "30")
                        .code());
        int rung = 0;
        for (VEvent event : Biweekly.parse(Files.readString(folder.resolve("c.ics")))
                .first()
                .getEvents()) {
            for (VAlarm alarm : event.getAlarms()) {
                Instant rings = event.getDateStart().getValue().toInstant().minus(Duration.ofMinutes(minutes(alarm)));
                var local = OffsetDateTime.ofInstant(rings, CLOCK);
                assertTrue(inHours(local), event.getSummary().getValue() + " rings " + local);
                rung++;
            }
        }
        assertTrue(rung > 20, rung + " alarms");
    }

    private static boolean inHours(OffsetDateTime local) {
        double hour = local.getHour() + local.getMinute() / 60.0;
        return switch (local.getDayOfWeek()) {
            case SATURDAY, SUNDAY -> hour >= 7 && hour < 22.5;
            case FRIDAY -> hour >= 6 && hour < 7 || hour >= 15.5 && hour < 22.5;
            default -> hour >= 6 && hour < 7 || hour >= 17.5 && hour < 22;
        };
    }

    @Test
    void theRestBeforeMillingIsOneEntry() throws IOException {
        assertEquals(
                0, run("calendar", "--batch", batch(), "--live", file("c.ics")).code());
        long rests = Biweekly.parse(Files.readString(folder.resolve("c.ics"))).first().getEvents().stream()
                .filter(event -> event.getSummary().getValue().startsWith("Resting"))
                .count();
        assertEquals(1, rests);
    }

    @Test
    void entriesAreShortAndSayFirstWhatToDo() throws IOException {
        assertEquals(
                0, run("calendar", "--batch", batch(), "--live", file("c.ics")).code());
        for (VEvent event : Biweekly.parse(Files.readString(folder.resolve("c.ics")))
                .first()
                .getEvents()) {
            String text = event.getDescription().getValue();
            assertTrue(text.length() < 700, text.length() + ": " + text);
        }
        String[] cure = event("c.ics", "kiln.cure").getDescription().getValue().split("\n");
        assertTrue(cure[0].startsWith("Weigh first."), cure[0]);
        assertTrue(cure[1].startsWith("Best from "), cure[1]);
        assertTrue(event("c.ics", "kiln.cure")
                .getSummary()
                .getValue()
                .matches("Cure at \\d+(\\.\\d)? °C below \\d+(\\.\\d)? % – .*"));
    }
}
