package piecewright.app;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import piecewright.journal.AcrospireCount;
import piecewright.journal.Report;
import piecewright.journal.Spot;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.plan.PlanResult;
import piecewright.store.JournalFile;
import piecewright.store.JournalFile.Draft;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;
import piecewright.text.DisplayUnits;

/**
 * Lays out a demo piece in progress: started some days ago from the demo's lot and house, and written down since as a
 * careful person would, with a lot that drinks a little less than expected.
 */
public final class DemoBatch {
    private static final double MALT_KG = 4;

    /** How many days ago it may have started, the best first; the first that lies on the floor now is taken. */
    private static final List<Integer> DAYS_AGO = List.of(5, 4, 6, 7);

    /** What the scale shows, of what the plan expects. */
    private static final double WEIGHED_RATIO = 0.994;

    /** How much cooler the grain is than the plan expects, K. */
    private static final double COOLER_K = 0.4;

    /** How far the acrospire has come, of what the plan expects. */
    private static final double GROWN_RATIO = 0.95;

    private static final int CORNS_COUNTED = 30;

    private final Workspace workspace;
    private final Function<PlanRequest, PlanResult> planner;
    private final Supplier<UUID> newId;

    public DemoBatch(Workspace workspace, Function<PlanRequest, PlanResult> planner, Supplier<UUID> newId) {
        this.workspace = Objects.requireNonNull(workspace);
        this.planner = Objects.requireNonNull(planner);
        this.newId = Objects.requireNonNull(newId);
    }

    /** Lays the piece out and gives its file; nothing where there is no demo, where it lies already or has no plan. */
    public Optional<Path> lay(DisplayUnits units, Instant now) throws StoreException, NotWrittenException {
        if (!workspace.lacksDemoBatch()) return Optional.empty();
        Optional<Laid> laid = Optional.empty();
        for (int daysAgo : DAYS_AGO) {
            Optional<Laid> found = startedBefore(daysAgo, now);
            if (laid.isEmpty()) laid = found;
            if (found.isPresent() && found.get().growsAt(now)) {
                laid = found;
                break;
            }
        }
        if (laid.isEmpty()) return Optional.empty();
        return Optional.of(kept(laid.get(), units, now));
    }

    private record Laid(ReadWish wish, Plan plan) {
        boolean growsAt(Instant now) {
            return plan.acts().stream()
                            .anyMatch(act ->
                                    act.kind() == ActKind.TURN && act.startsAt().isBefore(now))
                    && plan.acts().stream()
                            .anyMatch(act ->
                                    act.kind() == ActKind.LOAD && act.startsAt().isAfter(now));
        }
    }

    private Optional<Laid> startedBefore(int daysAgo, Instant now) throws StoreException {
        Workspace.DemoFiles files = workspace.demoFiles();
        MaltStyle style = StyleLibrary.builtIn().style("pale");
        PlanWish today = wish(style, files, LocalDate.EPOCH);
        LocalDate start = LocalDate.ofInstant(
                        now, ReadWish.of(today).request().house().zone())
                .minusDays(daysAgo);
        ReadWish wish = ReadWish.of(wish(style, files, start));
        return planner.apply(wish.request())
                .match(planned -> Optional.of(new Laid(wish, planned.plan())), not -> Optional.empty());
    }

    private static PlanWish wish(MaltStyle style, Workspace.DemoFiles files, LocalDate start) {
        return new PlanWish(
                style, files.lot(), files.house(), new Amount.FinishedMalt(MALT_KG), new When.StartOn(start));
    }

    private Path kept(Laid laid, DisplayUnits units, Instant now) throws StoreException, NotWrittenException {
        Path file = workspace.demoBatch();
        UUID id = newId.get();
        Keeping.Targets targets = new Keeping.Targets(Optional.of(file), Optional.empty());
        Keeping.open(targets, laid.wish(), () -> id, StyleLibrary.builtIn())
                .keep(laid.wish(), laid.plan(), CalendarManner.usual(units), now);
        JournalFile.append(JournalFile.beside(file), id, journal -> told(laid.plan(), now));
        return file;
    }

    /** What was written down of the acts before now. */
    private static List<Draft> told(Plan plan, Instant now) {
        List<Draft> drafts = new ArrayList<>();
        for (Act act : plan.acts()) {
            Instant at = act.startsAt().plus(Duration.ofMinutes(5 + 3L * (drafts.size() % 4)));
            if (!at.isBefore(now)) break;
            for (Report report : reports(act)) drafts.add(new Draft(at, at, Optional.empty(), report));
        }
        return drafts;
    }

    private static List<Report> reports(Act act) {
        List<Report> reports = new ArrayList<>();
        reports.add(Report.Did.of(act.kind()));
        double massKg = Math.round(200 * WEIGHED_RATIO * act.expect().massKg()) / 200.0;
        double grainC = Math.round(2 * (act.expect().grainC() - COOLER_K)) / 2.0;
        if (act.kind() == ActKind.DRAIN || act.kind() == ActKind.FLOOR) reports.add(Report.Weighed.net(massKg));
        if (act.kind() == ActKind.TURN) reports.add(new Report.TemperatureRead(grainC, Spot.CORE));
        double grown = GROWN_RATIO * act.expect().acrospireFraction().orElse(0);
        if (act.kind() == ActKind.TURN && grown > 0.2) reports.add(new Report.AcrospiresCounted(count(grown)));
        return reports;
    }

    /** A count of corns whose mean comes as near to a length as two neighbouring classes do. */
    private static AcrospireCount count(double meanFraction) {
        List<Integer> best = List.of();
        double least = Double.POSITIVE_INFINITY;
        for (int first = 0; first < AcrospireCount.CLASSES - 2; first++) {
            for (int middle = 0; middle <= CORNS_COUNTED; middle++) {
                Integer[] corns = {0, 0, 0, 0, 0, 0};
                corns[first] = (CORNS_COUNTED - middle) / 2;
                corns[first + 1] = middle;
                corns[first + 2] = CORNS_COUNTED - middle - corns[first];
                double away = Math.abs(new AcrospireCount(List.of(corns)).meanFraction() - meanFraction);
                if (away < least) {
                    least = away;
                    best = List.of(corns);
                }
            }
        }
        return new AcrospireCount(best);
    }
}
