package piecewright.plan.search;

import java.util.Optional;
import piecewright.plan.Outfit;
import piecewright.plan.Rules;
import piecewright.plan.Setup;
import piecewright.process.kiln.AirOn;
import piecewright.process.kiln.ColourKinetics;
import piecewright.process.kiln.DryingBed;
import piecewright.style.MaltStyle;

/**
 * Colour a cure adds, quarter of an hour by quarter of an hour as the bed dries and so warms: a cure counts by what the
 * grain gets, not from the turn of the dial. Only of styles whose cure alone makes their colour.
 */
final class CureColour {
    private static final int POINTS = 49;
    /** Judgement: no malt goes into its cure wetter; the end of the table, kg per kg of dry matter. */
    private static final double WETTEST_RATIO = 0.12;
    /** Judgement: what drying adds to the colour of green malt before the cure, EBC. */
    private static final double DRYING_EBC = 0.1;

    private final double startEbc;
    private final double[][] perHour;
    private final Rules rules;
    private final double leastEbc;
    private final double mostEbc;

    private CureColour(Setup setup, Stops stops, Rules rules, double roomC) {
        MaltStyle style = setup.style();
        this.rules = rules;
        this.startEbc = style.kiln().colourBase().startEbc() + DRYING_EBC;
        int cure = stops.rungs().size();
        this.perHour = new double[cure + 1][];
        Outfit.Drying drying = setup.outfit().drying();
        for (int level = 1; level < cure; level++) {
            double airOnC = stops.rungs().get(level).airOnC();
            perHour[level] = rates(setup, airOnC, drying.dryer().air().airFlowM3PerHour(), roomC);
        }
        perHour[cure] = rates(setup, drying.cureC(), drying.curingAir().airFlowM3PerHour(), roomC);
        this.leastEbc = startEbc + style.kiln().cureHours().lowHours() * perHour(cure, 0);
        this.mostEbc = startEbc + style.kiln().cureHours().highHours() * perHour(cure, 0);
    }

    private double[] rates(Setup setup, double airOnC, double airFlowM3PerHour, double roomC) {
        var parameters = setup.models().kiln();
        ColourKinetics kinetics = new ColourKinetics(parameters.colour());
        DryingBed bed = new DryingBed(parameters.drying());
        AirOn air =
                AirOn.of(airOnC, airFlowM3PerHour, roomC, setup.air().curer().humidityFraction());
        double substrate = setup.style().kiln().colourBase().substrateRatio();
        double[] rates = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            double ratio = WETTEST_RATIO * i / (POINTS - 1);
            double grainC = bed.step(ratio, setup.dryMatterKg(), air).meanGrainC();
            rates[i] = kinetics.formationEbcPerHour(startEbc, grainC, ratio / (1 + ratio), substrate);
        }
        return rates;
    }

    /** Of this piece; empty where something else than the cure makes its colour, or where one cure was solved for a colour. */
    static Optional<CureColour> of(Setup setup, Stops stops, Rules rules, double roomC) {
        MaltStyle style = setup.style();
        boolean cureMakesIt = style.couches().hot().isEmpty()
                && style.oven().stew().isEmpty()
                && style.oven().roast().isEmpty();
        boolean told = style.kiln().cureC().lowC() == style.kiln().cureC().highC();
        return cureMakesIt && !told ? Optional.of(new CureColour(setup, stops, rules, roomC)) : Optional.empty();
    }

    /**
     * Colour gained at a heat since drying there began, step by step, EBC.
     *
     * @param dryBasisRatio moisture at each step, kg per kg dry
     */
    double[] gainedEbc(int level, double[] dryBasisRatio, double stepHours) {
        double[] gained = new double[dryBasisRatio.length];
        for (int i = 1; i < gained.length; i++) {
            double middle = (dryBasisRatio[i - 1] + dryBasisRatio[i]) / 2;
            gained[i] = gained[i - 1] + perHour(level, middle) * stepHours;
        }
        return gained;
    }

    private double perHour(int level, double dryBasisRatio) {
        double[] rates = perHour[level];
        double position = Math.min(POINTS - 1.001, Math.max(0, dryBasisRatio / WETTEST_RATIO * (POINTS - 1)));
        int below = (int) position;
        return rates[below] + (position - below) * (rates[below + 1] - rates[below]);
    }

    /** What malt pays in the end that gained so much in its cure, EBC. */
    double costMinutes(double gainedEbc) {
        return rules.colourAtTheEnd(startEbc + gainedEbc, mostEbc);
    }

    /** What colour gained while the malt waits below its cure costs even if the cure then takes its least hours. */
    double waitingMinutes(double gainedEbc) {
        double without = rules.colourAtTheEnd(leastEbc, mostEbc);
        return Math.max(0, rules.colourAtTheEnd(leastEbc + gainedEbc, mostEbc) - without);
    }
}
