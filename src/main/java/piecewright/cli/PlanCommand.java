package piecewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import piecewright.app.CalendarHabits;
import piecewright.app.CalendarManner;
import piecewright.app.CalendarPage;
import piecewright.app.CalendarReading;
import piecewright.app.HowSure;
import piecewright.app.InBatches;
import piecewright.app.Keeping;
import piecewright.app.MakePlan;
import piecewright.app.NotWrittenException;
import piecewright.app.Papers;
import piecewright.app.PlanCosts;
import piecewright.app.PlanPapers;
import piecewright.app.PlanWish;
import piecewright.app.Printing;
import piecewright.app.ReadWish;
import piecewright.ensemble.Sureness;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.remedy.Remedies;
import piecewright.remedy.Remedy;
import piecewright.store.PlanJson;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.text.DisplayUnits;
import piecewright.text.Phrases;

/** Plans a batch, prints the plan, keeps it where asked. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Plans a batch of malt so that every step falls into somebody's hours.",
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
    private final ArrangementOptions arrangementOptions = new ArrangementOptions();

    @Mixin
    private final WorkspaceOptions workspaceOptions = new WorkspaceOptions();

    @Mixin
    private final FileOptions fileOptions = new FileOptions();

    @Mixin
    private final BesideOption besideOption = new BesideOption();

    @Mixin
    private final EntryOptions entryOptions = new EntryOptions();

    @Option(names = "--preview", description = "Write nothing; only say what would change in the calendar.")
    private boolean preview;

    @Mixin
    private final PaperOptions paperOptions = new PaperOptions();

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    @Mixin
    private final SureOptions sureOptions = new SureOptions();

    @Option(
            names = "--explain",
            description = "Print what each step costs by which rule, and why the next best plan lost.")
    private boolean explain;

    @Option(names = "--full", description = "Print every step with what to do, its safe times and its reasons.")
    private boolean full;

    @Option(names = "--json", description = "Print the plan as JSON instead of a page.")
    private boolean json;

    PlanCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException, NotWrittenException {
        DisplayUnits units = unitOptions.displayUnits(surroundings.locale());
        StyleLibrary library = styleOption.library();
        PlanWish typed = wishOptions.wish(library, units, LocalDate.now(surroundings.clock()));
        PlanWish wish = typed.withFiles(
                workspaceOptions.lot(typed.lotFile(), surroundings),
                workspaceOptions.house(typed.houseFile(), surroundings));
        MakePlan.Extras extras =
                wishOptions.extras(units, arrangementOptions.open(), LocalDateTime.now(surroundings.clock()));
        int members = sureOptions.members();
        Keeping.Targets targets = fileOptions.targets(wish, workspaceOptions, surroundings);
        List<Path> kept = targets.batch().map(List::of).orElse(List.of());
        CalendarManner manner = entryOptions.manner(units, CalendarHabits.chosen(kept));
        Printing.Targets paperTargets = paperOptions.targets(targets.and(wish.lotFile(), wish.houseFile()));
        ReadWish alone = ReadWish.of(wish);
        PlanRequest request = alone.request()
                .arranged(arrangementOptions.arrangement(alone.request().house(), units));
        paperOptions.mustSuit(request.style());
        ReadWish asked = alone.withRequest(request.beside(besideOption.taken(
                new BesideOption.Where(workspaceOptions, surroundings), library, request.house(), targets.batch())));
        Opened opened = open(targets, paperTargets, asked);
        PlanPapers papers = new PlanPapers(units);
        List<MakePlan.Made> pieces = made(asked, library, extras);
        if (pieces.get(0).result() instanceof PlanResult.NotPossible not) {
            return refuse(papers, pieces.get(0).wish().request(), not);
        }
        List<Opened> all = pieces.size() == 1 ? List.of(opened) : parts(targets, paperTargets, pieces);
        List<String> pages = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            PlanRequest planned = pieces.get(i).wish().request();
            Plan plan = ((PlanResult.Planned) pieces.get(i).result()).plan();
            String files = written(all.get(i), pieces.get(i).wish(), plan, manner);
            String page = explained(paper(papers, planned, plan, members), planned, plan, new PlanCosts(units));
            pages.add(json ? page : page + files);
        }
        surroundings.streams().out().print(json ? PlanJson.several(pages) : several(pages));
        return Ending.DONE;
    }

    private List<MakePlan.Made> made(ReadWish asked, StyleLibrary library, MakePlan.Extras extras) {
        try (WaitingLine waiting = new WaitingLine(surroundings.streams())) {
            MakePlan make = new MakePlan(surroundings.planner().watchedBy(waiting), library.all());
            return new InBatches(make).of(asked, extras);
        }
    }

    /** The files of one piece, looked at before any is written. */
    private record Opened(Keeping.Targets targets, Keeping keeping, Printing.Targets papers, Printing printing) {}

    private Opened open(Keeping.Targets targets, Printing.Targets papers, ReadWish wish)
            throws StoreException, NotWrittenException {
        Keeping keeping = Keeping.openFresh(
                targets,
                wish,
                surroundings.newId(),
                new CalendarReading(styleOption.library(), surroundings.clock().instant()));
        return new Opened(targets, keeping, papers, Printing.open(papers));
    }

    private List<Opened> parts(Keeping.Targets targets, Printing.Targets papers, List<MakePlan.Made> pieces)
            throws StoreException, NotWrittenException {
        List<Opened> parts = new ArrayList<>();
        for (int part = 1; part <= pieces.size(); part++) {
            parts.add(open(
                    targets.part(part), papers.part(part), pieces.get(part - 1).wish()));
        }
        return parts;
    }

    private String written(Opened opened, ReadWish wish, Plan plan, CalendarManner manner)
            throws StoreException, NotWrittenException {
        CalendarPage page = new CalendarPage(manner.units().locale());
        if (preview)
            return wouldBeWritten(
                    opened.keeping()
                            .preview(wish, plan, manner, surroundings.clock().instant()),
                    page);
        Keeping.Kept kept =
                opened.keeping().keep(wish, plan, manner, surroundings.clock().instant());
        if (entryOptions.given()) {
            CalendarHabits.choose(opened.targets().batch().map(List::of).orElse(List.of()), manner.options());
        }
        if (paperOptions.isAsked()) {
            Papers papers = Papers.of(wish.request(), plan, surroundings.clock().instant());
            opened.printing().print(new PlanPapers(manner.units()), papers);
        }
        return filesWritten(opened, kept, page) + PaperOptions.written(opened.papers());
    }

    private static String several(List<String> pages) {
        if (pages.size() == 1) return pages.get(0);
        String number = Integer.toString(pages.size());
        return Phrases.say("page.several", number) + "\n\n" + String.join("\n\n", pages);
    }

    private String paper(PlanPapers papers, PlanRequest request, Plan plan, int members) {
        HowSure howSure = new HowSure(ModelParameters.defaults());
        Instant now = surroundings.clock().instant();
        if (!sureOptions.sure()) {
            if (json) return papers.json(plan);
            return full
                    ? papers.page(request, plan)
                    : papers.onePage(request, plan, howSure.chances(request, plan, now, members));
        }
        Sureness sure = howSure.of(request, plan, now, members);
        return json ? papers.json(plan, sure) : papers.page(request, plan, sure);
    }

    private String explained(String page, PlanRequest request, Plan plan, PlanCosts costs) {
        if (!explain) return page;
        return json ? costs.added(page, request, plan) : page + "\n" + costs.page(request, plan);
    }

    private int refuse(PlanPapers papers, PlanRequest request, PlanResult.NotPossible not) {
        ZoneId zone = request.house().zone();
        List<Remedy> remedies;
        try (WaitingLine waiting = new WaitingLine(surroundings.streams())) {
            remedies = new Remedies(surroundings.planner().watchedBy(waiting)).against(request, not.obstacles());
        }
        PrintWriter out = surroundings.streams().out();
        if (json) out.print(papers.json(zone, not.obstacles(), remedies));
        else papers.sentences(zone, not.obstacles(), remedies).forEach(out::println);
        return Ending.NOT_POSSIBLE;
    }

    private static String filesWritten(Opened opened, Keeping.Kept kept, CalendarPage page) {
        StringBuilder lines = new StringBuilder();
        kept.calendar().ifPresent(update -> lines.append('\n').append(page.written(update)));
        kept.live().ifPresent(update -> lines.append('\n').append(page.written(update)));
        lines.append(page.others(kept.others()));
        String how = opened.keeping().replaces() ? "keeping.replaced" : "keeping.kept";
        opened.targets()
                .batch()
                .ifPresent(file -> lines.append('\n')
                        .append(Phrases.say(how, file.toString()))
                        .append('\n'));
        return lines.toString();
    }

    private static String wouldBeWritten(Keeping.Kept kept, CalendarPage page) {
        StringBuilder lines = new StringBuilder();
        kept.calendar().ifPresent(update -> lines.append('\n').append(page.preview(update)));
        kept.live().ifPresent(update -> lines.append('\n').append(page.preview(update)));
        return lines.toString();
    }
}
