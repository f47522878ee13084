package piecewright.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import piecewright.plan.Act;
import piecewright.plan.Bill;
import piecewright.plan.Plan;
import piecewright.plan.Rule;
import piecewright.plan.RunnerUp;
import piecewright.text.Columns.Side;

/** What a plan costs, act by act and rule by rule, and why the next best one lost; in cost-minutes. */
public final class CostPage {
    private static final String MARGIN = "  ";
    /** Less than so many cost-minutes are no difference. */
    private static final double HARDLY_MINUTES = 0.5;

    private final Plan plan;
    private final MomentFormat moments;
    private final DecimalWords decimals;

    public CostPage(Plan plan, DisplayUnits units) {
        this.plan = plan;
        this.moments = new MomentFormat(plan.subject().zone(), units.locale());
        this.decimals = new DecimalWords(units.locale());
    }

    /** The page; lines end with LF. */
    public String of(Optional<RunnerUp> runnerUp) {
        StringBuilder page = new StringBuilder(Phrases.say("costs.title")).append('\n');
        page.append(Paragraph.of("", Phrases.say("costs.legend")));
        Columns table = new Columns(List.of(
                ActPages.column("start", Side.LEFT),
                ActPages.column("act", Side.LEFT),
                ActPages.column("cost", Side.RIGHT),
                ActPages.column("made-up", Side.LEFT)));
        for (Act act : plan.acts()) add(table, act);
        page.append(MARGIN).append(table.titles()).append('\n');
        for (int i = 0; i < table.size(); i++)
            page.append(MARGIN).append(table.row(i)).append('\n');
        page.append(Paragraph.of("", Phrases.say("costs.all", minutes(plan.costMinutes()), sums())));
        page.append(Paragraph.of("", runnerUp.map(this::lost).orElse(Phrases.say("costs.runner-up.none"))));
        return page.toString();
    }

    private void add(Columns table, Act act) {
        List<Bill.Item> items = plan.bill().of(act.id());
        double cost = items.stream().mapToDouble(Bill.Item::costMinutes).sum();
        List<String> parts = items.stream()
                .map(item -> Phrases.say("costs.part", rule(item.rule()), minutes(item.costMinutes())))
                .toList();
        String start = moments.moment(act.startsAt());
        table.add(start, ActNames.title(act.kind(), act.id()), minutes(cost), String.join(", ", parts));
    }

    private String sums() {
        return String.join(
                ", ",
                plan.bill().byRule().entrySet().stream()
                        .sorted(Map.Entry.<Rule, Double>comparingByValue().reversed())
                        .map(sum -> Phrases.say("costs.part", rule(sum.getKey()), minutes(sum.getValue())))
                        .toList());
    }

    /** Why the next best plan lost. */
    public String lost(RunnerUp runnerUp) {
        double more = runnerUp.moreMinutes(plan);
        String start = moments.moment(runnerUp.plan().startsAt());
        String dearer = differences(runnerUp, 1);
        String cheaper = differences(runnerUp, -1);
        String key = "costs.runner-up." + verdict(more, cheaper);
        return Phrases.say(
                key, start, minutes(runnerUp.plan().costMinutes()), minutes(Math.abs(more)), dearer, cheaper);
    }

    private static String verdict(double moreMinutes, String cheaper) {
        if (Math.abs(moreMinutes) < HARDLY_MINUTES) return "same";
        if (moreMinutes < 0) return "cheaper";
        return cheaper.isEmpty() ? "dearer" : "both";
    }

    private String differences(RunnerUp runnerUp, int sign) {
        return String.join(
                ", ",
                runnerUp.because().stream()
                        .filter(one -> sign * one.moreMinutes() > 0)
                        .map(one -> Phrases.say("costs.part", rule(one.rule()), minutes(sign * one.moreMinutes())))
                        .toList());
    }

    private static String rule(Rule rule) {
        return Phrases.say("rule." + rule.key());
    }

    private String minutes(double minutes) {
        return decimals.plain(minutes, minutes < 9.95 ? 1 : 0);
    }
}
