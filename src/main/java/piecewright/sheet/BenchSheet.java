package piecewright.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import piecewright.chart.Markup;
import piecewright.chart.PlanChart;
import piecewright.plan.Act;
import piecewright.plan.Finding;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.text.Decides;
import piecewright.text.DisplayUnits;
import piecewright.text.MomentFormat;
import piecewright.text.Phrases;
import piecewright.text.PlanFacts;
import piecewright.text.QuantityFormat;
import piecewright.text.Wording;

/**
 * One batch as one HTML file: no script, nothing fetched. Its first page has every time and target; weights, the
 * picture, how to do it and rescue rules follow. It prints in black and white and reads on a phone, where its boxes can
 * be ticked. Well-formed XML too.
 */
public final class BenchSheet {
    /** Stands in every sheet of ours and tells it from other pages. */
    public static final String OURS = "<meta name=\"generator\" content=\"piecewright\"";

    private final PlanRequest request;
    private final Plan plan;
    private final DisplayUnits units;
    private final SheetWords words;
    private final Markup page = new Markup();

    private BenchSheet(PlanRequest request, Plan plan, DisplayUnits units) {
        this.request = request;
        this.plan = plan;
        this.units = units;
        this.words = new SheetWords(
                new Wording(units, plan.subject().zone()),
                new QuantityFormat(units),
                new MomentFormat(plan.subject().zone(), units.locale()));
    }

    /** The sheet of the plan that answers this request; ends with a line end. */
    public static String of(PlanRequest request, Plan plan, DisplayUnits units, Known known) {
        return new BenchSheet(request, plan, units).write(known);
    }

    private String write(Known known) {
        page.open("html", "lang", "en").line();
        head();
        page.open("body").line();
        front();
        new StepLines(page, words, known, new Decides(request.style(), plan, units)).write(plan);
        minutes(known);
        new CheckBlocks(page, words).write(plan.checks());
        new WeightPage(page, words).write(request, plan);
        picture(known);
        new HowPage(page, words).write(plan);
        new RescuePage(page, words).write(request, plan);
        page.close().line().close();
        return "<!DOCTYPE html>\n" + page.written() + "\n";
    }

    private String title() {
        return Phrases.say("page.title", plan.subject().title(), plan.subject().lot());
    }

    private void head() {
        page.open("head").line();
        page.single("meta", "charset", "utf-8").line();
        page.single(
                        "meta",
                        "http-equiv",
                        "Content-Security-Policy",
                        "content",
                        "default-src 'none'; style-src 'unsafe-inline'")
                .line();
        page.single("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
                .line();
        page.single("meta", "name", "generator", "content", "piecewright").line();
        page.leaf("title", title()).line();
        page.leaf("style", styles()).line();
        page.close().line();
    }

    /** What the batch is. */
    private void front() {
        page.open("header").leaf("h1", title()).line();
        page.open("dl", "class", "facts").line();
        for (PlanFacts.Fact fact : PlanFacts.of(request, plan, units)) {
            page.leaf("dt", fact.name()).leaf("dd", fact.words()).line();
        }
        page.close().line().close().line();
    }

    /** Attended blocks, minute by minute. */
    private void minutes(Known known) {
        for (Act act : plan.acts()) {
            if (act.inner().isEmpty() || known.done().contains(act.id())) continue;
            page.open("section", "class", "block").line();
            page.leaf("h2", words.dated(act)).line();
            new MinutePage(page, words).write(act, act.inner().get());
            page.close().line();
        }
    }

    /** Its course as a picture, and what to know about it. */
    private void picture(Known known) {
        page.open("section", "class", "picture").line();
        page.open("figure").line();
        PlanChart.into(page, request, plan, units, known.followed());
        page.close().line();
        findings();
        page.close().line();
    }

    private void findings() {
        if (plan.findings().isEmpty()) return;
        List<Finding.PastFreeWindow> late = late();
        boolean together = late.size() > 1;
        page.open("ul", "class", "findings").line();
        if (together) together(late);
        plan.findings().stream()
                .filter(finding -> !(together && finding instanceof Finding.PastFreeWindow))
                .sorted(Comparator.comparing(Finding::severity).reversed())
                .forEach(finding -> page.open("li")
                        .leaf("b", Phrases.say("severity." + Phrases.key(finding.severity())))
                        .text(" (" + words.sentences().about(plan, finding) + "): "
                                + words.sentences().finding(finding))
                        .close()
                        .line());
        page.close().line();
    }

    private List<Finding.PastFreeWindow> late() {
        List<Finding.PastFreeWindow> late = new ArrayList<>();
        for (Finding finding : plan.findings()) if (finding instanceof Finding.PastFreeWindow one) late.add(one);
        return late;
    }

    /** Steps that come later than best, in one sentence: each says the same. */
    private void together(List<Finding.PastFreeWindow> late) {
        String acts = late.stream()
                .map(one -> Phrases.say(
                        "sheet.late.act",
                        words.sentences().about(plan, one),
                        words.quantities().time(one.by())))
                .collect(Collectors.joining(", "));
        page.open("li")
                .leaf("b", Phrases.say("severity." + Phrases.key(late.get(0).severity())));
        page.text(": " + Phrases.say("sheet.late.acts", Integer.toString(late.size()), acts));
        page.close().line();
    }

    private static String styles() {
        try (InputStream stream = Objects.requireNonNull(BenchSheet.class.getResourceAsStream("sheet.css"))) {
            return "\n" + new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
