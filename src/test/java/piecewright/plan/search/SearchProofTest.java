package piecewright.plan.search;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import piecewright.plan.ActKind;
import piecewright.plan.Couched;
import piecewright.plan.PlanRequest;
import piecewright.plan.Seeded;
import piecewright.plan.search.BruteForce.Outcome;
import piecewright.quantity.FractionRange;
import piecewright.quantity.HoursRange;
import piecewright.style.Couches;
import piecewright.style.GrowthSchedule;
import piecewright.style.HotCouchSchedule;
import piecewright.style.KilnSchedule;
import piecewright.style.KilnSchedule.Rung;
import piecewright.style.MaltStyle;
import piecewright.style.OvenSchedule;
import piecewright.style.RoastSchedule;
import piecewright.style.SteepSchedule;
import piecewright.style.StewSchedule;
import piecewright.style.WetCouchSchedule;

/** The search against trying everything, on seeded households with few acts and a coarse grid. */
class SearchProofTest {
    private static Outcome solve(long seed, int immersions, ActKind last, int gridMinutes) {
        return BruteForce.solve(small(Seeded.request(seed), immersions, last), 4, seed, last, gridMinutes);
    }

    /** The pale style with few acts: few immersions, no wither unless asked for, one rung of heat. */
    static PlanRequest small(PlanRequest like, int immersions, ActKind last) {
        MaltStyle pale = like.style();
        KilnSchedule kiln = pale.kiln();
        MaltStyle style = new MaltStyle(
                pale.key(),
                pale.title(),
                pale.grains(),
                new SteepSchedule(0.42, new FractionRange(0.36, 0.47), 1, immersions),
                new GrowthSchedule(
                        0.75,
                        new FractionRange(0.5, 1.0),
                        0.40,
                        25,
                        20,
                        last == ActKind.LOAD ? new HoursRange(0, 24) : new HoursRange(0, 0)),
                new KilnSchedule(
                        List.of(new Rung(1, 50), new Rung(0.06, 85)),
                        kiln.cureC(),
                        kiln.cureHours(),
                        kiln.endMoistureFraction(),
                        kiln.colourBase()),
                pale.finish(),
                Couches.none(),
                last == ActKind.ROAST ? stewedAndRoasted() : OvenSchedule.none());
        return new PlanRequest(style, like.lot(), like.house(), like.amount(), like.when());
    }

    /** The couched seeded household and style, with as few acts as the pale one. */
    private static PlanRequest couched(long seed, boolean withers) {
        PlanRequest like = Couched.request(seed);
        MaltStyle style = like.style();
        KilnSchedule kiln = style.kiln();
        HotCouchSchedule hot = new HotCouchSchedule(
                0.40, new FractionRange(0.30, 0.47), 12, new HoursRange(4, 25), 60, new HoursRange(6, 15), 53);
        MaltStyle small = new MaltStyle(
                style.key(),
                style.title(),
                style.grains(),
                new SteepSchedule(0.44, new FractionRange(0.38, 0.48), 1, 1),
                new GrowthSchedule(
                        0.75, new FractionRange(0.4, 1.1), 0.40, 25, 20, new HoursRange(0, withers ? 30 : 0)),
                new KilnSchedule(
                        List.of(new Rung(1, 50), new Rung(0.06, 85)),
                        kiln.cureC(),
                        kiln.cureHours(),
                        kiln.endMoistureFraction(),
                        kiln.colourBase()),
                style.finish(),
                Couches.none().withHot(hot),
                OvenSchedule.none());
        return new PlanRequest(small, like.lot(), like.house(), like.amount(), like.when());
    }

    /** The seeded household, its steep too short to chit in the tub, allowed a wet couch under cloths or in a box. */
    private static PlanRequest heaped(long seed, int immersions, ActKind last) {
        PlanRequest like = small(Seeded.request(seed), immersions, last);
        MaltStyle style =
                like.style().withCouches(Couches.none().withWet(new WetCouchSchedule(25, 22, new HoursRange(8, 48))));
        PlanRequest boxed = Couched.request(seed);
        return new PlanRequest(
                style, like.lot(), seed % 2 == 0 ? boxed.house() : like.house(), like.amount(), like.when());
    }

    private static List<Outcome> solveHeaped(int seeds, int immersions, ActKind last, int gridMinutes) {
        return LongStream.range(0, seeds)
                .parallel()
                .mapToObj(seed -> BruteForce.solve(heaped(seed, immersions, last), 4, seed, last, gridMinutes))
                .toList();
    }

    private static List<Outcome> solveCouched(int seeds, boolean withers, ActKind last, int gridMinutes) {
        return LongStream.range(0, seeds)
                .parallel()
                .mapToObj(seed -> BruteForce.solve(couched(seed, withers), 4, seed, last, gridMinutes))
                .toList();
    }

    /** Cool enough for the kilns of the seeded households, which fill it once or twice. */
    private static OvenSchedule stewedAndRoasted() {
        return new OvenSchedule(
                Optional.of(new StewSchedule(70, 90, 120, 10)),
                Optional.of(new RoastSchedule(1.9, List.of(new RoastSchedule.HeatStep(90, 20, 40)), 0.06)));
    }

    private static List<Outcome> solveAll(int seeds, int immersions, ActKind last, int gridMinutes) {
        return LongStream.range(0, seeds)
                .parallel()
                .mapToObj(seed -> solve(seed, immersions, last, gridMinutes))
                .toList();
    }

    @Test
    void theSteepAndCastingAreAsCheapAsTryingEverything() {
        BruteForce.prove(solveAll(200, 2, ActKind.FLOOR, 120), 80);
    }

    @Test
    void theWetCouchIsAsCheapAsTryingEverything() {
        List<Outcome> once = solveHeaped(120, 1, ActKind.FLOOR, 120);
        assertTrue(once.stream().filter(Outcome::heaped).count() >= 30, "heaps: " + once);
        BruteForce.prove(once, 40);
        BruteForce.prove(solveHeaped(40, 2, ActKind.FLOOR, 180), 10);
    }

    @Test
    void growthAfterTheWetCouchIsAsCheapAsTryingEverything() {
        BruteForce.prove(solveHeaped(40, 1, ActKind.LOAD, 240), 5);
    }

    @Test
    void growthAndWitherAreAsCheapAsTryingEverything() {
        BruteForce.prove(solveAll(60, 1, ActKind.LOAD, 180), 12);
    }

    @Test
    void kilningIsAsCheapAsTryingEverything() {
        BruteForce.prove(solveAll(40, 1, ActKind.DEROOT, 240), 5);
    }

    @Test
    void packingAndBreakingTheCouchAreAsCheapAsTryingEverything() {
        BruteForce.prove(solveCouched(80, false, ActKind.BREAK, 240), 10);
    }

    @Test
    void witheringForTheCouchIsAsCheapAsTryingEverything() {
        BruteForce.prove(solveCouched(48, true, ActKind.BREAK, 300), 5);
    }

    @Test
    void theKilnAfterTheCouchIsAsCheapAsTryingEverything() {
        BruteForce.prove(solveCouched(40, false, ActKind.LOAD, 300), 3);
    }

    @Test
    void stewAndRoastAreAsCheapAsTryingEverything() {
        BruteForce.prove(solveAll(80, 1, ActKind.ROAST, 240), 8);
    }
}
