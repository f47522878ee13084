package piecewright.plan.search;

import java.util.function.Consumer;
import piecewright.plan.Rule;
import piecewright.plan.Rules;
import piecewright.plan.Setup;

/**
 * What the legs of one search share: the piece, its stops, the candidate instants, the rules.
 *
 * @param forms the piece and its tables
 * @param mostNights night acts allowed in the whole plan
 * @param beginnings which act can begin where
 * @param toll takes down what rules charge, if asked
 */
record Space(
        QuickForms forms, TimeGrid grid, Rules rules, KilnHeat heat, int mostNights, Beginnings beginnings, Toll toll) {

    Setup setup() {
        return forms.setup();
    }

    Stops stops() {
        return forms.stops();
    }

    /** Whether a wet couch does this piece any good. */
    boolean heapHelps() {
        return setup().heaping().isPresent()
                && setup().heaping().get().expected().helps();
    }

    /** Whether the act of this stop can begin at this candidate. */
    boolean canBegin(int stop, int at) {
        return beginnings.can(stop, at);
    }

    /** The last candidate, not before this one, at which a piece loaded here was not yet drying. */
    int notYetDrying(int loadAt) {
        if (stops().stewMinutes() == 0) return loadAt;
        int at = grid.firstAtOrAfter(dryingFromMinute(loadAt) + 1) - 1;
        while (!grid.coarse(at)) at--;
        return at;
    }

    /** The same of the load of this label; a piece taken up in the kiln has its stew behind it. */
    int notYetDrying(Label load) {
        return load.before() == null ? load.at() : notYetDrying(load.at());
    }

    /** Minute at which the bed of this load dries on: where it is taken up, else after its stew, if it has one. */
    int dryingFromMinute(Label load) {
        return load.before() == null ? grid.minute(load.at()) : dryingFromMinute(load.at());
    }

    /**
     * Minute until which somebody stays near from this act on. Of a piece taken up only the time to come counts: what
     * lay alone until now has done so.
     */
    int attendedUntil(Label from) {
        boolean past = from.before() == null && grid.minute(from.at()) < grid.openMinute();
        return past ? grid.attendedFromOpen() : grid.attendedUntil(from.at());
    }

    /** Minute at which the bed of a piece whose loading begins here starts to dry: after its stew, if it has one. */
    int dryingFromMinute(int loadAt) {
        return grid.minute(loadAt) + stops().stewMinutes();
    }

    /** What an act costs by itself at a candidate: its work and its hour. */
    double actCostMinutes(int stop, int at) {
        return beginnings.costMinutes(stop, at);
    }

    /** Cost of coming from one candidate to the act of a later stop, before what the grain makes it cost. */
    double stepCostMinutes(int fromAt, int stop, int at) {
        return rules.timePasses(grid.minute(at) - grid.minute(fromAt)) + actCostMinutes(stop, at);
    }

    /** Passes on what a rule charges for the step now weighed. */
    double charged(Rule rule, double minutes) {
        return toll.charged(rule, minutes);
    }

    /** Whether the act that begins at this candidate waits for the one before to be over; what was done is over. */
    private boolean waits(Label from, int at) {
        return from.before() == null || grid.minute(at) - grid.minute(from.at()) >= stops().workMinutes(from.stop());
    }

    /** Hands the label on unless its rules forbid it, the act before is not over or the nights are used up. */
    void arrive(Label from, int stop, int at, Grain grain, double ruleCostMinutes, Consumer<Label> sink) {
        int nights = from.nights() + (grid.night(at) ? 1 : 0);
        if (ruleCostMinutes < Double.POSITIVE_INFINITY && nights <= mostNights && waits(from, at)) {
            double cost = from.costMinutes() + stepCostMinutes(from.at(), stop, at) + ruleCostMinutes;
            sink.accept(new Label(stop, at, grain, cost, nights, from));
        }
        toll.nextStep();
    }

    /** Whether somebody must stay near while this level of heat is on. */
    boolean needsSomebody(int level) {
        var drying = setup().outfit().drying();
        boolean cures = level == heat.cureLevel();
        var control = (cures ? drying.curer() : drying.dryer()).control();
        double setC = cures ? drying.cureC() : stops().rungs().get(level).airOnC();
        return Rules.needsSomebody(control, setC);
    }
}
