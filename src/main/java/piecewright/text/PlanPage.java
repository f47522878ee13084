package piecewright.text;

import java.time.Duration;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import piecewright.ensemble.Sureness;
import piecewright.grain.LotMoisture;
import piecewright.plan.Act;
import piecewright.plan.Finding;
import piecewright.plan.Phase;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.process.Ledgers;
import piecewright.quantity.Moisture;
import piecewright.text.Columns.Side;

/** A plan as a page of plain text, about 108 characters wide, that a person can follow at the bucket. */
public final class PlanPage {
    private static final String MARGIN = "  ";

    private final PlanRequest request;
    private final Plan plan;
    private final DisplayUnits units;
    private final Optional<Sureness> sureness;
    private final Wording wording;
    private final QuantityFormat quantities;
    private final MomentFormat moments;
    private final SurenessWords words;
    private final StringBuilder page = new StringBuilder();

    /** What there is to print. */
    private record Told(PlanRequest request, Plan plan, Optional<Sureness> sureness) {}

    private PlanPage(Told told, DisplayUnits units) {
        this.request = told.request();
        this.plan = told.plan();
        this.sureness = told.sureness();
        ZoneId zone = plan.subject().zone();
        this.units = units;
        this.wording = new Wording(units, zone);
        this.quantities = new QuantityFormat(units);
        this.moments = new MomentFormat(zone, units.locale());
        this.words = new SurenessWords(units, zone);
    }

    /** The page of the plan that answers this request; lines end with LF. */
    public static String of(PlanRequest request, Plan plan, DisplayUnits units) {
        return new PlanPage(new Told(request, plan, Optional.empty()), units).write();
    }

    /** The same with a band at each act and a verdict. */
    public static String of(PlanRequest request, Plan plan, Sureness sureness, DisplayUnits units) {
        return new PlanPage(new Told(request, plan, Optional.of(sureness)), units).write();
    }

    private String write() {
        header();
        if (!plan.checks().isEmpty()) {
            heading("page.checks");
            page.append(new CheckPages(wording, moments).of(plan.checks()));
        }
        sureness.ifPresent(this::verdict);
        heading("page.acts");
        page.append(Paragraph.of("", Phrases.say("page.acts.legend")));
        page.append(new ActPages(wording, quantities, moments, bands()).of(plan.acts()));
        heading("page.phases");
        phases();
        heading("page.findings");
        findings();
        heading("page.weights");
        weights();
        return page.toString();
    }

    private void verdict(Sureness sure) {
        heading("page.sure");
        page.append(Paragraph.of("", words.verdict(plan, sure)));
        page.append(Paragraph.of("", words.piece(sure)));
    }

    /** Sentences by act id; none without an ensemble. */
    private Map<String, String> bands() {
        Map<String, String> bands = new HashMap<>();
        for (Act act : plan.acts()) {
            sureness.flatMap(sure -> sure.act(act.id())).ifPresent(band -> bands.put(act.id(), words.act(act, band)));
        }
        return bands;
    }

    private void heading(String key) {
        page.append('\n').append(Phrases.say(key)).append('\n');
    }

    private void header() {
        String title =
                Phrases.say("page.title", plan.subject().title(), plan.subject().lot());
        page.append(title).append('\n').append("=".repeat(title.length())).append('\n');
        Columns facts = new Columns(List.of(new Columns.Column("", Side.LEFT), new Columns.Column("", Side.LEFT)));
        PlanFacts.of(request, plan, sureness, units).forEach(fact -> facts.add(fact.name(), fact.words()));
        for (int i = 0; i < facts.size(); i++) page.append(facts.row(i)).append('\n');
    }

    private void phases() {
        Columns table = new Columns(List.of(
                ActPages.column("from", Side.LEFT),
                ActPages.column("until", Side.LEFT),
                ActPages.column("lasts", Side.RIGHT),
                ActPages.column("phase", Side.LEFT),
                ActPages.column("moistures", Side.LEFT),
                ActPages.column("place", Side.LEFT)));
        for (Phase phase : plan.phases()) {
            table.add(
                    moments.moment(phase.from()),
                    moments.moment(phase.until()),
                    quantities.time(Duration.between(phase.from(), phase.until())),
                    wording.phaseTitle(phase.kind()),
                    Phrases.say(
                            "page.moistures",
                            quantities.moisture(phase.moistureFrom()),
                            quantities.moisture(phase.moistureUntil())),
                    phase.place());
        }
        page.append(MARGIN).append(table.titles()).append('\n');
        for (int i = 0; i < table.size(); i++)
            page.append(MARGIN).append(table.row(i)).append('\n');
    }

    private void findings() {
        if (plan.findings().isEmpty())
            page.append(Phrases.say("page.findings.none")).append('\n');
        List<Finding> gravest = plan.findings().stream()
                .sorted(Comparator.comparing(Finding::severity).reversed())
                .toList();
        for (Finding finding : gravest) {
            String severity = Phrases.say("severity." + Phrases.key(finding.severity()));
            page.append(Paragraph.of(
                    "- ",
                    Phrases.say("page.finding", severity, wording.about(plan, finding), wording.finding(finding))));
        }
    }

    private void weights() {
        LotMoisture lot = request.lot().moisture();
        double dryKg = plan.outcome().finished().mass().initialDryMatterKg();
        String sure = Phrases.say(
                lot.measured() ? "page.weights.measured" : "page.weights.guessed",
                quantities.moisture(new Moisture(lot.sdFraction())));
        page.append(Paragraph.of(
                "",
                Phrases.say(
                        "page.weights.rule",
                        quantities.scaleMass(dryKg),
                        quantities.scaleMass(dryKg / (1 - lot.moisture().wetBasisFraction())),
                        quantities.moisture(lot.moisture()),
                        sure)));
        Ledgers.DryMatter lost = plan.outcome().ledgers().dryMatter();
        page.append(Paragraph.of(
                "",
                Phrases.say(
                        "page.weights.losses",
                        quantities.scaleMass(lost.leachedKg()),
                        quantities.scaleMass(lost.respiredKg()),
                        quantities.scaleMass(lost.rootletsKg()),
                        quantities.scaleMass(lost.handlingKg()))));
        if (lost.roastedKg() > 0) {
            page.append(Paragraph.of("", Phrases.say("page.weights.roasted", quantities.scaleMass(lost.roastedKg()))));
        }
        page.append(Paragraph.of("", Phrases.say("page.weights.trust")));
    }
}
