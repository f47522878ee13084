package piecewright.assess;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import piecewright.assess.LotJudgement.MouldRisk;
import piecewright.assess.LotJudgement.NextTest;
import piecewright.assess.LotJudgement.PlanEffects;
import piecewright.assess.LotJudgement.TestKind;
import piecewright.grain.GrainLot;
import piecewright.grain.LotObservations;
import piecewright.grain.LotObservations.Sign;
import piecewright.grain.Treatment;

/** Weighs what is known of a lot. Pure: the same lot on the same day gets the same verdict. */
public final class LotJudge {
    /** Source: general floor for good malt, Montana State and Canadian practice. */
    public static final double GOOD_FRACTION = 0.95;
    /** Judgement: at home malt from 90 % is possible, with more ungerminated corns and more mould. */
    public static final double POSSIBLE_FRACTION = 0.90;
    /** Judgement: under 85 % the dead corns rot and heat the piece unevenly. */
    public static final double LEAST_FRACTION = 0.85;
    /** Judgement: a lot that lives so far and does not grow is asleep. */
    private static final double ALIVE_FRACTION = 0.97;
    /** Judgement: new barley comes at 7 or more; from memory. */
    private static final double SLOW_INDEX_RATIO = 7;
    /** Source: US grade No. 1 two-rowed barley, peeled and broken at most 5 %. */
    private static final double BROKEN_FRACTION = 0.05;
    /** Source: upper end of intake limits for malting barley, 12 to 13.5 %. */
    private static final double DAMP_FRACTION = 0.135;
    /** Judgement: dormancy mostly goes within 4 to 10 weeks of harvest. */
    private static final int DORMANT_WEEKS = 10;
    /** Judgement: fresh harvest is tested again every two weeks. */
    private static final int RETEST_WEEKS = 2;
    /** Judgement: two dishes of 100 corns are the least that is worth reading. */
    private static final int USUAL_CORNS = 200;

    private static final List<Sign> SPOILT = List.of(Sign.MUSTY, Sign.MOULDY, Sign.PINK);

    private LotJudge() {}

    public static LotJudgement judge(GrainLot lot, LocalDate today) {
        LotCounts counts = LotCounts.of(lot);
        List<Reason> reasons = new ArrayList<>();
        seed(lot, reasons);
        spoilt(lot, today, reasons);
        growing(lot, counts, today, reasons);
        water(counts, reasons);
        corns(lot, counts, reasons);
        reasons.sort(Comparator.comparing(Reason::verdict).reversed());
        Verdict verdict = reasons.get(0).verdict();
        Optional<LocalDate> retestOn =
                verdict == Verdict.WAIT_AND_RETEST ? Optional.of(retest(reasons, today)) : Optional.empty();
        List<NextTest> next = nextTests(lot, counts, reasons);
        return new LotJudgement(verdict, reasons, next, retestOn, counts, effects(lot, counts));
    }

    private static void seed(GrainLot lot, List<Reason> reasons) {
        LotObservations seen = lot.seen();
        Treatment stated = lot.treatment();
        if (stated == Treatment.TREATED) reasons.add(new Reason.Treated());
        if (seen.signs().contains(Sign.DYED)) reasons.add(new Reason.SuspectSeed(Sign.DYED));
        if (stated != Treatment.UNKNOWN) return;
        reasons.add(
                seen.signs().contains(Sign.SEED_GRADE)
                        ? new Reason.SuspectSeed(Sign.SEED_GRADE)
                        : new Reason.TreatmentUnknown());
    }

    private static void spoilt(GrainLot lot, LocalDate today, List<Reason> reasons) {
        LotObservations seen = lot.seen();
        for (Sign sign : SPOILT) {
            if (seen.signs().contains(sign)) reasons.add(new Reason.Spoilt(sign));
        }
        double ergotGPerKg = seen.ergotGPerKg().orElse(0);
        ErgotLimit limit = ErgotLimit.of(lot.kind(), today);
        if (ergotGPerKg > 0) reasons.add(new Reason.Ergot(ergotGPerKg, limit.limitGPerKg(), limit.since()));
    }

    private static void growing(GrainLot lot, LotCounts counts, LocalDate today, List<Reason> reasons) {
        if (counts.energy().isEmpty()) {
            reasons.add(new Reason.Untested());
            return;
        }
        Counted energy = counts.energy().get();
        Optional<Counted> alive = alive(lot);
        boolean good = energy.shareFraction() >= GOOD_FRACTION;
        boolean asleep = alive.isPresent() && alive.get().shareFraction() >= ALIVE_FRACTION;
        if (!good && asleep) {
            reasons.add(new Reason.Dormant(alive.get(), energy));
        } else {
            reasons.add(growing(energy));
            Optional<LocalDate> harvested = lot.size().harvested();
            boolean young = harvested.isPresent()
                    && harvested.get().plusWeeks(DORMANT_WEEKS).isAfter(today);
            if (!good && alive.isEmpty() && young) reasons.add(new Reason.PerhapsAsleep(harvested.get()));
        }
        if (counts.dishesDisagree()) {
            reasons.add(new Reason.DishesDisagree(
                    counts.rangeCorns().orElse(0), counts.toleratedCorns().orElse(0)));
        }
    }

    private static Reason growing(Counted energy) {
        double share = energy.shareFraction();
        if (share < LEAST_FRACTION) return growing(energy, Verdict.DO_NOT_MALT, LEAST_FRACTION);
        if (share < POSSIBLE_FRACTION) return growing(energy, Verdict.ONLY_MINOR_SHARE, POSSIBLE_FRACTION);
        return growing(energy, Verdict.MALT_IT, share < GOOD_FRACTION ? POSSIBLE_FRACTION : GOOD_FRACTION);
    }

    private static Reason growing(Counted energy, Verdict verdict, double atFraction) {
        Interval exact = energy.clopperPearson();
        boolean above = verdict == Verdict.MALT_IT;
        boolean certain = above ? energy.surelyAtLeastFraction() >= atFraction : exact.highFraction() < atFraction;
        OptionalInt settledBy = certain ? OptionalInt.empty() : energy.cornsToSettle(atFraction);
        return new Reason.Growing(energy, verdict, atFraction, certain, settledBy);
    }

    private static void water(LotCounts counts, List<Reason> reasons) {
        counts.lostInWater()
                .filter(lost -> lost.sensitivity() != SensitivityClass.HARDLY)
                .ifPresent(lost -> reasons.add(new Reason.WaterSensitive(lost)));
    }

    private static void corns(GrainLot lot, LotCounts counts, List<Reason> reasons) {
        double index = counts.indexRatio().orElse(SLOW_INDEX_RATIO);
        if (index < SLOW_INDEX_RATIO) reasons.add(new Reason.Slow(index));
        double broken = lot.seen().brokenFraction().orElse(0);
        if (broken > BROKEN_FRACTION) reasons.add(new Reason.Broken(broken));
        double damp = lot.moisture().moisture().wetBasisFraction();
        if (damp > DAMP_FRACTION) reasons.add(new Reason.Damp(damp));
    }

    /** Where nothing but more counting is missing, tomorrow will do. */
    private static LocalDate retest(List<Reason> reasons, LocalDate today) {
        boolean time = reasons.stream()
                .anyMatch(reason -> reason instanceof Reason.Dormant
                        || reason instanceof Reason.PerhapsAsleep
                        || reason instanceof Reason.WaterSensitive w && w.verdict() == Verdict.WAIT_AND_RETEST);
        return time ? today.plusWeeks(RETEST_WEEKS) : today.plusDays(1);
    }

    private static List<NextTest> nextTests(GrainLot lot, LotCounts counts, List<Reason> reasons) {
        List<NextTest> next = new ArrayList<>();
        boolean refused = reasons.stream()
                .anyMatch(reason -> reason.verdict() == Verdict.DO_NOT_MALT && !(reason instanceof Reason.Growing));
        if (refused) return next;
        boolean low = counts.energy().isPresent() && counts.energy().get().shareFraction() < GOOD_FRACTION;
        if (low && alive(lot).isEmpty()) next.add(new NextTest(TestKind.VIABILITY, USUAL_CORNS));
        for (Reason reason : reasons) {
            if (reason instanceof Reason.Untested || reason instanceof Reason.Dormant) {
                next.add(new NextTest(TestKind.ENERGY, USUAL_CORNS));
            } else if (reason instanceof Reason.DishesDisagree) {
                next.add(new NextTest(TestKind.ENERGY, 2 * USUAL_CORNS));
            } else if (reason instanceof Reason.Growing growing) {
                growing.settledBy().ifPresent(corns -> next.add(new NextTest(TestKind.ENERGY, corns)));
            }
        }
        if (counts.wet().isEmpty()) next.add(new NextTest(TestKind.WATER_SENSITIVITY, USUAL_CORNS));
        return next;
    }

    /** What a plan should make of the lot. */
    public static PlanEffects effects(GrainLot lot) {
        return effects(lot, LotCounts.of(lot));
    }

    private static PlanEffects effects(GrainLot lot, LotCounts counts) {
        double growing = counts.energy().map(Counted::shareFraction).orElse(1.0);
        double least =
                counts.energy().map(energy -> energy.wilson().lowFraction()).orElse(0.0);
        double restHours = counts.lostInWater()
                .map(lost -> lost.sensitivity().longerRestHours())
                .orElse(0.0);
        double idle = 1 - growing * lot.seen().wholeFraction();
        return new PlanEffects(idle, least, restHours, mould(lot, growing, idle));
    }

    private static MouldRisk mould(GrainLot lot, double growing, double idle) {
        boolean spoilt = lot.seen().signs().stream().anyMatch(SPOILT::contains);
        if (spoilt || idle > 1 - POSSIBLE_FRACTION) return MouldRisk.HIGH;
        double broken = lot.seen().brokenFraction().orElse(0);
        boolean damp = lot.moisture().moisture().wetBasisFraction() > DAMP_FRACTION;
        return growing < GOOD_FRACTION || broken > BROKEN_FRACTION || damp ? MouldRisk.RAISED : MouldRisk.LOW;
    }

    private static Optional<Counted> alive(GrainLot lot) {
        return lot.seen().viability().map(test -> new Counted(test.alive(), test.corns()));
    }
}
