package piecewright.cli;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import piecewright.app.BatchAtHand;
import piecewright.app.BatchAtHand.Recording;
import piecewright.app.NotWrittenException;
import piecewright.store.StoreException;
import piecewright.store.UnderWayJson;
import piecewright.text.CalendarPhrases;
import piecewright.text.DisplayUnits;
import piecewright.text.EntryWords;
import piecewright.text.WherePage;

/** Writes down what happened to a batch, and reads back what was understood. */
@Command(
        name = "record",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Writes down what happened to a batch: \"drained 5.56 kg 21:40 yesterday\", \"couch 49 C\", "
                + "\"acrospire 3 8 12 6 1\", \"correct 7 5.46 kg\". Without a line it shows the journal.",
        footer = {
            "",
            "Ends with 0 kept and read back, 1 something must be asked first, 2 something given is wrong, "
                    + "3 it could not be written."
        })
final class RecordCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    private final BatchOptions batchOptions = new BatchOptions();

    @Parameters(index = "1..*", paramLabel = "LINE", description = "What happened, one thing a line.")
    private List<String> words = new ArrayList<>();

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    @Option(names = "--json", description = "Print what was understood as JSON instead of sentences.")
    private boolean json;

    RecordCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException, NotWrittenException {
        DisplayUnits units = unitOptions.displayUnits(surroundings.locale());
        BatchAtHand batch = batchOptions.open(surroundings);
        Instant now = batchOptions.now(surroundings, batch.zone());
        PrintWriter out = surroundings.streams().out();
        if (words.isEmpty()) {
            shown(batch, units, out);
            return Ending.DONE;
        }
        Recording recording = batch.recordLine(String.join(" ", words), units, now);
        if (recording instanceof Recording.Asked asked) {
            if (json) out.print(new UnderWayJson(units, batch.zone()).asked(asked.unclear()));
            else {
                out.println(asked.unclear().question());
                asked.unclear().choices().forEach(choice -> out.println("  " + choice));
            }
            return Ending.NOT_POSSIBLE;
        }
        Recording.Kept kept = (Recording.Kept) recording;
        if (json) out.print(new UnderWayJson(units, batch.zone()).recorded(kept.entries(), kept.questions()));
        else said(kept, batch, units, out);
        kept.calendarFault()
                .ifPresent(fault -> surroundings
                        .streams()
                        .err()
                        .println("piecewright: " + CalendarPhrases.say("live-behind", fault)));
        return Ending.DONE;
    }

    private void shown(BatchAtHand batch, DisplayUnits units, PrintWriter out) {
        if (json) {
            out.print(new UnderWayJson(units, batch.zone())
                    .recorded(batch.journal().entries(), List.of()));
            return;
        }
        EntryWords entries = new EntryWords(units, batch.zone());
        batch.journal().entries().forEach(entry -> out.println(entries.sentence(entry)));
    }

    private static void said(Recording.Kept kept, BatchAtHand batch, DisplayUnits units, PrintWriter out) {
        EntryWords entries = new EntryWords(units, batch.zone());
        kept.entries().forEach(entry -> out.println(entries.sentence(entry)));
        WherePage questions = new WherePage(units, batch.zone());
        kept.questions().forEach(question -> out.println(questions.question(question)));
    }
}
