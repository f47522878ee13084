package piecewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import piecewright.app.Keeping;
import piecewright.app.NotWrittenException;
import piecewright.app.PlanPapers;
import piecewright.app.PlanWish;
import piecewright.app.ReadWish;
import piecewright.calendar.CalendarChanges;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.remedy.Remedies;
import piecewright.remedy.Remedy;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;

/** Plans a batch, prints the plan, keeps it where asked. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Plans a batch of malt so that every act falls into somebody's hours.",
        footer = {
            "",
            "Ends with 0 planned, 1 not possible (and why), 2 something given is wrong, 3 a file could not be written."
        })
final class PlanCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    private final WishOptions wishOptions = new WishOptions();

    @Mixin
    private final StyleOption styleOption = new StyleOption();

    @Mixin
    private final FileOptions fileOptions = new FileOptions();

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    @Option(names = "--json", description = "Print the plan as JSON instead of a page.")
    private boolean json;

    PlanCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException, NotWrittenException {
        DisplayUnits units = unitOptions.displayUnits(surroundings.locale());
        PlanWish wish = wishOptions.wish(styleOption.library(), units, LocalDate.now(surroundings.clock()));
        Keeping.Targets targets = fileOptions.targets(wish);
        ReadWish read = ReadWish.of(wish);
        Keeping keeping = Keeping.open(targets, read, surroundings.newId());
        PlanPapers papers = new PlanPapers(units);
        PlanResult result = surroundings.planner().apply(read.request());
        if (result instanceof PlanResult.NotPossible not) {
            return refuse(papers, read.request(), not);
        }
        Plan plan = ((PlanResult.Planned) result).plan();
        Keeping.Kept kept = keeping.keep(read, plan, units, surroundings.clock().instant());
        PrintWriter out = surroundings.streams().out();
        if (json) {
            out.print(papers.json(plan));
        } else {
            out.print(papers.page(read.request(), plan));
            out.print(filesWritten(targets, kept));
        }
        return Ending.DONE;
    }

    private int refuse(PlanPapers papers, PlanRequest request, PlanResult.NotPossible not) {
        ZoneId zone = request.house().zone();
        List<Remedy> remedies = new Remedies(surroundings.planner()).against(request, not.obstacles());
        PrintWriter out = surroundings.streams().out();
        if (json) out.print(papers.json(zone, not.obstacles(), remedies));
        else papers.sentences(zone, not.obstacles(), remedies).forEach(out::println);
        return Ending.NOT_POSSIBLE;
    }

    private static String filesWritten(Keeping.Targets targets, Keeping.Kept kept) {
        StringBuilder lines = new StringBuilder();
        kept.calendar()
                .ifPresent(changes -> lines.append("\nCalendar ")
                        .append(targets.calendar().map(Path::toString).orElse(""))
                        .append(": ")
                        .append(said(changes))
                        .append('\n'));
        Optional<Path> batch = targets.batch();
        batch.ifPresent(file -> lines.append("\nBatch kept in ").append(file).append('\n'));
        return lines.toString();
    }

    private static String said(CalendarChanges changes) {
        if (changes.isEmpty()) return "nothing changed.";
        return changes.added().size() + " entries added, " + changes.moved().size() + " moved, " + changes.reworded()
                + " reworded, " + changes.dropped().size() + " cancelled, " + changes.unchanged() + " as before.";
    }
}
