package piecewright.sheet;

import java.time.Duration;
import piecewright.assess.LotJudge;
import piecewright.chart.Markup;
import piecewright.plan.CouchRules;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.style.HotCouchSchedule;
import piecewright.style.MaltStyle;
import piecewright.style.StewSchedule;
import piecewright.text.Phrases;

/** What to do when something goes wrong, with the figures of this batch and style. */
record RescuePage(Markup page, SheetWords words) {
    /** Judgement: practice, a stew may be so far off its temperature and still do its work. */
    private static final double STEW_MISSES_K = 3;

    void write(PlanRequest request, Plan plan) {
        page.open("section", "class", "rescue").line();
        page.leaf("h2", Phrases.say("sheet.rescue", plan.subject().title())).line();
        page.leaf("p", Phrases.say("sheet.rescue.how")).line();
        page.open("dl").line();
        for (Rescue rescue : Rescue.of(request)) {
            String[] figures = figures(rescue, request, plan);
            page.leaf("dt", Phrases.say(rescue.key() + ".if", figures));
            page.leaf("dd", Phrases.say(rescue.key() + ".then", figures)).line();
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
            default -> ofHeat(rescue, request.style());
        };
    }

    /** Of rules about couch, stew and roast, which styles have or have not; none for rules without figures. */
    private String[] ofHeat(Rescue rescue, MaltStyle style) {
        var q = words.quantities();
        return switch (rescue) {
            case COUCH_STALLS -> new String[] {q.temperature(40)};
            case COUCH_TOO_HOT -> new String[] {q.temperature(hot(style).spreadAboveC()), q.temperature(60)};
            case COUCH_SOUR -> new String[] {q.temperature(25), q.temperature(45)};
            case COUCH_MISSED -> new String[] {q.time(hours(hot(style).longestHours()))};
            case COUCH_KILN_NOT_READY, POWER_FAILS_DEAD -> new String[] {q.time(hours(CouchRules.LOAD_HARD_HOURS))};
            case STEW_OFF -> stewOff(style.oven().stew().orElseThrow());
            case STEW_DRY ->
                new String[] {q.time(minutes(style.oven().stew().orElseThrow().longestMinutes()))};
            case ROAST_PALE ->
                new String[] {
                    q.temperature(style.oven().roast().orElseThrow().last().ovenC())
                };
            case ROAST_HOT -> new String[] {q.temperature(220)};
            case ROAST_UNEVEN ->
                new String[] {q.length(style.oven().roast().orElseThrow().depthCm())};
            default -> new String[0];
        };
    }

    private String[] stewOff(StewSchedule stew) {
        var q = words.quantities();
        return new String[] {q.temperatureStep(STEW_MISSES_K), q.temperature(stew.ovenC()), q.temperature(75)};
    }

    private static HotCouchSchedule hot(MaltStyle style) {
        return style.couches().hot().orElseThrow();
    }

    private static Duration hours(double hours) {
        return minutes(60 * hours);
    }

    private static Duration minutes(double minutes) {
        return Duration.ofMinutes(Math.round(minutes));
    }
}
