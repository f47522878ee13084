package piecewright.store;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import piecewright.plan.Act;
import piecewright.plan.Expectation;
import piecewright.plan.Finding;
import piecewright.plan.Obstacle;
import piecewright.plan.Phase;
import piecewright.plan.Plan;
import piecewright.text.Wording;
import tools.jackson.databind.node.ObjectNode;

/** Writes a plan as a JSON document, format 1: times with the house's offset, masses to the gram, cautions in words. */
public final class PlanJson {
    private final Wording wording;

    public PlanJson(Wording wording) {
        this.wording = wording;
    }

    /** The document; the same plan gives the same text. */
    public String write(Plan plan) {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        put(root.putObject("plan"), plan);
        return JsonText.write(root);
    }

    /** The plan's keys. */
    void put(ObjectNode node, Plan plan) {
        ZoneId zone = plan.subject().zone();
        node.put("style", plan.subject().style());
        node.put("lot", plan.subject().lot());
        node.put("timeZone", zone.getId());
        node.put("startsAt", moment(plan.startsAt(), zone));
        node.put("readyAt", moment(plan.subject().readyAt(), zone));
        node.put("rawGrainKg", rounded(plan.outcome().rawGrainKg(), 3));
        node.put("finishedMaltKg", rounded(plan.outcome().finishedMaltKg(), 3));
        node.put("scaleMaltKg", rounded(plan.outcome().scaleMaltKg(), 3));
        node.put("colourEbc", rounded(plan.outcome().finished().kiln().colourEbc(), 2));
        var acts = node.putArray("acts");
        plan.acts().forEach(act -> write(act, zone, acts.addObject()));
        var phases = node.putArray("phases");
        plan.phases().forEach(phase -> write(phase, zone, phases.addObject()));
        var findings = node.putArray("findings");
        plan.findings().forEach(finding -> write(finding, findings.addObject()));
    }

    /** The document when there is no plan: why, in words. */
    public String refusal(List<Obstacle> obstacles) {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        var reasons = root.putArray("obstacles");
        obstacles.forEach(obstacle -> reasons.addObject().put("text", wording.obstacle(obstacle)));
        return JsonText.write(root);
    }

    private void write(Act act, ZoneId zone, ObjectNode node) {
        node.put("id", act.id());
        node.put("kind", act.kind().key());
        node.put("title", wording.actTitle(act));
        node.put("startsAt", moment(act.startsAt(), zone));
        node.put("minutes", act.work().toMinutes());
        node.put("earliest", moment(act.window().earliest(), zone));
        node.put("latest", moment(act.window().latest(), zone));
        node.put("hardLatest", moment(act.window().hardLatest(), zone));
        act.setting().place().ifPresent(place -> node.put("place", place));
        act.setting().setC().ifPresent(setC -> node.put("setC", rounded(setC, 1)));
        act.setting().waterL().ifPresent(waterL -> node.put("waterL", rounded(waterL, 2)));
        act.setting().depthCm().ifPresent(depthCm -> node.put("depthCm", rounded(depthCm, 1)));
        act.setting().gateFraction().ifPresent(gate -> node.put("gateMoistureWetBasisFraction", rounded(gate, 4)));
        write(act.expect(), node.putObject("expect"));
        node.put("whatToDo", wording.whatToDo(act));
        node.put("lookFor", wording.lookFor(act));
        node.put("why", wording.why(act));
        var cautions = node.putArray("cautions");
        act.cautions().forEach(caution -> cautions.add(wording.caution(caution)));
    }

    private static void write(Expectation expect, ObjectNode node) {
        node.put("massKg", rounded(expect.massKg(), 3));
        node.put("moistureWetBasisFraction", rounded(expect.moisture().wetBasisFraction(), 4));
        node.put("grainC", rounded(expect.grainC(), 1));
        expect.acrospireFraction().ifPresent(fraction -> node.put("acrospireFraction", rounded(fraction, 3)));
    }

    private static void write(Phase phase, ZoneId zone, ObjectNode node) {
        node.put("id", phase.id());
        node.put("kind", phase.kind().key());
        node.put("from", moment(phase.from(), zone));
        node.put("until", moment(phase.until(), zone));
        node.put("place", phase.place());
        node.put("moistureFrom", rounded(phase.moistureFrom().wetBasisFraction(), 4));
        node.put("moistureUntil", rounded(phase.moistureUntil().wetBasisFraction(), 4));
    }

    private void write(Finding finding, ObjectNode node) {
        node.put("severity", finding.severity().name().toLowerCase(Locale.ROOT));
        node.put("about", finding.about());
        node.put("text", wording.finding(finding));
    }

    private static String moment(Instant at, ZoneId zone) {
        return OffsetDateTime.ofInstant(at, zone).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }

    static BigDecimal rounded(double figure, int decimals) {
        return BigDecimal.valueOf(figure).setScale(decimals, RoundingMode.HALF_UP);
    }
}
