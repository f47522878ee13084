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
    private final double[] perHour = new double[POINTS];
    private final Rules rules;
    private final double mostEbc;

    private CureColour(Setup setup, Rules rules, double roomC) {
        MaltStyle style = setup.style();
        Outfit.Drying drying = setup.outfit().drying();
        this.rules = rules;
        this.startEbc = style.kiln().colourBase().startEbc() + DRYING_EBC;
        var parameters = setup.models().kiln();
        ColourKinetics kinetics = new ColourKinetics(parameters.colour());
        DryingBed bed = new DryingBed(parameters.drying());
        AirOn air = AirOn.of(
                drying.cureC(),
                drying.curingAir().airFlowM3PerHour(),
                roomC,
                setup.air().curer().humidityFraction());
        for (int i = 0; i < POINTS; i++) {
            double ratio = WETTEST_RATIO * i / (POINTS - 1);
            double grainC = bed.step(ratio, setup.dryMatterKg(), air).meanGrainC();
            perHour[i] = kinetics.formationEbcPerHour(
                    startEbc,
                    grainC,
                    ratio / (1 + ratio),
                    style.kiln().colourBase().substrateRatio());
        }
        this.mostEbc = mostEbc(style);
    }

    /** What the longest usual cure makes of it, through and through warm. */
    private double mostEbc(MaltStyle style) {
        return startEbc + style.kiln().cureHours().highHours() * perHour(0);
    }

    /** Of this piece; empty where something else than the cure makes its colour, or where one cure was solved for a colour. */
    static Optional<CureColour> of(Setup setup, Rules rules, double roomC) {
        MaltStyle style = setup.style();
        boolean cureMakesIt = style.couches().hot().isEmpty()
                && style.oven().stew().isEmpty()
                && style.oven().roast().isEmpty();
        boolean told = style.kiln().cureC().lowC() == style.kiln().cureC().highC();
        return cureMakesIt && !told ? Optional.of(new CureColour(setup, rules, roomC)) : Optional.empty();
    }

    /** Colour formed in one hour at such a moisture, EBC. */
    double perHour(double dryBasisRatio) {
        double position = Math.min(POINTS - 1.001, Math.max(0, dryBasisRatio / WETTEST_RATIO * (POINTS - 1)));
        int below = (int) position;
        return perHour[below] + (position - below) * (perHour[below + 1] - perHour[below]);
    }

    /** What malt pays in the end that gained so much in its cure, EBC. */
    double costMinutes(double gainedEbc) {
        return rules.colourAtTheEnd(startEbc + gainedEbc, mostEbc);
    }
}
