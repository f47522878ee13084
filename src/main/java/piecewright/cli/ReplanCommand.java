package piecewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import piecewright.app.BatchAtHand;
import piecewright.app.CalendarHabits;
import piecewright.app.CalendarManner;
import piecewright.app.CalendarPage;
import piecewright.app.Keeping;
import piecewright.app.NotWrittenException;
import piecewright.replan.ReplanResult;
import piecewright.replan.ReplanResult.Replanned;
import piecewright.replan.Where;
import piecewright.store.StoreException;
import piecewright.store.UnderWayJson;
import piecewright.text.DisplayUnits;
import piecewright.text.MovePage;

/** Plans the rest of a batch anew from what was recorded. */
@Command(
        name = "replan",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Plans the rest of a batch anew from what was recorded: what moves, from when to when, and why.",
        footer = {
            "",
            "Ends with 0 planned, 1 not possible (and why), 2 something given is wrong, 3 a file could not be written."
        })
final class ReplanCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    private final BatchOptions batchOptions = new BatchOptions();

    @Option(names = "--accept", description = "Keep the new plan as the plan of this batch.")
    private boolean accept;

    @Option(
            names = "--calendar",
            paramLabel = "FILE",
            description = "With --accept: write the steps as an iCalendar file; the same file again updates it.")
    private @Nullable Path calendar;

    @Option(
            names = "--house",
            paramLabel = "FILE",
            description = "The household as it is now: other hours, a day away, other kit; a JSON file.")
    private @Nullable Path house;

    @Mixin
    private final BesideOption besideOption = new BesideOption();

    @Mixin
    private final EntryOptions entryOptions = new EntryOptions();

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    @Option(names = "--json", description = "Print it as JSON instead of sentences.")
    private boolean json;

    ReplanCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException, NotWrittenException {
        DisplayUnits units = unitOptions.displayUnits(surroundings.locale());
        if (calendar != null && !accept) throw new OptionException("--calendar", "needs --accept beside it");
        BatchAtHand kept = batchOptions.open(surroundings);
        CalendarManner manner = entryOptions.manner(units, CalendarHabits.chosen(List.of(kept.file())));
        BatchAtHand moved =
                house == null ? kept : kept.inHouse(batchOptions.workspace().house(house, surroundings));
        BatchAtHand batch = besideOption.given()
                ? moved.beside(besideOption.taken(
                        new BesideOption.Where(batchOptions.workspace(), surroundings),
                        batchOptions.library(),
                        moved.request().house(),
                        Optional.of(moved.file())))
                : moved;
        Instant now = batchOptions.now(surroundings, batch.zone());
        ReplanResult result = batch.replan(now);
        said(batch, result, units, now);
        if (!(result instanceof Replanned replanned)) return Ending.NOT_POSSIBLE;
        Optional<Keeping.Kept> told = accept ? Optional.of(accepted(batch, replanned, manner, now)) : Optional.empty();
        if (json) return Ending.DONE;
        PrintWriter out = surroundings.streams().out();
        out.print("\n" + MovePage.ending(accept ? MovePage.Ended.KEPT : MovePage.Ended.PROPOSED));
        if (told.isPresent()) out.print(new CalendarPage(units.locale()).told(told.get()));
        return Ending.DONE;
    }

    private Keeping.Kept accepted(BatchAtHand batch, Replanned replanned, CalendarManner manner, Instant now)
            throws StoreException, NotWrittenException {
        if (entryOptions.given()) CalendarHabits.choose(List.of(batch.file()), manner.options());
        return batch.accept(replanned, Optional.ofNullable(calendar), manner, now);
    }

    private void said(BatchAtHand batch, ReplanResult result, DisplayUnits units, Instant now) throws StoreException {
        Where before = batch.where(now)
                .orElseThrow(() -> new StoreException(
                        batch.file(), "its house has no kit that holds this batch any more; mend the house"));
        PrintWriter out = surroundings.streams().out();
        out.print(
                json
                        ? new UnderWayJson(units, batch.zone()).replanned(result, before.plan(), batch.journal())
                        : new MovePage(units, batch.zone(), batch.journal()).of(result, before.plan()));
    }
}
