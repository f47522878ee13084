package piecewright.rival;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;
import piecewright.plan.Couched;
import piecewright.plan.Seeded;
import piecewright.plan.search.Problem;

/**
 * Our search, Timefold, choco-solver and a textbook's timetable side by side, on the same problems and at the same
 * prices. Arguments: how many seeded households to pose as the planner poses them, how many with a couched style, how
 * many small enough for a table, and on how many of the first of each Timefold gets its longer run. Writes
 * target/rivals.md anew after each problem, so that a run can be broken off.
 */
public final class Rivals {
    private static final int WARM_UP = 12;

    private String page = "";

    private Rivals() {}

    public static void main(String[] arguments) throws IOException {
        int[] counts = {200, 20, 100, 40};
        for (int i = 0; i < arguments.length; i++) counts[i] = Integer.parseInt(arguments[i]);
        List<Rival> all = new ArrayList<>(rivals(counts[3]));
        Rivals rivals = new Rivals();
        rivals.meet("Seeded households, pale style", counts[0], all, seed -> Problem.usual(Seeded.request(seed)));
        rivals.meet("Seeded households, couched style", counts[1], all, seed -> Problem.usual(Couched.request(seed)));
        all.add(new Rival("choco-solver 5, table and proof", Problem::choco));
        all.add(new Rival("writing the table alone", Problem::onlyTabled));
        rivals.meet("Small enough to write out as a table", counts[2], all, Problem::tabled);
    }

    private static List<Rival> rivals(int longRuns) {
        ByTimefold brief = new ByTimefold(Duration.ofSeconds(1));
        ByTimefold patient = new ByTimefold(Duration.ofSeconds(5));
        return List.of(
                new Rival("our search", Problem::searched),
                new Rival("our search, nothing hurried", Problem::searchedCarefully),
                new Rival("textbook, one start", problem -> new Textbook(problem).once()),
                new Rival("textbook, best of all starts", problem -> new Textbook(problem).fromEveryStart()),
                new Rival("Timefold 1.32, 1 s", brief::cost),
                new Rival("Timefold 1.32, 5 s", patient::cost, longRuns));
    }

    private void meet(String title, int households, List<Rival> rivals, LongFunction<Optional<Problem>> posed)
            throws IOException {
        for (int seed = 0; seed < Math.min(WARM_UP, households); seed++) {
            posed.apply(seed).ifPresent(problem -> rivals.get(0).solve(problem));
        }
        String before = page;
        List<List<Run>> runs = new ArrayList<>();
        for (int seed = 0; seed < households; seed++) {
            int number = seed;
            posed.apply(seed)
                    .ifPresent(problem -> runs.add(rivals.stream()
                            .filter(rival -> number < rival.households())
                            .map(rival -> rival.solve(problem))
                            .toList()));
            page = before + new RivalTable(title, rivals, runs).markdown();
            Files.writeString(Path.of("target/rivals.md"), page);
        }
    }
}
