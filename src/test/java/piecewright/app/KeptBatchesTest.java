package piecewright.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Availability;
import piecewright.plan.Continuation;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.replan.ReplanResult.Replanned;
import piecewright.store.StyleLibrary;

/** Batches kept with their journals at the moment that once went wrong. */
class KeptBatchesTest {
    @TempDir
    private Path folder;

    private BatchAtHand open(String name) throws Exception {
        for (String file : List.of("batch.json", "batch.json.journal.jsonl")) {
            Path to = folder.resolve(file);
            if (!Files.exists(to)) Files.write(to, resource("/kept/" + name + "/" + file));
        }
        return BatchAtHand.open(
                folder.resolve("batch.json"), StyleLibrary.builtIn(), new Continuation(ModelParameters.defaults()));
    }

    private static byte[] resource(String path) throws IOException {
        try (var stream = KeptBatchesTest.class.getResourceAsStream(path)) {
            return stream.readAllBytes();
        }
    }

    private static Instant local(BatchAtHand batch, String time) {
        return LocalDateTime.parse(time).atZone(batch.zone()).toInstant();
    }

    private Replanned replanned(String name, String time) throws Exception {
        BatchAtHand batch = open(name);
        return batch.replan(local(batch, time)).match(replanned -> replanned, not -> {
            throw new AssertionError(not.obstacles().toString());
        });
    }

    private static Optional<Act> first(Plan plan, ActKind kind) {
        return plan.acts().stream().filter(act -> act.kind() == kind).findFirst();
    }

    /** Steeped a point short, the grain is spread and grows before it is packed and loaded. */
    @Test
    void aShortSteepIsGrownBeforeItIsPackedAndLoaded() throws Exception {
        Plan plan = replanned("short-steep-dark", "2026-03-02T12:15").plan();
        Act pack = first(plan, ActKind.PACK).orElseThrow();
        assertTrue(pack.expect().acrospireFraction().orElse(0) > 0.5, pack.toString());
        Act spread = first(plan, ActKind.FLOOR).orElseThrow();
        assertTrue(Duration.between(spread.startsAt(), pack.startsAt()).toHours() >= 48, pack.toString());
        Act load = first(plan, ActKind.LOAD).orElseThrow();
        assertTrue(Duration.between(pack.startsAt(), load.startsAt()).toHours() >= 12, load.toString());
    }

    /** A seventh of the acrospire after the first turning: it grows on, and is stewed before it is dried. */
    @Test
    void grainOfAFirstTurningIsNotLoaded() throws Exception {
        Plan plan = replanned("first-turn-crystal", "2026-08-30T14:25").plan();
        Act stew = first(plan, ActKind.STEW).orElseThrow();
        assertTrue(stew.expect().acrospireFraction().orElse(0) > 0.5, stew.toString());
        assertTrue(
                stew.startsAt().isBefore(first(plan, ActKind.LOAD).orElseThrow().startsAt()));
    }

    /** What one reading says of the box rules it out for another batch, not for the pile that lies in it. */
    @Test
    void aPileLiesInTheBoxItLiesIn() throws Exception {
        BatchAtHand batch = open("slow-couch-dark");
        Instant now = local(batch, "2026-11-14T17:55");
        assertTrue(batch.where(now).isPresent());
        Plan plan = replanned("slow-couch-dark", "2026-11-14T17:55").plan();
        Act pack = first(plan, ActKind.PACK).orElseThrow();
        assertEquals("insulated box", pack.setting().place().orElseThrow());
        Act broken = first(plan, ActKind.BREAK).orElseThrow();
        assertTrue(Duration.between(pack.startsAt(), broken.startsAt()).toHours() >= 24, broken.toString());
    }

    @Test
    void aStewedBatchGoesOn() throws Exception {
        BatchAtHand batch = open("stewed-crystal");
        Instant now = local(batch, "2026-02-28T16:35");
        Plan plan = replanned("stewed-crystal", "2026-02-28T16:35").plan();
        Act load = first(plan, ActKind.LOAD).orElseThrow();
        assertFalse(load.startsAt()
                .isBefore(first(plan, ActKind.STEW).orElseThrow().startsAt().plusSeconds(3600)));
        assertTrue(Duration.between(now, load.startsAt()).toHours() < 2, load.toString());
    }

    /** Dry far below the gate at each weigh-in: with somebody there it starts now, not the next time. */
    @ParameterizedTest
    @ValueSource(strings = {"2026-03-02T16:00", "2026-03-02T19:30", "2026-03-03T16:00", "2026-03-03T19:30"})
    void aDryBatchIsFinishedWhenSomebodyIsThere(String time) throws Exception {
        BatchAtHand batch = open("dry-crystal");
        Plan plan = replanned("dry-crystal", time).plan();
        Act cure = first(plan, ActKind.CURE).orElseThrow();
        assertTrue(Duration.between(local(batch, time), cure.startsAt()).toMinutes() <= 15, cure.toString());
    }

    /** Home before and after work only, heater not safe alone: nothing over 60 °C from a Monday morning on. */
    @ParameterizedTest
    @ValueSource(strings = {"weekday-morning-pale 2027-10-25T06:45", "weekday-morning-ale 2027-10-25T06:46"})
    void noHeatRunsAloneAndThereIsAlwaysAPlan(String kept) throws Exception {
        String[] words = kept.split(" ");
        BatchAtHand batch = open(words[0]);
        Instant now = local(batch, words[1]);
        Plan plan = replanned(words[0], words[1]).plan();
        Availability hours = Availability.of(batch.request().house(), now, now.plus(Duration.ofDays(20)));
        List<Act> acts = plan.acts().stream()
                .filter(act -> !act.startsAt().isBefore(now))
                .filter(act -> act.setting().setC().isPresent() || act.kind() == ActKind.OFF)
                .toList();
        for (int i = 0; i + 1 < acts.size(); i++) {
            assertTrue(acts.get(i).startsAt().isBefore(acts.get(i + 1).startsAt()), "at once: " + acts.get(i));
            if (acts.get(i).setting().setC().orElse(0) <= 60) continue;
            Instant until = hours.attendedUntil(acts.get(i).startsAt()).orElseThrow();
            assertFalse(acts.get(i + 1).startsAt().isAfter(until), acts.get(i) + " then " + acts.get(i + 1));
        }
        assertTrue(first(plan, ActKind.CURE).isPresent());
    }

    /** Three weeks after its start a batch that begins its cure is cured as long as any. */
    @Test
    void noHorizonTakesTheMaltOffTheKiln() throws Exception {
        Plan plan = replanned("three-weeks-ale", "2027-11-05T17:50").plan();
        Act cure = first(plan, ActKind.CURE).orElseThrow();
        Act off = first(plan, ActKind.OFF).orElseThrow();
        assertTrue(Duration.between(cure.startsAt(), off.startsAt()).toHours() >= 2, off.toString());
    }
}
