package piecewright.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import piecewright.belief.Belief;
import piecewright.belief.Priors;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.grain.GrainLot;
import piecewright.history.Contradiction;
import piecewright.house.House;
import piecewright.house.KitTraits;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import piecewright.journal.Spot;
import piecewright.learn.Lessons.Known;
import piecewright.learn.Lessons.Outcome;
import piecewright.plan.ActKind;
import piecewright.plan.Finding;
import piecewright.plan.ModelParameters;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.process.steep.SteepModel;
import piecewright.process.steep.SteepParameters;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;

/** From journals to what the next batch starts from. */
class LessonsTest {
    private static final Instant NOW = Instant.parse("2031-03-01T08:00:00Z");
    private static final Known FRESH = new Known(Learned.nothing(), Learned.nothing());
    private static final Unknown RATE = new Unknown(Trait.STEEP_RATE, MadeUpBatch.LOT.name());
    private static final Unknown DIAL = new Unknown(Trait.DIAL_OFFSET, "box kiln");
    private static final Lessons LESSONS = new Lessons(ModelParameters.defaults());

    private static Lessons.Batch batch(int number, MadeUpBatch told) {
        return new Lessons.Batch(new UUID(1, number), MadeUpBatch.REQUEST, 5, told.journal());
    }

    private static Outcome.Taught taught(Outcome outcome) {
        return assertInstanceOf(Outcome.Taught.class, outcome);
    }

    /** A steep that drank faster than usual. */
    private static MadeUpBatch fastSteep() {
        return new MadeUpBatch()
                .did(18, ActKind.SOAK)
                .weighed(26, 6.60)
                .did(26, ActKind.DRAIN)
                .did(38, ActKind.SOAK)
                .weighed(46, 7.45)
                .did(46, ActKind.DRAIN);
    }

    @Test
    void theNextBatchOfTheLotStartsFromWhatThisOneTaught() {
        Outcome.Taught first = taught(LESSONS.of(batch(1, fastSteep()), FRESH, NOW));
        Belief stated = Priors.lot(MadeUpBatch.LOT);
        Belief after = first.known().lot().believed(stated);
        assertTrue(after.value(RATE) > 1.15 * stated.value(RATE), "drinks faster: " + after.value(RATE));
        assertTrue(after.axisSd(RATE) < 0.8 * stated.axisSd(RATE));
        Outcome.Taught second = taught(LESSONS.of(batch(2, fastSteep()), first.known(), NOW));
        assertEquals(after.value(RATE), second.estimate().prior().value(RATE), 1e-9);
        Belief twice = second.known().lot().believed(stated);
        assertTrue(twice.axisSd(RATE) < after.axisSd(RATE));
    }

    @Test
    void learningFromTheSameBatchAgainTeachesNothingTwice() {
        Outcome.Taught once = taught(LESSONS.of(batch(1, fastSteep()), FRESH, NOW));
        Outcome.Taught again = taught(LESSONS.of(batch(1, fastSteep()), once.known(), NOW.plusSeconds(60)));
        Belief stated = Priors.lot(MadeUpBatch.LOT);
        assertEquals(
                once.known().lot().believed(stated).axisSd(RATE),
                again.known().lot().believed(stated).axisSd(RATE),
                1e-12);
        assertEquals(1, again.known().lot().chapters().size());
    }

    @Test
    void aBatchOthersBuiltUponIsNotLearnedFromAgain() {
        Outcome.Taught first = taught(LESSONS.of(batch(1, fastSteep()), FRESH, NOW));
        Outcome.Taught second = taught(LESSONS.of(batch(2, fastSteep()), first.known(), NOW));
        assertEquals(new Outcome.BuiltUpon(), LESSONS.of(batch(1, fastSteep()), second.known(), NOW));
    }

    @Test
    void anEmptyJournalTeachesNothingYet() {
        Lessons.Batch empty = new Lessons.Batch(new UUID(1, 1), MadeUpBatch.REQUEST, 5, Journal.empty());
        assertEquals(new Outcome.NothingYet(List.of()), LESSONS.of(empty, FRESH, NOW));
        assertEquals(
                new Outcome.NothingYet(List.of()),
                LESSONS.of(batch(1, new MadeUpBatch().did(18, ActKind.SOAK)), FRESH, NOW));
    }

    /** Scenario: a tub of 1.84 kg was not tared; the weighing is named and changes nothing that is learned. */
    @Test
    void whatCannotBeIsNamedAndTeachesNothing() {
        MadeUpBatch clean = fastSteep().did(58, ActKind.FLOOR).weighed(80, 7.40).weighed(116, 7.30);
        MadeUpBatch tub = fastSteep()
                .did(58, ActKind.FLOOR)
                .weighed(80, 7.40)
                .weighed(92, 7.38 + 1.84)
                .weighed(116, 7.30);
        Outcome.Taught with = taught(LESSONS.of(batch(1, tub), FRESH, NOW));
        Outcome.Taught without = taught(LESSONS.of(batch(1, clean), FRESH, NOW));
        assertEquals(
                List.of(9), with.leftOut().stream().map(Contradiction::entry).toList());
        assertEquals(List.of(), without.leftOut());
        assertEquals(
                without.estimate().posterior().value(RATE),
                with.estimate().posterior().value(RATE),
                1e-9);
    }

    @Test
    void onlyWhatCannotBeTeachesNothingYetAndIsNamed() {
        MadeUpBatch told = new MadeUpBatch().did(18, ActKind.SOAK).weighed(26, 66);
        Outcome.NothingYet nothing = assertInstanceOf(Outcome.NothingYet.class, LESSONS.of(batch(1, told), FRESH, NOW));
        assertEquals(1, nothing.leftOut().size());
    }

    @Test
    void fahrenheitForCelsiusIsRecognised() {
        MadeUpBatch told = fastSteep().did(58, ActKind.FLOOR).at(90, new Report.TemperatureRead(55, Spot.CORE));
        Outcome.Taught taught = taught(LESSONS.of(batch(1, told), FRESH, NOW));
        assertEquals(
                List.of(new Verdict.Questioned(Verdict.Cause.OTHER_UNIT)),
                taught.estimate().observations().stream()
                        .map(Estimate.Judged::verdict)
                        .filter(Verdict.Questioned.class::isInstance)
                        .toList());
    }

    /** Heat that was turned down and up again dries less than heat left on. */
    @Test
    void heatTurnedDownIsHeatTurnedDown() {
        assertTrue(dried(false) < dried(true) - 0.1, "kg at the end: " + dried(false) + ", " + dried(true));
    }

    private static double dried(boolean lowered) {
        MadeUpBatch told = fastSteep()
                .did(58, ActKind.FLOOR)
                .did(160, ActKind.LOAD)
                .did(161, ActKind.RAISE)
                .did(162, ActKind.RAISE)
                .did(162.5, lowered ? ActKind.LOWER : ActKind.STIR)
                .weighed(168, 5.5);
        Rerun rerun = told.rerun();
        return rerun.at(MadeUpBatch.prior().values())
                .figures()[rerun.observations().size() - 1];
    }

    /** A steep says nothing of the kiln, and what another batch taught of the kiln stays. */
    @Test
    void lotAndKitKeepTheirOwnAndNothingElse() {
        Learned.Chapter hotDial =
                new Learned.Chapter(new UUID(1, 9), NOW, Belief.independent(List.of(new Belief.Single(DIAL, 6, 1))));
        Known before = new Known(Learned.nothing(), new Learned(List.of(hotDial)));
        Known after = taught(LESSONS.of(batch(1, fastSteep()), before, NOW)).known();
        Belief house = Priors.house(MadeUpBatch.HOUSE);
        assertEquals(6, after.house().believed(house).value(DIAL), 1e-9);
        assertEquals(1, after.house().believed(house).axisSd(DIAL), 1e-9);
        for (Unknown unknown : after.lot().chapters().get(0).belief().unknowns()) {
            assertEquals(Trait.Owner.LOT, unknown.trait().owner(), unknown.toString());
        }
        for (Unknown unknown : after.house().chapters().get(1).belief().unknowns()) {
            assertEquals(Trait.Owner.KIT, unknown.trait().owner(), unknown.toString());
        }
    }

    @Test
    void aTaughtLotDrinksAsItWasFoundTo() {
        Outcome.Taught first = taught(LESSONS.of(batch(1, fastSteep()), FRESH, NOW));
        GrainLot lot = Taught.lot(MadeUpBatch.LOT, first.known().lot().told());
        double found = first.estimate().posterior().value(RATE);
        assertEquals(found, SteepModel.of(lot, SteepParameters.defaults()).rateRatio(), 1e-12);
        assertEquals(MadeUpBatch.LOT, Taught.lot(MadeUpBatch.LOT, Belief.nothing()));
    }

    @Test
    void aTaughtHouseBlowsAsItWasFoundToAndIsAsSureAsItWasTold() {
        Unknown flow = new Unknown(Trait.AIR_FLOW, "box kiln");
        Belief belief = Belief.independent(List.of(new Belief.Single(DIAL, 6, 1), new Belief.Single(flow, 9.5, 0.1)));
        Learned learned = new Learned(List.of(new Learned.Chapter(new UUID(1, 9), NOW, belief)));
        House house = Taught.house(MadeUpBatch.HOUSE, learned.told());
        var air = house.kit().heaters().get(0).air();
        assertEquals(9.5, air.airFlowM3PerHour(), 1e-9);
        assertFalse(air.flowMeasured(), "nobody said so in the house's file");
        PlanRequest wish = Taught.wish(MadeUpBatch.REQUEST, new Known(Learned.nothing(), learned));
        assertEquals(0.1, wish.belief().axisSd(flow), 1e-12);
        assertEquals(6.0, house.kit().learned().dialOffsetsK().get("box kiln"), 1e-9);
        assertEquals(KitTraits.unknown(), MadeUpBatch.HOUSE.kit().learned());
    }

    /** The plan of a taught lot in a taught house goes by it and says so; it wets the grain sooner. */
    @Test
    void thePlanGoesByWhatWasLearnedAndSaysSo() {
        Unknown flow = new Unknown(Trait.AIR_FLOW, "box kiln");
        Belief kit = Belief.independent(List.of(new Belief.Single(DIAL, 6, 1), new Belief.Single(flow, 9.5, 0.1)));
        Belief grain = Belief.independent(List.of(new Belief.Single(RATE, 1.6, 0.05)));
        PlanRequest stated = MadeUpBatch.REQUEST;
        PlanRequest taught = Taught.wish(
                stated,
                new Known(
                        new Learned(List.of(new Learned.Chapter(new UUID(1, 1), NOW, grain))),
                        new Learned(List.of(new Learned.Chapter(new UUID(1, 1), NOW, kit)))));
        PlanResult result = new Planner(ModelParameters.defaults()).plan(taught);
        var plan = assertInstanceOf(PlanResult.Planned.class, result).plan();
        double usual = SteepModel.of(stated.lot(), SteepParameters.defaults()).rateRatio();
        double flowM3PerHour = taught.house().kit().heaters().get(0).air().airFlowM3PerHour();
        assertTrue(plan.findings().contains(new Finding.HeaterLearned("house", "box kiln", flowM3PerHour, 6)));
        Finding.LotLearned lot = plan.findings().stream()
                .filter(Finding.LotLearned.class::isInstance)
                .map(Finding.LotLearned.class::cast)
                .findFirst()
                .orElseThrow();
        assertEquals(1.6 / usual, lot.steepRateRatio(), 1e-9);
        assertEquals(1, lot.growthRateRatio(), 1e-9);
    }

    /** Demo household and style; a couch that heats faster than foretold teaches the box it lay in. */
    @Test
    void aCouchTeachesItsBox() throws StoreException {
        PlanRequest request = new PlanRequest(
                StyleLibrary.builtIn().style("munich"),
                LotFile.read(Path.of("demo-data/lots/two-row-barley.json")),
                HouseFile.read(Path.of("demo-data/houses/cool-garage.json")),
                new PlanRequest.Amount.RawGrain(5),
                new PlanRequest.When.StartOn(LocalDate.of(2027, 3, 5)));
        MadeUpBatch told =
                new MadeUpBatch().did(18, ActKind.SOAK).did(26, ActKind.DRAIN).did(38, ActKind.SOAK);
        told.did(46, ActKind.DRAIN).did(58, ActKind.SOAK).did(64, ActKind.DRAIN).did(72, ActKind.FLOOR);
        told.did(170, ActKind.WITHER).did(180, ActKind.PACK);
        for (int hour = 3; hour <= 12; hour += 3) {
            told.at(180 + hour, new Report.TemperatureRead(18 + 1.6 * hour, Spot.CORE));
        }
        told.at(200, new Report.TemperatureRead(52, Spot.CORE)).did(210, ActKind.BREAK);
        Outcome.Taught taught =
                taught(LESSONS.of(new Lessons.Batch(new UUID(2, 1), request, 5, told.journal()), FRESH, NOW));
        Unknown heat = new Unknown(Trait.COUCH_HEAT, "picnic cooler");
        Unknown loss = new Unknown(Trait.BOX_LOSS, "picnic cooler");
        assertEquals(4, taught.estimate().observations().size(), "the reading after 48 °C teaches nothing");
        Belief before = Priors.house(request.house());
        Belief after = taught.known().house().believed(before);
        double faster = after.value(heat) / after.value(loss) * before.value(loss) / before.value(heat);
        assertTrue(faster > 1.1, "heat over loss " + faster);
        assertTrue(after.axisSd(heat) < before.axisSd(heat));
        House house = Taught.house(request.house(), taught.known().house().told());
        assertEquals(after.value(heat), house.kit().learned().couchHeatRatios().get("picnic cooler"), 1e-9);
        assertEquals(after.value(loss), house.kit().boxes().get(0).lossWPerK().orElseThrow(), 1e-9);
    }
}
