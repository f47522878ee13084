package piecewright.store;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import piecewright.ensemble.Sureness;
import piecewright.plan.Act;
import piecewright.plan.Check;
import piecewright.plan.Expectation;
import piecewright.plan.Finding;
import piecewright.plan.InnerSchedule;
import piecewright.plan.Obstacle;
import piecewright.plan.Phase;
import piecewright.plan.Plan;
import piecewright.process.couch.CouchProbe;
import piecewright.process.couch.Ignition.Outlook;
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
        return JsonText.write(document(plan));
    }

    /** One document as it is; several as one document that holds their plans in order. */
    public static String several(List<String> documents) {
        if (documents.size() == 1) return documents.get(0);
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        var plans = root.putArray("plans");
        for (String document : documents) {
            plans.add(JsonText.reread(document).get("plan"));
        }
        return JsonText.write(root);
    }

    /** The same with a band beside every figure, under its key with the suffix {@code Band}. */
    public String write(Plan plan, Sureness sureness) {
        ObjectNode root = document(plan);
        BandsJson.add(sureness, plan.subject().zone(), root);
        return JsonText.write(root);
    }

    private ObjectNode document(Plan plan) {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        put(root.putObject("plan"), plan);
        return root;
    }

    /** The plan's keys. */
    void put(ObjectNode node, Plan plan) {
        ZoneId zone = plan.subject().zone();
        node.put("style", plan.subject().style());
        node.put("title", plan.subject().title());
        node.put("lot", plan.subject().lot());
        node.put("timeZone", zone.getId());
        node.put("startsAt", moment(plan.startsAt(), zone));
        node.put("readyAt", moment(plan.subject().readyAt(), zone));
        node.put("rawGrainKg", rounded(plan.outcome().rawGrainKg(), 3));
        node.put("finishedMaltKg", rounded(plan.outcome().finishedMaltKg(), 3));
        node.put("scaleMaltKg", rounded(plan.outcome().scaleMaltKg(), 3));
        node.put("colourEbc", rounded(plan.outcome().finished().kiln().colourEbc(), 2));
        var checks = node.putArray("checks");
        plan.checks().forEach(check -> write(check, zone, checks.addObject()));
        var acts = node.putArray("acts");
        plan.acts().forEach(act -> write(act, zone, acts.addObject()));
        var phases = node.putArray("phases");
        plan.phases().forEach(phase -> write(phase, zone, phases.addObject()));
        var findings = node.putArray("findings");
        plan.findings().forEach(finding -> write(finding, findings.addObject()));
    }

    /** The document when there is no plan: why, and what would help, in words. */
    public String refusal(List<Obstacle> obstacles, List<String> remedies) {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        var reasons = root.putArray("obstacles");
        obstacles.forEach(obstacle -> write(obstacle, reasons.addObject()));
        var helps = root.putArray("remedies");
        remedies.forEach(remedy -> helps.addObject().put("text", remedy));
        return JsonText.write(root);
    }

    private void write(Check check, ZoneId zone, ObjectNode node) {
        node.put("id", check.id());
        node.put("kind", check.kind().key());
        node.put("of", check.about());
        node.put("title", wording.checkTitle(check));
        node.put("startsAt", moment(check.startsAt(), zone));
        node.put("minutes", check.work().toMinutes());
        node.put("latest", moment(check.latest(), zone));
        node.put("sdBefore", rounded(check.gain().beforeSd(), 4));
        node.put("sdAfter", rounded(check.gain().afterSd(), 4));
        if (check.gain().sampleG() > 0) node.put("sampleG", rounded(check.gain().sampleG(), 1));
        node.put("whatToDo", wording.checkToDo(check));
        node.put("why", wording.checkGain(check));
        node.put("enterResult", wording.checkEntry(check));
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
        act.setting().limitC().ifPresent(limitC -> node.put("limitC", rounded(limitC, 1)));
        act.setting().gateFraction().ifPresent(gate -> node.put("gateMoistureWetBasisFraction", rounded(gate, 4)));
        ObjectNode expect = node.putObject("expect");
        write(act.expect(), expect);
        if (act.kind().looksIntoAHeap()) {
            double meanC = act.expect().grainC();
            expect.put("middleProbeC", rounded(CouchProbe.MIDDLE.readingC(meanC), 1));
            expect.put("bottomProbeC", rounded(CouchProbe.BOTTOM.readingC(meanC), 1));
        }
        act.inner().ifPresent(inner -> write(act, inner, node.putObject("inner")));
        node.put("whatToDo", wording.whatToDo(act));
        node.put("lookFor", wording.lookFor(act));
        node.put("why", wording.why(act));
        var cautions = node.putArray("cautions");
        act.cautions().forEach(caution -> cautions.add(wording.caution(caution)));
        var kinds = node.putArray("cautionKinds");
        act.cautions().forEach(caution -> kinds.add(caution.key()));
    }

    private void write(Act act, InnerSchedule inner, ObjectNode node) {
        node.put("loadKg", rounded(inner.loadKg(), 3));
        node.put("depthCm", rounded(inner.depthCm(), 1));
        node.put("lagMinutes", rounded(inner.lag().toSeconds() / 60.0, 1));
        node.put("ovenErrorK", rounded(inner.ovenErrorK(), 1));
        var steps = node.putArray("steps");
        for (InnerSchedule.InnerStep step : inner.steps()) {
            ObjectNode one = steps.addObject();
            one.put("minute", step.at().toMinutes());
            if (step.at().toSecondsPart() > 0) one.put("second", step.at().toSecondsPart());
            one.put("kind", step.kind().key());
            step.ovenC().ifPresent(ovenC -> one.put("ovenC", rounded(ovenC, 1)));
            step.dialC().ifPresent(dialC -> one.put("dialC", rounded(dialC, 1)));
            ObjectNode expect = one.putObject("expect");
            expect.put("grainC", rounded(step.expect().grainC(), 1));
            expect.put("moistureWetBasisFraction", rounded(step.expect().moistureFraction(), 4));
            expect.put("colourEbc", rounded(step.expect().colourEbc(), 1));
            one.put("text", wording.innerStep(act, step));
        }
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
        if (phase.attended()) node.put("attended", true);
    }

    private void write(Obstacle obstacle, ObjectNode node) {
        if (obstacle instanceof Obstacle.CouchTooSmall) node.put("outlook", Outlook.WILL_NOT.key());
        node.put("text", wording.obstacle(obstacle));
    }

    private void write(Finding finding, ObjectNode node) {
        if (finding instanceof Finding.CouchHeats heats) {
            node.put("outlook", heats.outlook().key());
            node.put("sizeRatio", rounded(Math.min(100, heats.sizeRatio()), 2));
        }
        node.put("severity", finding.severity().name().toLowerCase(Locale.ROOT));
        node.put("about", finding.about());
        node.put("text", wording.finding(finding));
    }

    static String moment(Instant at, ZoneId zone) {
        return OffsetDateTime.ofInstant(at, zone).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }

    static BigDecimal rounded(double figure, int decimals) {
        return BigDecimal.valueOf(figure).setScale(decimals, RoundingMode.HALF_UP);
    }
}
