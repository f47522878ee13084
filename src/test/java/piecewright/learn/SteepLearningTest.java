package piecewright.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import piecewright.belief.Belief;
import piecewright.belief.Priors;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.belief.Values;
import piecewright.process.Metabolism;
import piecewright.process.MetabolismParameters;
import piecewright.process.PieceState;
import piecewright.process.Surroundings;
import piecewright.process.steep.AirRest;
import piecewright.process.steep.Bath;
import piecewright.process.steep.Immersion;
import piecewright.process.steep.Standing;
import piecewright.process.steep.SteepModel;
import piecewright.process.steep.SteepParameters;
import piecewright.quantity.Moisture;

/** What weighings of a steep teach, against worked examples and published weighings. */
class SteepLearningTest {
    private static final Instant ORIGIN = Instant.parse("2031-02-01T08:00:00Z");
    private static final String LOT = "lot";
    private static final Unknown RATE = new Unknown(Trait.STEEP_RATE, LOT);
    private static final Unknown SATURATION = new Unknown(Trait.SATURATION, LOT);
    private static final Unknown BURST = new Unknown(Trait.BURST, LOT);
    private static final Belief RATE_ALONE =
            Belief.independent(List.of(new Belief.Single(RATE, 1.2, Priors.STEEP_RATE_SD)));
    private static final Belief ALL_THREE = Belief.independent(List.of(
            new Belief.Single(RATE, 1.2, Priors.STEEP_RATE_SD),
            new Belief.Single(SATURATION, 1.10, Priors.SATURATION_SD),
            new Belief.Single(BURST, 0.13, Priors.BURST_SD)));

    private static Observation weighed(double hours, double percent, double sdPercent) {
        return new Observation(
                "w", ORIGIN.plusSeconds(Math.round(hours * 3600)), Figure.MOISTURE, percent / 100, sdPercent / 100);
    }

    private static SteepModel model(Values values, double chitGain) {
        SteepParameters parameters = SteepParameters.defaults().withLeaching(SteepParameters.Leaching.none());
        SteepParameters.Uptake uptake = parameters
                .uptake()
                .withChitGainRatio(chitGain)
                .withSaturationRatio(values.of(Trait.SATURATION, LOT, SteepParameters.Uptake.SATURATION_RATIO))
                .withBurstRatio(values.of(Trait.BURST, LOT, SteepParameters.Uptake.BURST_RATIO));
        return new SteepModel(values.of(Trait.STEEP_RATE, LOT, 1.2), 0, parameters.withUptake(uptake));
    }

    /** Practice lot of the reference: 8 h wet, 12 h dry, 8 h, 12 h, 6 h at 15 °C from 12 %, chitted after 30 h. */
    private static Prediction practiceSteep(int weighings) {
        return Prediction.of(values -> java.util.Arrays.copyOf(drained(values), weighings));
    }

    private static double[] drained(Values values) {
        MetabolismParameters usual = MetabolismParameters.defaults();
        Metabolism still = new Metabolism(
                0,
                1,
                new MetabolismParameters(
                        16.5 * 30 / SteepModel.CHITTED_AT_RATIO,
                        usual.chitSpreadRatio(),
                        usual.growthSumKelvinDays(),
                        usual.heatAt20WPerKg(),
                        usual.heatQ10Ratio(),
                        usual.steepShareRatio(),
                        usual.rootletQ10Ratio()));
        Surroundings air = Surroundings.constant(ORIGIN, 15, 0.75);
        SteepModel model = model(values, 0.5);
        Immersion soak = new Immersion(model, still, air, Standing.BUCKET, new Bath(15, 8));
        AirRest rest = new AirRest(model, still, air, Standing.BUCKET);
        PieceState raw = PieceState.rawGrain(5, Moisture.ofWetBasisPercent(12), 0, 3, 15);
        PieceState second = soak.run(rest.run(soak.run(raw, 0, 8), 8, 20), 20, 28);
        PieceState third = soak.run(rest.run(second, 28, 40), 40, 46);
        return new double[] {moisture(second), moisture(third)};
    }

    private static double moisture(PieceState state) {
        double ratio = state.steep().coreRatio() + state.steep().outerRatio();
        return ratio / (1 + ratio);
    }

    /**
     * Worked in the reference: prior ln m ~ N(ln 1.2, .3²), weighings good to .5 pp. 42.0 % at 28 h teaches m = 1.350
     * (sd .073) and foretells 46.06 %; with 46.75 % at 46 h it becomes 1.418 (sd .058), 42.28 and 46.32 %.
     */
    @Test
    void theWorkedFitsOfThePracticeLotComeOut() {
        Estimate one = Estimator.estimate(RATE_ALONE, practiceSteep(1), List.of(weighed(28, 42.0, 0.5)));
        assertEquals(1.350, one.posterior().value(RATE), 0.005);
        assertEquals(0.073, one.posterior().axisSd(RATE), 0.003);
        assertEquals(0.4606, drained(one.posterior().values())[1], 0.0004);
        Estimate two = Estimator.estimate(
                RATE_ALONE, practiceSteep(2), List.of(weighed(28, 42.0, 0.5), weighed(46, 46.75, 0.5)));
        assertEquals(1.418, two.posterior().value(RATE), 0.005);
        assertEquals(0.058, two.posterior().axisSd(RATE), 0.003);
        assertEquals(0.4228, two.observations().get(0).expected().middle(), 0.0004);
        assertEquals(0.4632, two.observations().get(1).expected().middle(), 0.0004);
    }

    /**
     * Published: Molina-Cano et al. 1995, J. Inst. Brew. 101:79 (data set barleyh20 of the R package pbANOVA), means of
     * two replicates of four lots weighed wet; start 12 % assumed, temperature not stated and folded into the rate.
     */
    private static final double[] HOURS = {5, 10, 15, 20, 30, 35};

    private static final double[][] LOTS_PERCENT = {
        {24.5, 28.6, 31.5, 33.9, 37.5, 38.7},
        {31.1, 35.3, 38.0, 39.8, 42.4, 43.2},
        {27.6, 32.5, 35.7, 38.2, 41.2, 42.0},
        {29.4, 34.0, 36.4, 38.5, 40.7, 41.6}
    };

    private static double[] continuous(Values values, int weighings) {
        SteepModel model = model(values, 0);
        double[] figures = new double[weighings];
        double burst = values.of(Trait.BURST, LOT, SteepParameters.Uptake.BURST_RATIO);
        for (int i = 0; i < weighings; i++) {
            double core = model.coreAfterSoak(Moisture.ofWetBasisPercent(12).dryBasisRatio(), HOURS[i]);
            figures[i] = Moisture.ofDryBasisRatio(core + burst).wetBasisFraction();
        }
        return figures;
    }

    /** Root mean square error, points, of the last four weighings of all lots foretold after the first few. */
    private static double foretoldRms(Belief prior, int taught, double sdPercent) {
        double sum = 0;
        for (double[] lot : LOTS_PERCENT) {
            List<Observation> first = new ArrayList<>();
            for (int i = 0; i < taught; i++) first.add(weighed(HOURS[i], lot[i], sdPercent));
            Belief now = Estimator.estimate(prior, Prediction.of(values -> continuous(values, taught)), first)
                    .posterior();
            double[] foretold = continuous(now.values(), HOURS.length);
            for (int i = 2; i < HOURS.length; i++) sum += Math.pow(100 * foretold[i] - lot[i], 2);
        }
        return Math.sqrt(sum / (4 * LOTS_PERCENT.length));
    }

    /**
     * Reference: 1.08 points by the rate alone. With saturation and burst free the answer depends on how far the
     * weighings are trusted: taken as a kitchen's (.5 points) .88; taken as what they are, means of two samples on a
     * laboratory balance that the same equations fit to .0005–.003 kg/kg, .02 to .12 points, just under .7.
     */
    @Test
    void twoWeighingsForetellTheRestOfPublishedLots() {
        assertEquals(2.16, foretoldRms(ALL_THREE, 0, 0.5), 0.01, "the usual lot");
        assertEquals(1.08, foretoldRms(RATE_ALONE, 2, 0.5), 0.01, "rate alone");
        assertEquals(0.88, foretoldRms(ALL_THREE, 2, 0.5), 0.01, "all three, weighed in a kitchen");
        assertTrue(foretoldRms(ALL_THREE, 2, 0.1) <= 0.70, "all three, weighed in a laboratory");
    }

    /** The posterior of three correlated unknowns against weighing a fine grid of them by brute force. */
    @Test
    void theIntervalsMatchBruteForce() {
        List<Observation> first = new ArrayList<>();
        for (int i = 0; i < 4; i++) first.add(weighed(HOURS[i], LOTS_PERCENT[2][i], 0.5));
        Belief posterior = Estimator.estimate(ALL_THREE, Prediction.of(values -> continuous(values, 4)), first)
                .posterior();
        double[] sums = new double[7];
        int half = 24;
        for (int a = -half; a <= half; a++) {
            for (int b = -half; b <= half; b++) {
                for (int c = -half; c <= half; c++)
                    weigh(sums, first, posterior, 4.0 * a / half, 4.0 * b / half, 4.0 * c / half);
            }
        }
        for (int j = 0; j < 3; j++) {
            Unknown unknown = ALL_THREE.unknowns().get(j);
            double mean = sums[1 + j] / sums[0];
            double sd = Math.sqrt(sums[4 + j] / sums[0] - mean * mean);
            assertEquals(posterior.positions()[j], mean, 0.35 * sd, unknown.toString());
            assertEquals(sd, posterior.axisSd(unknown), 0.15 * sd, unknown.toString());
        }
    }

    private static void weigh(
            double[] sums, List<Observation> observations, Belief posterior, double a, double b, double c) {
        double[] at = posterior.positions();
        double[] by = {a, b, c};
        for (int j = 0; j < 3; j++)
            at[j] += by[j] * posterior.axisSd(ALL_THREE.unknowns().get(j));
        double[] centre = ALL_THREE.positions();
        double cost = 0;
        for (int j = 0; j < 3; j++) {
            cost += Math.pow(
                    (at[j] - centre[j]) / ALL_THREE.axisSd(ALL_THREE.unknowns().get(j)), 2);
        }
        double[] figures = continuous(ALL_THREE.valuesAt(at), observations.size());
        for (int i = 0; i < figures.length; i++)
            cost += Math.pow((observations.get(i).value() - figures[i]) / 0.005, 2);
        double weight = Math.exp(-cost / 2);
        sums[0] += weight;
        for (int j = 0; j < 3; j++) {
            sums[1 + j] += weight * at[j];
            sums[4 + j] += weight * at[j] * at[j];
        }
    }
}
