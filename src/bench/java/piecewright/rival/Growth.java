package piecewright.rival;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import piecewright.chart.GrowthChart;
import piecewright.chart.GrowthCurve;
import piecewright.plan.PlanRequest;
import piecewright.plan.Posed;
import piecewright.plan.search.Problem;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;

/**
 * How the time of a search grows with the days it may look over, the hours somebody has each day and the acts of the
 * style: processor time of this thread, median of warm runs, mean over households that have a plan at every point.
 * Writes target/growth.csv and target/growth.svg.
 */
public final class Growth {
    private static final int RUNS = 5;
    private static final int WARM_RUNS = 2;
    private static final Path DATA = Path.of("demo-data");
    private static final List<String> HOUSES = List.of("cool-garage", "terrace-kitchen", "workshop", "farmhouse");

    private Growth() {}

    public static void main(String[] arguments) throws IOException, StoreException {
        List<GrowthCurve> curves = new ArrayList<>();
        StringBuilder rows = new StringBuilder("along,value,cpuMs\n");
        for (GrowthAxis axis : GrowthAxis.values()) {
            GrowthCurve curve = curve(axis);
            curves.add(curve);
            for (int i = 0; i < curve.sizes().length; i++) {
                rows.append(row(axis.key(), curve.sizes()[i], curve.cpuMs()[i]));
            }
            System.out.printf(
                    Locale.ROOT,
                    "%s: nearest power n^%.2f; bends %.2f-fold, n log n %.2f-fold%n",
                    axis.key(),
                    curve.power(),
                    curve.bend(),
                    curve.bendOfLinearLog());
        }
        for (MaltStyle style : StyleLibrary.builtIn().all()) rows.append(styleRow(style));
        Files.writeString(Path.of("target/growth.csv"), rows);
        Files.writeString(Path.of("target/growth.svg"), GrowthChart.of(curves));
    }

    private static GrowthCurve curve(GrowthAxis axis) {
        double[] sumMs = new double[axis.points().length];
        int households = 0;
        for (GrowthHousehold household : GrowthHousehold.all()) {
            Optional<double[]> ms = along(axis, household);
            if (ms.isEmpty()) continue;
            households++;
            for (int i = 0; i < sumMs.length; i++) sumMs[i] += ms.get()[i];
        }
        int counted = households;
        double[] meanMs = Arrays.stream(sumMs).map(sum -> sum / counted).toArray();
        double[] sizes = Arrays.stream(axis.points()).mapToDouble(axis::size).toArray();
        return new GrowthCurve(axis.key(), sizes, meanMs);
    }

    /** Median times of one household along an axis; empty when it has no plan somewhere. */
    private static Optional<double[]> along(GrowthAxis axis, GrowthHousehold household) {
        double[] ms = new double[axis.points().length];
        for (int i = 0; i < ms.length; i++) {
            Posed posed = axis.posed(household, axis.points()[i]).orElseThrow();
            Optional<Double> median = medianMs(new Problem(posed));
            if (median.isEmpty()) return Optional.empty();
            ms[i] = median.get();
        }
        return Optional.of(ms);
    }

    /** A style of the library in the first house of the demo data that can make it, acts and time; else empty. */
    private static String styleRow(MaltStyle style) throws StoreException {
        for (String house : HOUSES) {
            PlanRequest request = new PlanRequest(
                    style,
                    LotFile.read(DATA.resolve("lots/two-row-barley.json")),
                    HouseFile.read(DATA.resolve("houses").resolve(house + ".json")),
                    new PlanRequest.Amount.RawGrain(4),
                    new PlanRequest.When.ReadyBy(LocalDate.of(2027, 6, 1), LocalDate.of(2027, 3, 1)));
            Optional<Problem> problem = Problem.usual(request);
            Optional<Double> median = problem.flatMap(Growth::medianMs);
            if (median.isPresent()) {
                return row("acts of style " + style.key(), problem.get().goal() + 1, median.get());
            }
        }
        return "";
    }

    private static String row(String along, double size, double ms) {
        return String.format(Locale.ROOT, "%s,%.0f,%.1f%n", along, size, ms);
    }

    /** Median of warm runs; empty when there is no plan. */
    private static Optional<Double> medianMs(Problem problem) {
        for (int run = 0; run < WARM_RUNS; run++) if (problem.searched().isEmpty()) return Optional.empty();
        double[] ms = new double[RUNS];
        for (int run = 0; run < RUNS; run++) ms[run] = cpuMs(problem);
        return Optional.of(Arrays.stream(ms).sorted().toArray()[RUNS / 2]);
    }

    private static double cpuMs(Problem problem) {
        var threads = ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadCpuTime();
        problem.searched();
        return (threads.getCurrentThreadCpuTime() - before) / 1e6;
    }
}
