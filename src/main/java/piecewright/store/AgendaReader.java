package piecewright.store;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Agenda;
import piecewright.plan.Caution;
import piecewright.plan.Check;
import piecewright.plan.CheckKind;
import piecewright.plan.Expectation;
import piecewright.plan.InnerSchedule;
import piecewright.plan.Phase;
import piecewright.plan.PhaseKind;
import piecewright.plan.Plan;
import piecewright.plan.Setting;
import piecewright.plan.Window;
import piecewright.quantity.Moisture;
import piecewright.text.Quoted;

/** Reads acts and phases back from the document of {@link PlanJson}; figures come as rounded as they were written. */
public final class AgendaReader {
    private static final int MOST_MINUTES = 7 * 24 * 60;

    private AgendaReader() {}

    /** The agenda in this document; the file is only named in refusals. */
    public static Agenda read(Path file, String planJson) throws StoreException {
        JsonBlock plan = JsonBlock.root(file, planJson, "plan", "obstacles").block("plan");
        Plan.Subject subject = new Plan.Subject(
                plan.text("style"),
                plan.text("title"),
                plan.text("lot"),
                LocalTimes.zone(plan, "timeZone"),
                LocalTimes.instant(plan, "readyAt"));
        List<Check> checks = new ArrayList<>();
        for (JsonBlock check : plan.blocks("checks")) checks.add(check(check));
        List<Act> acts = new ArrayList<>();
        for (JsonBlock act : plan.blocks("acts")) acts.add(act(act));
        List<Phase> phases = new ArrayList<>();
        for (JsonBlock phase : plan.blocks("phases")) phases.add(phase(phase));
        return new Agenda(subject, checks, acts, phases);
    }

    private static Check check(JsonBlock check) throws StoreException {
        CheckKind kind = word(check, "kind", CheckKind.values(), CheckKind::key);
        String id = check.text("id");
        String about = check.text("of");
        Instant start = LocalTimes.instant(check, "startsAt");
        Instant latest = LocalTimes.instant(check, "latest");
        double beforeSd = check.number("sdBefore", 0, 100);
        double afterSd = check.number("sdAfter", 0, 100);
        double sampleG = check.optionalNumber("sampleG", 0, 10_000).orElse(0);
        return check.make(() -> new Check(id, kind, about, start, latest, new Check.Gain(beforeSd, afterSd, sampleG)));
    }

    private static Act act(JsonBlock act) throws StoreException {
        ActKind kind = word(act, "kind", ActKind.values(), ActKind::key);
        Duration work = Duration.ofMinutes(act.whole("minutes", 0, MOST_MINUTES));
        Instant earliest = LocalTimes.instant(act, "earliest");
        Instant latest = LocalTimes.instant(act, "latest");
        Instant hardLatest = LocalTimes.instant(act, "hardLatest");
        Window window = act.make(() -> new Window(earliest, latest, hardLatest));
        List<Caution> cautions = new ArrayList<>();
        for (String key : act.texts("cautionKinds")) {
            cautions.add(one(act, "cautionKinds", key, Caution.values(), Caution::key));
        }
        Expectation expect = expectation(act.block("expect"));
        Optional<JsonBlock> block = act.optionalBlock("inner");
        Optional<InnerSchedule> inner =
                block.isPresent() ? Optional.of(InnerReader.read(block.get())) : Optional.empty();
        Instant start = LocalTimes.instant(act, "startsAt");
        return new Act(act.text("id"), kind, start, work, window, setting(act), expect, cautions, inner);
    }

    private static Setting setting(JsonBlock act) throws StoreException {
        Optional<String> place = act.optionalText("place");
        OptionalDouble setC = act.optionalNumber("setC", -50, 500);
        OptionalDouble waterL = act.optionalNumber("waterL", 0, 10_000);
        OptionalDouble depthCm = act.optionalNumber("depthCm", 0, 1000);
        OptionalDouble gateFraction = act.optionalNumber("gateMoistureWetBasisFraction", 0, 1);
        return new Setting(place, setC, waterL, depthCm, gateFraction, act.optionalNumber("limitC", -50, 500));
    }

    private static Expectation expectation(JsonBlock expect) throws StoreException {
        return new Expectation(
                expect.number("massKg", 0, 10_000),
                moisture(expect, "moistureWetBasisFraction"),
                expect.number("grainC", -50, 500),
                expect.optionalNumber("acrospireFraction", 0, 10));
    }

    private static Phase phase(JsonBlock phase) throws StoreException {
        PhaseKind kind = word(phase, "kind", PhaseKind.values(), PhaseKind::key);
        String id = phase.text("id");
        Instant from = LocalTimes.instant(phase, "from");
        Instant until = LocalTimes.instant(phase, "until");
        String place = phase.wholeText("place");
        Moisture first = moisture(phase, "moistureFrom");
        Moisture last = moisture(phase, "moistureUntil");
        boolean attended = phase.has("attended") && phase.trueOrFalse("attended");
        return phase.make(() -> new Phase(id, kind, from, until, place, first, last, attended));
    }

    private static Moisture moisture(JsonBlock block, String key) throws StoreException {
        return new Moisture(block.number(key, 0, 0.99));
    }

    static <T> T word(JsonBlock block, String key, T[] known, Function<T, String> keyOf) throws StoreException {
        return one(block, key, block.text(key), known, keyOf);
    }

    private static <T> T one(JsonBlock block, String key, String word, T[] known, Function<T, String> keyOf)
            throws StoreException {
        return Arrays.stream(known)
                .filter(constant -> keyOf.apply(constant).equals(word))
                .findFirst()
                .orElseThrow(() -> block.refused(
                        key, "\"" + Quoted.shortly(word) + "\" is not known here; take the file from a copy"));
    }
}
