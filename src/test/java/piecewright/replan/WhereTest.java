package piecewright.replan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import piecewright.history.Contradiction;
import piecewright.journal.Report;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.Weighed;
import piecewright.plan.ActKind;
import piecewright.quantity.Moisture;
import piecewright.replan.Where.Water;

class WhereTest {
    private static final Story PALE = Story.PALE;
    private static final Duration HOUR = Duration.ofHours(1);

    private static Instant at(String id) {
        return PALE.act(id).startsAt();
    }

    @Test
    void beforeTheFirstSoakTheGrainIsDryAndTheSoakComesNext() {
        Where where = PALE.where(at("steep-1.soak").minus(HOUR.multipliedBy(5)));
        assertEquals(HOUR.multipliedBy(5), where.next().in());
        assertEquals("steep-1.soak", where.next().act().orElseThrow().id());
        assertEquals(0.121, where.state().mass().moisture().wetBasisFraction(), 1e-9);
    }

    /** By hand: 5 kg less 1.5 % floaters at 12.1 % is 4.329 kg dry; leached 0.5 to 1 % of it; 1 − 4.30/7.20 = 40.3 %. */
    @Test
    void moistureFollowsFromWeightCorrectedForWhatLeached() {
        Where where = PALE.byPlanUntil("steep-2.drain")
                .tells(at("steep-2.drain"), Weighed.net(7.2))
                .did("steep-2.drain", Duration.ZERO)
                .where(at("steep-2.drain").plusSeconds(60));
        double dryKg = where.state().mass().dryMatterKg();
        assertTrue(dryKg < 4.329 * 0.996 && dryKg > 4.329 * 0.985, "dry " + dryKg);
        Water.Known known = (Water.Known) where.water();
        assertEquals(1 - dryKg / 7.2, known.moistureFraction(), 1e-4);
        assertEquals(Optional.of(at("steep-2.drain")), known.weighedAt());
        assertTrue(
                known.sdFraction() > 0.003 && known.sdFraction() < 0.01, "about half a point: " + known.sdFraction());
    }

    @Test
    void moistureNeverWeighedIsLessSure() {
        Where forecast =
                PALE.byPlanUntil("steep-3.soak").where(at("steep-2.drain").plus(HOUR));
        Water.Known known = (Water.Known) forecast.water();
        assertEquals(Optional.empty(), known.weighedAt());
        assertTrue(known.sdFraction() >= 0.015);
    }

    /** Scenario S1: 4.935 kg de-rooted would be minus 6 % by the naive formula; nothing negative is ever said. */
    @Test
    void aWeightTooLowToTellSaysAtOrBelowFivePercent() {
        double dryKg =
                PALE.where(at("kiln.off")).plan().outcome().finished().mass().dryMatterKg();
        Story story = PALE.byPlanUntil("kiln.off").tells(at("kiln.off"), Weighed.net(dryKg * 0.99));
        Where where = story.did("kiln.off", Duration.ZERO).where(at("kiln.off").plusSeconds(60));
        assertEquals(
                0.05, assertInstanceOf(Water.AtOrBelow.class, where.water()).moistureFraction());
        assertTrue(where.state().mass().waterKg() > 0);
        assertEquals(List.of(), where.account().contradictions());
    }

    @Test
    void aDriedSampleTellsWhereWeightCannot() {
        Where where = PALE.byPlanUntil("kiln.off")
                .tells(at("kiln.off"), new Report.SampleDried(Moisture.ofWetBasisPercent(4.1)))
                .where(at("kiln.off"));
        assertEquals(0.041, ((Water.Known) where.water()).moistureFraction(), 1e-6);
    }

    /** Water kg = dry matter × (1/(1 − M2) − 1/(1 − M1)): practice, by the balance of water. */
    @Test
    void aDryBedIsToldTheWaterItLacks() {
        Where where = PALE.byPlanUntil("floor.turn-4")
                .tells(at("floor.turn-3").plusSeconds(60), Weighed.net(6.9))
                .where(at("floor.turn-3").plusSeconds(60));
        double dryKg = where.state().mass().dryMatterKg();
        double lacks = dryKg * (1 / (1 - 0.42) - 1 / (1 - (1 - dryKg / 6.9)));
        assertEquals(lacks, where.help().sprinkleKg().orElseThrow(), 1e-6);
        assertTrue(lacks > 0.2, "a real case: " + lacks);
    }

    @Test
    void theBedInTheKilnIsToldWhenItWillLieLoose() {
        Instant load = at("kiln.load");
        Duration early = PALE.byPlanUntil("kiln.stir-1")
                .where(load.plus(HOUR))
                .help()
                .breaksIn()
                .orElseThrow();
        Duration later = PALE.byPlanUntil("kiln.stir-1")
                .where(load.plus(HOUR.multipliedBy(3)))
                .help()
                .breaksIn()
                .orElseThrow();
        assertTrue(early.minus(later).minusHours(2).abs().toMinutes() <= 35, early + ", " + later);
    }

    @Test
    void anActNobodyToldOfIsTakenAsDoneWhenALaterOneWas() {
        Story story = PALE.byPlanUntil("steep-2.soak").tells(at("steep-2.drain"), Did.of(ActKind.DRAIN));
        Where where = story.where(at("steep-2.drain").plusSeconds(60));
        assertEquals(List.of("steep-2.soak"), where.account().inferred());
        assertEquals(
                List.of("steep-1.soak", "steep-1.drain", "steep-2.soak", "steep-2.drain"),
                where.account().visits().stream().map(visit -> visit.id()).toList());
    }

    @Test
    void anOverdueActIsSaidWithHowLong() {
        Where where = PALE.byPlanUntil("floor.turn-3").where(at("floor.turn-3").plus(HOUR.multipliedBy(2)));
        assertEquals(HOUR.multipliedBy(-2), where.next().in());
        assertEquals(
                List.of("floor.turn-3"),
                where.next().overdue().stream().map(v -> v.id()).toList());
    }

    @Test
    void anActThatCannotComeThereIsAskedAbout() {
        Where where = PALE.byPlanUntil("floor.turn-4")
                .tells(at("floor.turn-3").plus(HOUR), Did.of(ActKind.SOAK))
                .where(at("floor.turn-3").plus(HOUR.multipliedBy(2)));
        Contradiction question = where.account().contradictions().get(0);
        assertEquals(
                "floor.spread",
                assertInstanceOf(Contradiction.OutOfOrder.class, question).afterActId());
    }

    @Test
    void weightsThatCannotBeAreAskedAbout() {
        Instant drained = at("steep-2.drain");
        Story story = PALE.byPlanUntil("steep-2.drain").tells(at("steep-1.drain"), Weighed.net(6.4));
        assertInstanceOf(
                Contradiction.GotLighter.class,
                story.tells(drained, Weighed.net(5.9))
                        .where(drained)
                        .account()
                        .contradictions()
                        .get(0));
        assertInstanceOf(
                Contradiction.NoSuchWeight.class,
                story.tells(drained, Weighed.net(16))
                        .where(drained)
                        .account()
                        .contradictions()
                        .get(0));
    }

    @Test
    void aCorrectedEntryIsBelieved() {
        Instant weighed = at("floor.turn-3").plusSeconds(60);
        Story story = PALE.byPlanUntil("floor.turn-4")
                .tells(at("floor.spread"), Weighed.net(7.6))
                .tells(weighed, Weighed.net(9.3));
        int wrong = story.journal().nextNumber() - 1;
        assertEquals(1, story.where(weighed).account().contradictions().size());
        Where mended = story.tells(weighed, new Report.Corrected(wrong, Optional.of(Weighed.net(7.46))))
                .where(weighed);
        assertEquals(List.of(), mended.account().contradictions());
        assertEquals(7.46, mended.state().mass().totalKg(), 1e-6);
    }
}
