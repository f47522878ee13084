package piecewright.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import piecewright.belief.Belief;
import piecewright.journal.AcrospireCount;
import piecewright.journal.Report;
import piecewright.journal.Spot;
import piecewright.learn.Verdict.Cause;
import piecewright.plan.ActKind;

/** What is questioned however little is believed. */
class PhysicsCheckTest {
    private static MadeUpBatch floored() {
        return new MadeUpBatch()
                .did(18, ActKind.SOAK)
                .weighed(26, 6.4)
                .did(26, ActKind.DRAIN)
                .did(38, ActKind.SOAK)
                .weighed(46, 7.2)
                .did(46, ActKind.DRAIN)
                .did(58, ActKind.SOAK)
                .weighed(62, 7.6)
                .did(62, ActKind.DRAIN)
                .did(70, ActKind.FLOOR);
    }

    private static List<Optional<Cause>> causes(MadeUpBatch batch) {
        Rerun rerun = batch.rerun();
        return new PhysicsCheck(rerun, rerun.at(MadeUpBatch.prior().values())).causes();
    }

    private static Optional<Cause> cause(MadeUpBatch batch, int observation) {
        return causes(batch).get(observation);
    }

    private static Optional<Cause> because(Cause cause) {
        return Optional.of(cause);
    }

    /** Scenario S3 of the reference: 15.54 kg, then 17.20 logged with a tub of 1.84 kg not tared, then 15.04. */
    @Test
    void theUntaredTubOfTheThirdScenarioIsQuestionedAndTeachesNothing() {
        double tub = 1.84 * 5 / 10;
        MadeUpBatch batch = floored().weighed(80, 7.60).weighed(92, 7.58 + tub).weighed(116, 7.52);
        assertEquals(
                List.of(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        because(Cause.VESSEL_NOT_TARED),
                        Optional.empty()),
                causes(batch));
        Belief prior = MadeUpBatch.prior();
        MadeUpBatch without = floored().weighed(80, 7.60).weighed(116, 7.52);
        double[] with = Estimator.estimate(prior, batch.rerun()).posterior().positions();
        double[] clean = Estimator.estimate(prior, without.rerun()).posterior().positions();
        for (int j = 0; j < with.length; j++) {
            assertEquals(clean[j], with[j], 0.01 * prior.axisSd(prior.unknowns().get(j)));
        }
    }

    @Test
    void weightGainedFromSprinklingIsNotQuestioned() {
        Report sprinkled = new Report.Did(ActKind.SPRINKLE, java.util.OptionalDouble.of(0.5));
        assertEquals(
                Optional.empty(),
                cause(floored().weighed(80, 7.5).at(84, sprinkled).weighed(92, 7.95), 4));
    }

    @Test
    void lessThanItsDryMatterIsQuestioned() {
        assertEquals(because(Cause.BELOW_DRY_MATTER), cause(floored().weighed(92, 3.0), 3));
    }

    @Test
    void poundsForKilogramsAreRecognised() {
        assertEquals(because(Cause.OTHER_UNIT), cause(floored().weighed(92, 7.55 / 0.45359237), 3));
        assertEquals(because(Cause.OTHER_UNIT), cause(floored().weighed(92, 7.55 * 0.45359237), 3));
    }

    @Test
    void fahrenheitForCelsiusIsRecognised() {
        assertEquals(because(Cause.OTHER_UNIT), cause(floored().at(92, new Report.TemperatureRead(58, Spot.CORE)), 3));
    }

    @Test
    void aHeapHotterThanLifeIsQuestioned() {
        Report hot = new Report.TemperatureRead(88, Spot.CORE);
        assertEquals(because(Cause.IMPOSSIBLE_TEMPERATURE), cause(floored().at(92, hot), 3));
    }

    @Test
    void aJumpNoHeapMakesIsQuestionedAtTheStrangerReading() {
        MadeUpBatch batch = floored()
                .at(80, new Report.TemperatureRead(14, Spot.CORE))
                .at(81, new Report.TemperatureRead(31, Spot.CORE))
                .at(83, new Report.TemperatureRead(15, Spot.CORE));
        assertEquals(
                List.of(Optional.empty(), because(Cause.JUMP), Optional.empty()),
                causes(batch).subList(3, 6));
    }

    @Test
    void cornsDoNotShrink() {
        Report half = new Report.AcrospiresCounted(new AcrospireCount(List.of(0, 2, 44, 4, 0, 0)));
        Report none = new Report.AcrospiresCounted(new AcrospireCount(List.of(48, 2, 0, 0, 0, 0)));
        List<Optional<Cause>> found =
                new ArrayList<>(causes(floored().at(130, half).at(160, none)));
        assertEquals(List.of(Optional.empty(), because(Cause.SHRUNK)), found.subList(3, 5));
    }

    @Test
    void nothingIsQuestionedInABatchThatWentAsForetold() {
        Belief prior = MadeUpBatch.prior();
        Rerun batch = MadeUpBatch.whole().rerun();
        Rerun read = MadeUpBatch.read(batch, prior.values(), new java.util.Random(1));
        List<Optional<Cause>> found = new PhysicsCheck(read, read.at(prior.values())).causes();
        assertEquals(List.of(), found.stream().flatMap(Optional::stream).toList());
    }
}
