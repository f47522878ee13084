package piecewright.cli;

import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import piecewright.app.BatchAtHand;
import piecewright.app.BatchPapers;
import piecewright.app.NotWrittenException;
import piecewright.app.PlanPapers;
import piecewright.app.Printing;
import piecewright.store.JournalFile;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;

/** Writes the papers of a kept batch as it stands. */
@Command(
        name = "papers",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Writes the bench sheet and the pictures of a batch as it stands: done steps ticked, what was"
                + " measured over what was forecast.",
        footer = {"", "Ends with 0 written, 2 something given is wrong, 3 a file could not be written."})
final class PapersCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    private final BatchOptions batchOptions = new BatchOptions();

    @Mixin
    private final PaperOptions paperOptions = new PaperOptions();

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    PapersCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException, NotWrittenException {
        DisplayUnits units = unitOptions.displayUnits(surroundings.locale());
        if (!paperOptions.isAsked()) {
            throw new OptionException("--sheet", "or --chart or --couch-chart must be given, with a file to write");
        }
        BatchAtHand batch = batchOptions.open(surroundings);
        Printing.Targets targets = paperOptions.targets(List.of(batch.file(), JournalFile.beside(batch.file())));
        paperOptions.mustSuit(batch.request().style());
        Printing printing = Printing.open(targets);
        Instant now = batchOptions.now(surroundings, batch.zone());
        printing.print(new PlanPapers(units), new BatchPapers(batch, now).papers());
        surroundings.streams().out().print(PaperOptions.written(targets).substring(1));
        return Ending.DONE;
    }
}
