package piecewright.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import piecewright.grain.GerminationCount;
import piecewright.grain.GrainKind;
import piecewright.grain.GrainLot;
import piecewright.grain.LotMoisture;
import piecewright.grain.LotObservations;
import piecewright.grain.LotObservations.Sign;
import piecewright.grain.LotObservations.Viability;
import piecewright.grain.LotTraits;
import piecewright.grain.Treatment;
import piecewright.quantity.Moisture;
import piecewright.store.LotFile;
import piecewright.store.StoreException;

class LotJudgeTest {
    private static final LocalDate TODAY = LocalDate.of(2031, 9, 1);

    private static GerminationCount dish(double waterMl, int germinated) {
        OptionalInt none = OptionalInt.empty();
        return new GerminationCount(waterMl, 100, none, none, OptionalInt.of(germinated));
    }

    private static GrainLot lot(GrainKind kind, Treatment treatment, GerminationCount... dishes) {
        return new GrainLot(
                "heap",
                kind,
                new LotMoisture(Moisture.ofWetBasisPercent(12), 0.003, true),
                List.of(dishes),
                new GrainLot.LotSize(
                        OptionalDouble.empty(), OptionalDouble.empty(), Optional.of(LocalDate.of(2031, 8, 1))),
                treatment,
                LotTraits.unknown());
    }

    private static LotJudgement judged(GerminationCount... dishes) {
        return judged(lot(GrainKind.BARLEY, Treatment.UNTREATED, dishes), LotObservations.none());
    }

    private static LotJudgement judged(GrainLot lot, LotObservations seen) {
        return LotJudge.judge(lot.withSeen(seen), TODAY);
    }

    private static LotObservations signs(Sign... signs) {
        return new LotObservations(
                Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Set.copyOf(Arrays.asList(signs)));
    }

    private static LotObservations alive(int alive) {
        return new LotObservations(
                Optional.of(new Viability(200, alive)), OptionalDouble.empty(), OptionalDouble.empty(), Set.of());
    }

    /** Common practice and intake limits: 95 % is the floor of good malt. */
    @Test
    void goodGrainIsMalted() {
        LotJudgement judgement = judged(dish(4, 98), dish(4, 97), dish(8, 95));
        assertEquals(Verdict.MALT_IT, judgement.verdict());
        assertEquals(LotJudgement.MouldRisk.LOW, judgement.effects().mould());
    }

    /** Reference: germination low and viability high is dormancy; wait, do not buy more. */
    @Test
    void aliveAndAsleepWaitsTwoWeeks() {
        LotJudgement judgement = judged(lot(GrainKind.BARLEY, Treatment.UNTREATED, dish(4, 80)), alive(196));
        assertTrue(judgement.reasons().stream().anyMatch(Reason.Dormant.class::isInstance));
        assertEquals(Verdict.WAIT_AND_RETEST, judgement.verdict());
        assertEquals(Optional.of(TODAY.plusWeeks(2)), judgement.retestOn());
    }

    @Test
    void deadIsNotAsleep() {
        LotJudgement judgement = judged(lot(GrainKind.BARLEY, Treatment.UNTREATED, dish(4, 80)), alive(165));
        assertEquals(Verdict.DO_NOT_MALT, judgement.verdict());
    }

    /** Common practice, no source: 85 to 89 % only as a minor share. */
    @Test
    void middlingGrainIsAMinorShare() {
        LotJudgement judgement = judged(lot(GrainKind.BARLEY, Treatment.UNTREATED, dish(4, 87)), alive(176));
        assertEquals(Verdict.ONLY_MINOR_SHARE, judgement.verdict());
    }

    @Test
    void youngGrainThatMayBeAsleepIsTestedForLifeFirst() {
        LotJudgement judgement = judged(dish(4, 88));
        assertEquals(Verdict.WAIT_AND_RETEST, judgement.verdict());
        assertEquals(
                LotJudgement.TestKind.VIABILITY, judgement.nextTests().get(0).kind());
    }

    /** Law and practice: treated seed is never malted, nor is seed that may be. */
    @Test
    void treatedAndSuspectSeedStopsWhateverElseIsTrue() {
        for (Treatment treatment : Treatment.values()) {
            for (Set<Sign> some : List.of(Set.<Sign>of(), EnumSet.of(Sign.DYED), EnumSet.of(Sign.SEED_GRADE))) {
                LotObservations seen =
                        new LotObservations(Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), some);
                GrainLot lot = lot(GrainKind.BARLEY, treatment, dish(4, 99), dish(8, 98));
                boolean stop = treatment == Treatment.TREATED
                        || some.contains(Sign.DYED)
                        || some.contains(Sign.SEED_GRADE) && treatment == Treatment.UNKNOWN;
                Verdict verdict = judged(lot, seen).verdict();
                assertEquals(stop, verdict == Verdict.DO_NOT_MALT, treatment + " " + some);
                Treatment planned = lot.withSeen(seen).safeTreatment();
                assertEquals(stop, planned == Treatment.TREATED, "what the planner is told");
            }
        }
    }

    @Test
    void mustyGrainIsLeft() {
        GrainLot lot = lot(GrainKind.BARLEY, Treatment.UNTREATED, dish(4, 99));
        assertEquals(Verdict.DO_NOT_MALT, judged(lot, signs(Sign.MUSTY)).verdict());
        assertEquals(Verdict.DO_NOT_MALT, judged(lot, signs(Sign.PINK)).verdict());
    }

    /** Published, second hand: rye 0.5 g/kg before 1 July 2025, 0.2 after; other cereals 0.2. */
    @Test
    void ergotLimitsChangeWithTheDay() {
        assertEquals(
                0.5, ErgotLimit.of(GrainKind.RYE, LocalDate.of(2025, 6, 30)).limitGPerKg());
        assertEquals(0.2, ErgotLimit.of(GrainKind.RYE, LocalDate.of(2025, 7, 1)).limitGPerKg());
        assertEquals(
                0.2, ErgotLimit.of(GrainKind.BARLEY, LocalDate.of(2025, 6, 30)).limitGPerKg());
        LotObservations seen =
                new LotObservations(Optional.empty(), OptionalDouble.empty(), OptionalDouble.of(0.3), Set.of());
        assertEquals(
                Verdict.DO_NOT_MALT,
                judged(lot(GrainKind.RYE, Treatment.UNTREATED, dish(4, 99)), seen)
                        .verdict());
    }

    /** Source of the limit: 7 CFR 201.55, two dishes of mean 92: 9 corns. */
    @Test
    void dishesTooFarApartAreCountedAgain() {
        assertEquals(Verdict.WAIT_AND_RETEST, judged(dish(4, 98), dish(4, 86)).verdict());
        assertTrue(
                judged(dish(4, 96), dish(4, 88)).reasons().stream().noneMatch(Reason.DishesDisagree.class::isInstance));
    }

    /** Class limits from memory. */
    @Test
    void moreWaterLengthensRests() {
        assertEquals(0, judged(dish(4, 97), dish(8, 92)).effects().longerRestHours());
        assertEquals(4, judged(dish(4, 97), dish(8, 72)).effects().longerRestHours());
        assertEquals(8, judged(dish(4, 97), dish(8, 71)).effects().longerRestHours());
        assertEquals(Verdict.WAIT_AND_RETEST, judged(dish(4, 97), dish(8, 50)).verdict());
    }

    /** Formula from memory: 60, 30 and 8 corns on three days give 6.81. */
    @Test
    void germinationIndexCountsDays() {
        GerminationCount dish =
                new GerminationCount(4, 100, OptionalInt.of(60), OptionalInt.of(90), OptionalInt.of(98));
        GrainLot lot = lot(GrainKind.BARLEY, Treatment.UNTREATED, dish);
        assertEquals(6.81, LotCounts.of(lot).indexRatio().orElseThrow(), 0.005);
    }

    @Test
    void oneDishOfNinetyTwoSaysHowManyCornsWouldSettleIt() {
        Reason.Growing growing =
                (Reason.Growing) judged(lot(GrainKind.BARLEY, Treatment.UNTREATED, dish(4, 92)), alive(186))
                        .reasons()
                        .get(0);
        assertEquals(0.90, growing.neededFraction());
        assertTrue(!growing.certain() && growing.settledBy().orElseThrow() > 400);
    }

    @Test
    void demonstrationLotsGetTheVerdictsTheirNamesPromise() throws StoreException {
        assertEquals(Verdict.MALT_IT, ofDemo("two-row-barley").verdict());
        assertEquals(Verdict.MALT_IT, ofDemo("water-sensitive-barley").verdict());
        assertEquals(Verdict.MALT_IT, ofDemo("winter-wheat").verdict());
        assertEquals(Verdict.DO_NOT_MALT, ofDemo("low-germination-barley").verdict());
        assertEquals(Verdict.DO_NOT_MALT, ofDemo("treated-seed").verdict());
    }

    private static LotJudgement ofDemo(String name) throws StoreException {
        return LotJudge.judge(LotFile.read(Path.of("demo-data/lots", name + ".json")), TODAY);
    }
}
