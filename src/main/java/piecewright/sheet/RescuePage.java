package piecewright.sheet;

import piecewright.assess.LotJudge;
import piecewright.chart.Markup;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.text.Phrases;

/** What to do when something goes wrong, with the figures of this batch and style. */
record RescuePage(Markup page, SheetWords words) {
    void write(PlanRequest request, Plan plan) {
        page.open("section", "class", "rescue").line();
        page.leaf("h2", Phrases.say("sheet.rescue", plan.subject().title())).line();
        page.leaf("p", Phrases.say("sheet.rescue.how")).line();
        page.open("dl").line();
        for (Rescue rescue : Rescue.of(request)) {
            page.leaf("dt", Phrases.say(rescue.key() + ".if"));
            page.leaf("dd", Phrases.say(rescue.key() + ".then", figures(rescue, request, plan)))
                    .line();
        }
        page.close().line().close().line();
    }

    /** The figures of one rule's sentence, in the order of its places. */
    private String[] figures(Rescue rescue, PlanRequest request, Plan plan) {
        var q = words.quantities();
        double dryKg = plan.outcome().finished().mass().initialDryMatterKg();
        double keepFraction = request.style().growth().keepMoistureFraction();
        return switch (rescue) {
            case SOAKED_TOO_LONG, TOO_WET -> new String[] {q.length(8), q.length(5)};
            case SHORT_OF_WATER ->
                new String[] {
                    q.volume(dryKg * (1 / (1 - keepFraction) - 1 / (1 - keepFraction + 0.02))), q.percent(keepFraction)
                };
            case TOO_WARM ->
                new String[] {
                    q.temperature(request.style().growth().warmestGrainC()
                            - LotJudge.effects(request.lot()).coolerK()),
                    q.length(5)
                };
            case TOO_COLD -> new String[] {q.temperature(10), q.temperature(35)};
            case UNEVEN -> new String[] {q.temperature(14)};
            case SHOOTS_OUT ->
                new String[] {q.percent(request.style().growth().acceptable().highFraction())};
            case KILN_NOT_READY -> new String[] {q.temperature(14), q.temperature(20)};
            case POWER_FAILS_WET -> new String[] {q.length(3), q.temperature(15), q.temperature(20)};
            case POWER_FAILS_DAMP -> new String[] {q.temperatureStep(5)};
            case HOT_WHILE_WET -> new String[] {q.temperature(60)};
            case SLACK -> new String[] {q.temperature(45), q.temperature(50)};
            default -> new String[0];
        };
    }
}
