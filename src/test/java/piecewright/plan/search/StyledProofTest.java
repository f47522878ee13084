package piecewright.plan.search;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import piecewright.grain.GrainKind;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.Place;
import piecewright.plan.ActKind;
import piecewright.plan.Pace;
import piecewright.plan.PlanRequest;
import piecewright.plan.Posed;
import piecewright.plan.Styled;
import piecewright.plan.Styled.Family;
import piecewright.plan.search.BruteForce.Outcome;
import piecewright.quantity.FractionRange;
import piecewright.quantity.HoursRange;
import piecewright.style.Couches;
import piecewright.style.GrowthSchedule;
import piecewright.style.HotCouchSchedule;
import piecewright.style.KilnSchedule;
import piecewright.style.KilnSchedule.Rung;
import piecewright.style.MaltStyle;
import piecewright.style.SteepSchedule;

/**
 * The search against trying everything, on seeded households over every style and grain, each style with few acts; and
 * its bound along whole plans. More of them: {@code mvn -q test -Dtest=StyledProofTest -Dpiecewright.proofs=5000}.
 */
class StyledProofTest {
    private static final int HOUSEHOLDS = Integer.getInteger("piecewright.proofs", 210);
    /** Problems with a solution: a proof needs one. */
    private static final int PROOFS = HOUSEHOLDS * 20 / 21;

    /** Share of all that must be problems of a family with a solution. */
    private static final Map<Family, Double> LEAST = Map.of(
            Family.FLOOR, 0.4, Family.HEAPED, 0.1, Family.COUCHED, 0.08, Family.STEWED, 0.08, Family.ROASTED, 0.1);

    /** A whole problem is solved in so many ways, and the bound asked along each. */
    private static final int WAYS = 20;

    private static final int WHOLE = HOUSEHOLDS / 3;

    /** One small problem. */
    private record Small(Family family, PlanRequest request, double grainKg, ActKind last, int gridMinutes) {}

    private static Small small(long seed) {
        Family family = Styled.family(seed);
        ActKind last = last(family, seed);
        Random random = new Random(seed * 31 + 13);
        PlanRequest like = Styled.request(seed);
        double grainKg = like.amount() instanceof PlanRequest.Amount.RawGrain raw ? raw.grainKg() : 4;
        boolean oven = family == Family.STEWED || family == Family.ROASTED;
        House house = mild(like.house(), family == Family.HEAPED ? 8 : 13, random);
        PlanRequest request =
                new PlanRequest(reduced(like.style(), family, last), like.lot(), house, like.amount(), like.when());
        return new Small(family, request, oven ? 2 + random.nextDouble() : grainKg, last, gridMinutes(family, last));
    }

    /** The act a problem ends at: one after the other in each family. */
    private static ActKind last(Family family, long seed) {
        List<ActKind> lasts = switch (family) {
            case FLOOR ->
                List.of(ActKind.FLOOR, ActKind.LOAD, ActKind.DEROOT, ActKind.FLOOR, ActKind.LOAD, ActKind.LOAD);
            case HEAPED -> List.of(ActKind.FLOOR, ActKind.FLOOR, ActKind.LOAD);
            case COUCHED -> List.of(ActKind.BREAK, ActKind.LOAD);
            case STEWED, ROASTED -> List.of(ActKind.ROAST);
        };
        return lasts.get((int) (seed / 2 % lasts.size()));
    }

    private static int gridMinutes(Family family, ActKind last) {
        if (last == ActKind.FLOOR) return 120;
        return last == ActKind.BREAK || last == ActKind.LOAD ? 300 : 720;
    }

    /** Where corns chit within a day or two of the water, so that few soaks do. */
    private static House mild(House house, double leastC, Random random) {
        double lowC = leastC + 3 * random.nextDouble();
        double highC = lowC + 4 * random.nextDouble();
        List<Place> places = house.places().stream()
                .map(one -> one.name().equals("shed")
                        ? new Place(one.name(), new AirTemperature.Daily(lowC, highC), one.humidityFraction())
                        : one)
                .toList();
        return new House(
                house.name(), house.zone(), places, house.steepWaterC(), house.people(), house.nights(), house.kit());
    }

    /** The style with few acts: one or two immersions, so a wider steep and growth, its first and its last rung of heat. */
    private static MaltStyle reduced(MaltStyle style, Family family, ActKind last) {
        SteepSchedule steep = style.steep();
        double soaked = steep.targetFraction() - 0.02;
        GrowthSchedule growth = style.growth();
        double grown = growth.acrospireFraction();
        KilnSchedule kiln = style.kiln();
        List<Rung> ladder = kiln.ladder();
        boolean withers = last == ActKind.LOAD && family == Family.FLOOR;
        boolean kilned = last == ActKind.DEROOT || last == ActKind.ROAST;
        double wider = kilned ? 0.08 : 0.2;
        return style.withSteep(new SteepSchedule(
                        soaked,
                        new FractionRange(soaked - (kilned ? 0.04 : 0.06), soaked + (kilned ? 0.03 : 0.05)),
                        1,
                        family == Family.HEAPED ? 1 : 2,
                        steep.soaks()))
                .withGrowth(new GrowthSchedule(
                        grown,
                        new FractionRange(grown - wider, grown + wider),
                        growth.keepMoistureFraction(),
                        25,
                        20,
                        withers ? growth.wither() : new HoursRange(0, 0)))
                .withKiln(new KilnSchedule(
                        List.of(ladder.get(0), ladder.get(ladder.size() - 1)),
                        kiln.cureC(),
                        kiln.cureHours(),
                        kiln.endMoistureFraction(),
                        kiln.colourBase()))
                .withCouches(couches(style, family));
    }

    /** A wet couch only where it may help; a hot one packed as wet as it grew. */
    private static Couches couches(MaltStyle style, Family family) {
        return switch (family) {
            case HEAPED -> style.couches();
            case COUCHED ->
                Couches.none().withHot(packedWet(style.couches().hot().orElseThrow()));
            case FLOOR, STEWED, ROASTED -> Couches.none();
        };
    }

    private static HotCouchSchedule packedWet(HotCouchSchedule hot) {
        return new HotCouchSchedule(
                0.40,
                new FractionRange(0.30, 0.47),
                hot.indexHours(),
                new HoursRange(
                        hot.acceptableIndex().lowHours() / 2,
                        hot.acceptableIndex().highHours() * 1.5),
                hot.longestHours(),
                hot.checks(),
                hot.spreadAboveC());
    }

    @Test
    void everyStyleIsAsCheapAsTryingEverything() {
        List<Small> problems =
                LongStream.range(0, HOUSEHOLDS).mapToObj(StyledProofTest::small).toList();
        List<Outcome> outcomes = IntStream.range(0, HOUSEHOLDS)
                .parallel()
                .mapToObj(seed -> {
                    Small one = problems.get(seed);
                    return BruteForce.solve(one.request(), one.grainKg(), seed, one.last(), one.gridMinutes());
                })
                .toList();
        BruteForce.prove(outcomes, PROOFS);
        everyFamilyIsAmong(problems, outcomes);
    }

    private static void everyFamilyIsAmong(List<Small> problems, List<Outcome> outcomes) {
        Map<Family, Integer> solvable = new EnumMap<>(Family.class);
        Set<GrainKind> grains = new TreeSet<>();
        Set<String> styles = new TreeSet<>();
        for (int seed = 0; seed < problems.size(); seed++) {
            if (!outcomes.get(seed).solvable()) continue;
            solvable.merge(problems.get(seed).family(), 1, Integer::sum);
            grains.add(problems.get(seed).request().lot().kind());
            styles.add(problems.get(seed).request().style().key());
        }
        LEAST.forEach((family, share) ->
                assertTrue(solvable.getOrDefault(family, 0) >= share * HOUSEHOLDS, family + " in " + solvable));
        assertTrue(grains.size() == GrainKind.values().length, "grains: " + grains);
        assertTrue(styles.size() == 16, "styles: " + styles);
        long heaps = outcomes.stream().filter(Outcome::heaped).count();
        assertTrue(heaps >= 0.08 * HOUSEHOLDS, "wet couches: " + heaps);
    }

    /** How far the bound of any act is over what came after it, along the ways found through one whole problem. */
    private record Whole(Family family, int ways, long checks, double overMinutes) {}

    private static Whole whole(long seed) {
        PlanRequest like = Styled.request(seed);
        double grainKg = like.amount() instanceof PlanRequest.Amount.RawGrain raw ? raw.grainKg() : 4;
        PlanRequest request = new PlanRequest(
                like.style(), like.lot(), like.house(), new PlanRequest.Amount.RawGrain(grainKg), like.when());
        Posed posed = Posed.of(request, Posed.Steps.usual()).orElseThrow();
        Route route = new Search(posed.setup(), posed.grid(), posed.wish()).route();
        double over = 0;
        long checks = 0;
        List<Label> goals = BestFirst.goals(route, WAYS, label -> {}, Pace.endless());
        for (Label goal : goals) {
            for (Label before : goal.path()) {
                over = Math.max(over, before.costMinutes() + route.boundMinutes(before) - goal.costMinutes());
                checks++;
            }
        }
        return new Whole(Styled.family(seed), goals.size(), checks, over);
    }

    /** All acts of a style, candidates as near as in a plan, up to twenty ways through each. */
    @Test
    void theBoundIsNeverOverWhatComesAfterAnyActOfWholePlans() {
        List<Whole> all = LongStream.range(0, WHOLE)
                .parallel()
                .mapToObj(StyledProofTest::whole)
                .toList();
        Map<Family, Integer> solvable = new EnumMap<>(Family.class);
        long checks = 0;
        for (int seed = 0; seed < WHOLE; seed++) {
            Whole one = all.get(seed);
            assertTrue(one.overMinutes() < 1e-6, "over by " + one.overMinutes() + ", seed " + seed);
            if (one.ways() > 0) solvable.merge(one.family(), 1, Integer::sum);
            checks += one.checks();
        }
        for (Family family : Family.values()) {
            assertTrue(solvable.getOrDefault(family, 0) >= 0.08 * WHOLE, family + " in " + solvable);
        }
        assertTrue(checks >= 100L * WHOLE, "checks: " + checks);
    }
}
