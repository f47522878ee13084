package piecewright.rival;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** The runs of all rivals on one set of problems, as a Markdown table. */
record RivalTable(String title, List<Rival> rivals, List<List<Run>> runs) {
    String markdown() {
        StringBuilder page = new StringBuilder();
        page.append("## ").append(title).append("\n\n");
        page.append(
                "| solver | solved | cost ÷ best known: median | p95 | max | CPU ms: median | p95 | clock ms: median | p95 |\n");
        page.append("|---|---|---|---|---|---|---|---|---|\n");
        rivals.forEach(rival -> page.append(row(rival.name())));
        long solvable = runs.stream()
                .filter(one -> best(one) < Double.POSITIVE_INFINITY)
                .count();
        return page.append("\nProblems: ")
                .append(runs.size())
                .append("; with a plan known: ")
                .append(solvable)
                .append(".\n\n")
                .toString();
    }

    private String row(String name) {
        double[] ratios = runs.stream()
                .flatMap(problem -> problem.stream()
                        .filter(run -> run.name().equals(name) && run.solved())
                        .map(run -> run.costMinutes() / best(problem)))
                .mapToDouble(Double::doubleValue)
                .toArray();
        List<Run> own = runs.stream()
                .flatMap(List::stream)
                .filter(run -> run.name().equals(name))
                .toList();
        double[] cpu = own.stream().mapToDouble(Run::cpuMs).toArray();
        double[] wall = own.stream().mapToDouble(Run::wallMs).toArray();
        String cells = Stream.of(
                        name,
                        ratios.length + "/" + own.size(),
                        at(ratios, 0.5, "%.3f"),
                        at(ratios, 0.95, "%.3f"),
                        at(ratios, 1, "%.3f"),
                        at(cpu, 0.5, "%.0f"),
                        at(cpu, 0.95, "%.0f"),
                        at(wall, 0.5, "%.0f"),
                        at(wall, 0.95, "%.0f"))
                .collect(Collectors.joining(" | "));
        return "| " + cells + " |\n";
    }

    private static double best(List<Run> problem) {
        return problem.stream().mapToDouble(Run::costMinutes).min().orElse(Double.POSITIVE_INFINITY);
    }

    /** The value up to which such a share of them lies; a dash when there are none. */
    private static String at(double[] values, double share, String format) {
        if (values.length == 0) return "–";
        double[] sorted = DoubleStream.of(values).sorted().toArray();
        return String.format(Locale.ROOT, format, sorted[(int) Math.ceil(share * sorted.length) - 1]);
    }
}
