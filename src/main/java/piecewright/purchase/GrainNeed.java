package piecewright.purchase;

import java.util.Optional;
import piecewright.assess.Counted;
import piecewright.assess.LotCounts;
import piecewright.grain.GrainLot;
import piecewright.plan.Plan;
import piecewright.plan.SetupMaker;
import piecewright.plan.Yield;
import piecewright.process.Metabolism;
import piecewright.process.PieceState;
import piecewright.quantity.Moisture;

/**
 * What a batch takes.
 *
 * @param waterfall kg by kg, by the plan's figures or by the reference course's
 * @param byWeightKg grain if the scale alone counted and ungerminated corns were malt; never buy by it
 * @param lowGrainKg with highGrainKg the likely range of the grain needed, 80 %
 */
public record GrainNeed(
        String style,
        GrainLot lot,
        Waterfall waterfall,
        double byWeightKg,
        double lowGrainKg,
        double highGrainKg,
        Basis basis) {
    /** Source: 90th percentile of the normal distribution, for a range of 80 %. */
    private static final double DEVIATIONS_RATIO = 1.2816;
    /** Judgement: dry counts of samples for the tests and for weighing, on top of a batch. */
    public static final double TEST_SAMPLES_KG = 0.075;

    /** Where the figures come from. */
    public enum Basis {
        PLAN,
        /** The plan, its range by the ensemble. */
        ENSEMBLE,
        REFERENCE_COURSE
    }

    /** The grain of a plan. */
    public static GrainNeed of(Plan plan, GrainLot lot) {
        Plan.Outcome outcome = plan.outcome();
        return of(plan.subject().title(), lot, outcome.rawGrainKg(), outcome.finished(), Basis.PLAN);
    }

    /** The grain of a batch without a house. */
    static GrainNeed of(String style, GrainLot lot, double grainKg, PieceState finished, Basis basis) {
        double growing = growing(lot);
        double usefulKg = Yield.usefulMaltKg(finished, growing);
        Waterfall waterfall = Waterfall.of(grainKg, lot.moisture().moisture().dryBasisRatio(), finished, usefulKg);
        double cleaning = lot.size().floatersFraction().orElse(SetupMaker.USUAL_FLOATERS_FRACTION);
        Losses losses = Losses.of(finished, cleaning, growing);
        Moisture malt = finished.mass().moisture();
        double scaleRatio = losses.scaleRatio(lot.moisture().moisture(), malt, growing);
        double sd = Math.sqrt(variance(losses, lot));
        return new GrainNeed(
                style,
                lot,
                waterfall,
                usefulKg / scaleRatio,
                grainKg * Math.exp(-DEVIATIONS_RATIO * sd),
                grainKg * Math.exp(DEVIATIONS_RATIO * sd),
                basis);
    }

    /** With highMaltKg the likely range of the malt from this grain, 80 %. */
    public double lowMaltKg() {
        return waterfall.grainKg() * waterfall.usefulMaltKg() / highGrainKg;
    }

    public double highMaltKg() {
        return waterfall.grainKg() * waterfall.usefulMaltKg() / lowGrainKg;
    }

    /** The same where the plan was followed through many ways things may be: that much malt one time in ten, or nine. */
    public GrainNeed likely(double lowMaltKg, double highMaltKg) {
        double perMaltKg = waterfall.grainKg() * waterfall.usefulMaltKg();
        return new GrainNeed(
                style, lot, waterfall, byWeightKg, perMaltKg / highMaltKg, perMaltKg / lowMaltKg, Basis.ENSEMBLE);
    }

    static double growing(GrainLot lot) {
        return Metabolism.germinatingFraction(lot);
    }

    /** True when malt that is malt and weight on the scale part company. */
    public boolean growsPoorly() {
        return growing(lot) < 0.95;
    }

    /** Variance of the logarithm of the grain needed, from what is not known well. */
    private static double variance(Losses losses, GrainLot lot) {
        LossDoubts doubts = LossDoubts.defaults();
        boolean weighed = lot.size().floatersFraction().isPresent();
        double cleaning = weighed ? doubts.weighedRatio() : doubts.guessedRatio();
        double sum = square(cleaning * share(losses.cleaningFraction()));
        sum += square(doubts.leachingRatio() * share(losses.leachingFraction()));
        sum += square(doubts.respirationRatio() * share(losses.respirationFraction()));
        sum += square(doubts.rootletsRatio() * share(losses.rootletsFraction()));
        sum += square(doubts.guessedRatio() * share(losses.handlingFraction()));
        sum += square(
                lot.moisture().sdFraction() / (1 - lot.moisture().moisture().wetBasisFraction()));
        sum += square(doubts.endMoistureFraction());
        return sum + square(growingDoubt(lot, doubts));
    }

    private static double growingDoubt(GrainLot lot, LossDoubts doubts) {
        Optional<Counted> energy = LotCounts.of(lot).energy();
        if (energy.isEmpty()) return doubts.untestedGrowingRatio();
        var interval = energy.get().wilson();
        return (interval.highFraction() - interval.lowFraction()) / (2 * 1.96) / growing(lot);
    }

    private static double share(double lossFraction) {
        return lossFraction / (1 - lossFraction);
    }

    private static double square(double value) {
        return value * value;
    }
}
