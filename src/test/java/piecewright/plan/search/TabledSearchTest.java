package piecewright.plan.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import piecewright.plan.ActKind;
import piecewright.plan.PlanRequest;
import piecewright.plan.Posed;
import piecewright.plan.Seeded;

/** The search, pruning off, against choco-solver 5 on small problems written out as tables. */
class TabledSearchTest {
    /** Costs of one problem by both; infinite where there is no way. */
    private record Pair(long seed, double searched, double chosen, int arcs) {}

    private static Pair solve(long seed) {
        PlanRequest like = Seeded.request(seed);
        PlanRequest request = new PlanRequest(
                SearchProofTest.small(like, 2, ActKind.FLOOR).style(),
                like.lot(),
                like.house(),
                like.amount(),
                new PlanRequest.When.StartOn(LocalDate.of(2030, 5, 1 + (int) (seed % 7))));
        Posed posed = Posed.of(request, new Posed.Steps(180, 180)).orElseThrow();
        Search search = new Search(posed.setup(), posed.grid(), posed.wish(), ActKind.FLOOR, Effort.complete());
        List<Search.Found> found = search.best(1);
        Tabled table = Tabled.of(search.route(), 200_000).orElseThrow();
        Optional<TabledByChoco.Answer> answer = TabledByChoco.cheapest(table, 60);
        answer.ifPresent(one -> assertTrue(one.proven(), "proven, seed " + seed));
        return new Pair(
                seed,
                found.isEmpty() ? Double.POSITIVE_INFINITY : found.get(0).costMinutes(),
                answer.map(TabledByChoco.Answer::costMinutes).orElse(Double.POSITIVE_INFINITY),
                table.arcs());
    }

    @Test
    void aGeneralConstraintSolverFindsNothingCheaperAndNothingMissed() {
        List<Pair> pairs =
                LongStream.range(0, 12).mapToObj(TabledSearchTest::solve).toList();
        for (Pair pair : pairs) assertEquals(pair.searched(), pair.chosen(), 0.01, pair.toString());
        long solvable =
                pairs.stream().filter(pair -> Double.isFinite(pair.searched())).count();
        assertTrue(solvable >= 6, "solvable: " + solvable);
        assertTrue(pairs.stream().mapToInt(Pair::arcs).sum() >= 10_000, "arcs to choose among: " + pairs);
    }
}
