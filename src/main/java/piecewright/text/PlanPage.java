package piecewright.text;

import java.time.Duration;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import piecewright.ensemble.Band;
import piecewright.ensemble.Figure;
import piecewright.ensemble.Sureness;
import piecewright.grain.LotMoisture;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
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
    /** Judgement: eight in ten kilned malts come out within this ratio of the forecast colour; prior of the model. */
    private static final double COLOUR_BAND_RATIO = 1.3;

    private final PlanRequest request;
    private final Plan plan;
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

    private Band colourBand(double colourEbc) {
        return sureness.flatMap(sure -> sure.figure(Figure.COLOUR_EBC))
                .orElseGet(() -> new Band(colourEbc / COLOUR_BAND_RATIO, colourEbc, colourEbc * COLOUR_BAND_RATIO));
    }

    private void heading(String key) {
        page.append('\n').append(Phrases.say(key)).append('\n');
    }

    private void header() {
        String title =
                Phrases.say("page.title", plan.subject().title(), plan.subject().lot());
        page.append(title).append('\n').append("=".repeat(title.length())).append('\n');
        Plan.Outcome outcome = plan.outcome();
        Columns facts = new Columns(List.of(new Columns.Column("", Side.LEFT), new Columns.Column("", Side.LEFT)));
        fact(facts, "raw-grain", Phrases.say("page.raw-grain.is", quantities.mass(outcome.rawGrainKg())));
        fact(
                facts,
                "malt",
                Phrases.say(
                        "page.malt.is",
                        quantities.mass(outcome.finishedMaltKg()),
                        quantities.mass(outcome.scaleMaltKg())));
        double colourEbc = outcome.finished().kiln().colourEbc();
        Band colour = colourBand(colourEbc);
        fact(
                facts,
                "colour",
                Phrases.say(
                        "page.colour.is",
                        quantities.colour(colourEbc),
                        quantities.colour(colour.p10()),
                        quantities.colour(colour.p90())));
        fact(facts, "start", moments.dated(plan.startsAt()));
        plan.acts().stream()
                .filter(act -> act.kind() == ActKind.OFF)
                .findFirst()
                .ifPresent(off -> fact(
                        facts,
                        "off",
                        Phrases.say(
                                "page.off.is",
                                moments.dated(off.startsAt()),
                                quantities.moisture(outcome.endMoisture()))));
        fact(facts, "ready", moments.dated(plan.subject().readyAt()));
        fact(
                facts,
                "work",
                Phrases.say("page.work.is", Integer.toString(plan.acts().size()), quantities.time(work())));
        fact(
                facts,
                "clock",
                Phrases.say(
                        "page.clock.is",
                        plan.subject().zone().getId(),
                        request.house().name()));
        for (int i = 0; i < facts.size(); i++) page.append(facts.row(i)).append('\n');
    }

    private static void fact(Columns facts, String key, String is) {
        facts.add(Phrases.say("page." + key), is);
    }

    private Duration work() {
        return plan.acts().stream().map(Act::work).reduce(Duration.ZERO, Duration::plus);
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
                    "- ", Phrases.say("page.finding", severity, about(finding.about()), wording.finding(finding))));
        }
    }

    private String about(String about) {
        return plan.acts().stream()
                .filter(act -> act.id().equals(about))
                .findFirst()
                .map(wording::actTitle)
                .orElseGet(() -> List.of("lot", "house", "style", "plan").contains(about)
                        ? Phrases.say("about." + about)
                        : about);
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
        page.append(Paragraph.of("", Phrases.say("page.weights.trust")));
    }
}
