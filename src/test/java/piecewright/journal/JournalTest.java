package piecewright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import piecewright.journal.Report.Corrected;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.Weighed;
import piecewright.plan.ActKind;

class JournalTest {
    private static final Instant EVENING = Instant.parse("2031-01-17T20:00:00Z");
    private static final Instant MORNING = Instant.parse("2031-01-18T06:00:00Z");
    private static final Instant NOON = Instant.parse("2031-01-18T11:00:00Z");

    private static Entry entry(int number, Instant at, Report report) {
        return new Entry(number, at, NOON, Optional.of("steep-2.drain"), report);
    }

    private static Entry correction(int number, Instant at, int of, Report instead) {
        return new Entry(number, at, NOON, Optional.empty(), new Corrected(of, Optional.of(instead)));
    }

    @Test
    void whatHappenedFirstComesFirstHoweverLateItWasWritten() {
        Journal journal = Journal.empty()
                .with(entry(1, MORNING, Did.of(ActKind.SOAK)))
                .with(entry(2, EVENING, Did.of(ActKind.DRAIN)));
        assertEquals(
                List.of(2, 1), journal.effective().stream().map(Entry::number).toList());
        assertEquals(3, journal.nextNumber());
    }

    /** "-0 C" is said back as it is kept. */
    @Test
    void zeroIsZeroWhicheverSideItIsReadFrom() {
        assertEquals(new Report.TemperatureRead(0, Spot.GRAIN), new Report.TemperatureRead(-0.0, Spot.GRAIN));
    }

    @Test
    void aCorrectionTakesThePlaceOfWhatItCorrectsAndKeepsItsNumberAndAct() {
        Journal journal = Journal.empty()
                .with(entry(1, EVENING, Weighed.net(17.20)))
                .with(correction(2, MORNING, 1, Weighed.net(15.36)));
        assertEquals(List.of(entry(1, MORNING, Weighed.net(15.36))), journal.effective());
        assertEquals(2, journal.entries().size(), "nothing is overwritten");
    }

    @Test
    void theLastOfSeveralCorrectionsCountsEvenOfACorrection() {
        Journal journal = Journal.empty()
                .with(entry(1, EVENING, Weighed.net(17.20)))
                .with(correction(2, EVENING, 1, Weighed.net(15.3)))
                .with(correction(3, EVENING, 2, Weighed.net(15.36)));
        assertEquals(List.of(entry(1, EVENING, Weighed.net(15.36))), journal.effective());
    }

    @Test
    void anEntryCanBeMadeVoidAndCalledBack() {
        Journal undone = Journal.empty()
                .with(entry(1, EVENING, Did.of(ActKind.DRAIN)))
                .with(entry(2, MORNING, new Corrected(1, Optional.empty())));
        assertEquals(List.of(), undone.effective());
        Journal back = undone.with(correction(3, MORNING, 1, Did.of(ActKind.DRAIN)));
        assertEquals(List.of(entry(1, MORNING, Did.of(ActKind.DRAIN))), back.effective());
    }

    @Test
    void aCorrectionOfALineThatWasLostChangesNothing() {
        Journal journal = new Journal(
                List.of(entry(2, EVENING, Did.of(ActKind.DRAIN)), correction(4, MORNING, 3, Weighed.net(5))));
        assertEquals(List.of(entry(2, EVENING, Did.of(ActKind.DRAIN))), journal.effective());
    }

    @Test
    void numbersOnlyRise() {
        Journal journal = Journal.empty().with(entry(2, EVENING, Did.of(ActKind.DRAIN)));
        assertThrows(IllegalArgumentException.class, () -> journal.with(entry(2, NOON, Did.of(ActKind.SOAK))));
        assertThrows(IllegalArgumentException.class, () -> correction(2, NOON, 2, Did.of(ActKind.SOAK)));
    }

    /** Tare: the tub of scenario S3 weighs 1.84 kg; 17.20 on the scale is 15.36 of grain. */
    @Test
    void theGrainWeighsWhatTheScaleShowsWithoutTheVessel() {
        assertEquals(15.36, new Weighed(17.20, Optional.of(new Report.Tare("tub", 1.84))).netKg(), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> new Weighed(1.5, Optional.of(new Report.Tare("tub", 1.84))));
    }

    /** Class means 0.1, 0.25, 0.5, 0.75, 0.95, 1.1 are a Judgement; the mean of 30 corns by hand. */
    @Test
    void aCountOfAcrospiresHasAMeanAQuartileAndAnOvergrownShare() {
        AcrospireCount count = new AcrospireCount(List.of(0, 3, 8, 12, 6, 1));
        assertEquals((3 * 0.25 + 8 * 0.5 + 12 * 0.75 + 6 * 0.95 + 1.1) / 30, count.meanFraction(), 1e-12);
        assertEquals(0.5, count.quantileFraction(0.25));
        assertEquals(0.75, count.quantileFraction(0.75));
        assertEquals(1 / 30.0, count.overgrownFraction(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> new AcrospireCount(List.of(0, 0, 0, 0, 0, 0)));
    }
}
