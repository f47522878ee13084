package piecewright.sheet;

import java.util.List;
import piecewright.chart.Markup;
import piecewright.plan.Act;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.quantity.Moisture;
import piecewright.text.Phrases;

/** The table that turns this batch's weights into moisture. */
record WeightPage(Markup page, SheetWords words) {
    /** Judgement: drained grain holds half a point more or less of film. */
    private static final double FILM_FRACTION = 0.005;

    void write(PlanRequest request, Plan plan) {
        WeightTable table = WeightTable.of(plan);
        page.open("section", "class", "weights").line();
        page.leaf("h2", Phrases.say("sheet.weights")).line();
        page.leaf("p", Phrases.say("sheet.weights.how")).line();
        page.open("table").line();
        head(table);
        page.open("tbody").line();
        for (int percent : table.percents()) row(table, percent);
        page.close().line();
        doubt(table, request, plan);
        page.close().line();
        page.leaf("p", Phrases.say("sheet.weights.dry")).line();
        page.leaf("p", Phrases.say("page.weights.trust"), "class", "trust").line();
        page.close().line();
    }

    private void head(WeightTable table) {
        page.open("thead").open("tr").leaf("th", Phrases.say("page.column.moisture"), "scope", "col");
        for (WeightTable.Column column : table.columns()) page.leaf("th", name(column.acts()), "scope", "col");
        page.close().close().line();
    }

    private String name(List<Act> acts) {
        String first = words.sentences().actTitle(acts.get(0));
        String last = words.sentences().actTitle(acts.get(acts.size() - 1));
        return acts.size() == 1 ? first : Phrases.say("sheet.weights.until", first, last);
    }

    private void row(WeightTable table, int percent) {
        page.open("tr").leaf("th", words.quantities().moisture(Moisture.ofWetBasisPercent(percent)), "scope", "row");
        for (WeightTable.Column column : table.columns()) {
            String entry =
                    column.entryKg(percent).map(words.quantities()::scaleMass).orElse("");
            page.leaf("td", entry, "class", column.expects(percent) ? "expected" : "");
        }
        page.close().line();
    }

    private void doubt(WeightTable table, PlanRequest request, Plan plan) {
        double dryKg = plan.outcome().finished().mass().initialDryMatterKg();
        double rawKg = dryKg / (1 - request.lot().moisture().moisture().wetBasisFraction());
        WeighDoubt doubt = new WeighDoubt(
                rawKg, request.lot().moisture(), request.house().kit().scale());
        page.open("tfoot").open("tr").leaf("th", Phrases.say("sheet.weights.doubt"), "scope", "row");
        for (WeightTable.Column column : table.columns()) {
            Act last = column.acts().get(column.acts().size() - 1);
            double lostFraction = Math.max(0, 1 - column.dryKg() / dryKg);
            double sd = doubt.sdFraction(last.expect().moisture().wetBasisFraction(), lostFraction);
            double all = column.drained() ? Math.hypot(sd, FILM_FRACTION) : sd;
            page.leaf("td", words.quantities().moisture(new Moisture(all)));
        }
        page.close().close().line();
    }
}
