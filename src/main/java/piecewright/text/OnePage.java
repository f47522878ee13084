package piecewright.text;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import piecewright.colour.ColourBand;
import piecewright.ensemble.Figure;
import piecewright.ensemble.Sureness;
import piecewright.plan.Act;
import piecewright.plan.Caution;
import piecewright.plan.Check;
import piecewright.plan.Finding;
import piecewright.plan.Finding.Severity;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;

/**
 * A whole plan on one screen or sheet of paper: what comes of it, when, how likely and what is worst; one line a step;
 * each caution once. {@link PlanPage} has the detail.
 */
public final class OnePage {
    /** Lines of a page at most. */
    public static final int MOST_LINES = 60;

    private static final int MOST_WARNINGS = 3;
    private static final String MARGIN = "  ";

    private final PlanRequest request;
    private final Plan plan;
    private final Sureness sureness;
    private final DisplayUnits units;
    private final Wording wording;
    private final QuantityFormat quantities;
    private final MomentFormat moments;

    private OnePage(PlanRequest request, Plan plan, Sureness sureness, DisplayUnits units) {
        this.request = request;
        this.plan = plan;
        this.sureness = sureness;
        this.units = units;
        this.wording = new Wording(units, plan.subject().zone());
        this.quantities = new QuantityFormat(units);
        this.moments = new MomentFormat(plan.subject().zone(), units.locale());
    }

    /** The page of the plan that answers this request; lines end with LF. */
    public static String of(PlanRequest request, Plan plan, Sureness sureness, DisplayUnits units) {
        return new OnePage(request, plan, sureness, units).write();
    }

    private String write() {
        StepRows rows = new StepRows(request.style(), plan, sureness, units);
        String before = String.join("", head()) + String.join("", checks());
        String after = String.join("", cautions()) + "\n" + Phrases.say("onepage.more") + "\n";
        String fullest = "";
        for (int most = MOST_WARNINGS; most > 0; most--) {
            String warned = String.join("", warnings(most));
            int room = MOST_LINES - lines(before) - lines(warned) - lines(after);
            fullest = before + rows.within(room) + warned + after;
            if (lines(fullest) <= MOST_LINES) break;
        }
        return fullest;
    }

    private static int lines(String part) {
        return (int) part.lines().count();
    }

    private List<String> head() {
        SurenessWords sure = new SurenessWords(units, plan.subject().zone());
        Plan.Outcome outcome = plan.outcome();
        ColourBand band = sureness.figure(Figure.COLOUR_EBC)
                .map(found -> new ColourBand(found.p10(), found.p90()))
                .orElseGet(() ->
                        ColourBand.of(request.style(), outcome.finished().kiln().colourEbc()));
        Duration work = plan.acts().stream().map(Act::work).reduce(Duration.ZERO, Duration::plus);
        String title =
                Phrases.say("page.title", plan.subject().title(), plan.subject().lot());
        List<String> head = new ArrayList<>();
        head.add(title + "\n");
        say(
                head,
                "onepage.what",
                quantities.mass(outcome.finishedMaltKg()),
                moments.dated(plan.subject().readyAt()),
                quantities.colour(outcome.finished().kiln().colourEbc()),
                quantities.colour(band.lowEbc()),
                quantities.colour(band.highEbc()));
        head.add(Paragraph.of("", sure.chance(sureness.verdict())));
        sure.mostLikelyProblem(plan, sureness.verdict()).ifPresent(worst -> head.add(Paragraph.of("", worst)));
        say(
                head,
                "onepage.grain",
                quantities.mass(outcome.rawGrainKg()),
                moments.dated(plan.startsAt()),
                quantities.mass(outcome.scaleMaltKg()),
                quantities.mass(Math.max(0, outcome.scaleMaltKg() - outcome.finishedMaltKg())));
        say(
                head,
                "onepage.work",
                Integer.toString(plan.acts().size()),
                quantities.time(work),
                plan.subject().zone().getId(),
                request.house().name());
        return head;
    }

    private static void say(List<String> lines, String key, String... figures) {
        lines.add(Paragraph.of("", Phrases.say(key, figures)));
    }

    private List<String> checks() {
        List<String> lines = new ArrayList<>();
        if (plan.checks().isEmpty()) return lines;
        heading(lines, "onepage.checks");
        for (Check check : plan.checks()) {
            lines.add(MARGIN + Phrases.say("onepage.check", moments.moment(check.startsAt()), wording.checkTitle(check))
                    + "\n");
        }
        return lines;
    }

    private List<String> warnings(int most) {
        List<Finding> warnings = plan.findings().stream()
                .filter(finding -> finding.severity() == Severity.WARNING)
                .sorted(Comparator.comparing(finding -> finding instanceof Finding.PastFreeWindow))
                .toList();
        List<String> lines = new ArrayList<>();
        if (warnings.isEmpty()) return lines;
        heading(lines, "onepage.warnings");
        for (Finding finding : warnings.subList(0, Math.min(most, warnings.size()))) {
            String about = wording.about(plan, finding);
            lines.add(Paragraph.of("- ", Phrases.say("onepage.warning", about, wording.finding(finding))));
        }
        int more = plan.findings().size() - Math.min(most, warnings.size());
        if (more > 0) lines.add(Phrases.say("onepage.warnings.more", Integer.toString(more)) + "\n");
        return lines;
    }

    /** Each danger once, with the steps at which it stands. */
    private List<String> cautions() {
        Map<Caution, Set<String>> where = new LinkedHashMap<>();
        for (Act act : plan.acts()) {
            for (Caution caution : act.cautions()) {
                where.computeIfAbsent(caution, key -> new LinkedHashSet<>()).add(ActNames.kind(act.kind()));
            }
        }
        List<String> lines = new ArrayList<>();
        if (where.isEmpty()) return lines;
        heading(lines, "onepage.cautions");
        where.forEach((caution, steps) -> lines.add(Paragraph.of(
                "- ",
                Phrases.say(
                        "onepage.caution",
                        wording.cautionName(caution),
                        wording.from(steps),
                        wording.shortCaution(caution)))));
        return lines;
    }

    private static void heading(List<String> lines, String key) {
        lines.add("\n" + Phrases.say(key) + "\n");
    }
}
