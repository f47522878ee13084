package piecewright.cli;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import piecewright.app.BatchAtHand;
import piecewright.app.BatchAtHand.Recording;
import piecewright.app.NotWrittenException;
import piecewright.journal.Entry;
import piecewright.reading.Outcome;
import piecewright.store.StoreException;
import piecewright.store.UnderWayJson;
import piecewright.text.CalendarPhrases;
import piecewright.text.DisplayUnits;
import piecewright.text.EntryWords;
import piecewright.text.Phrases;
import piecewright.text.WherePage;

/** Writes down what happened to a batch, and reads back what was understood. */
@Command(
        name = "record",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Writes down what happened to a batch, as you would say it: \"drained 5.56 kg 21:40 yesterday\", "
                + "\"quarter to ten, water off\", \"43 in the middle, 41 bottom\", \"no mould\", \"7.0 + 7.6 lb\". "
                + "\"correct 7 5.46 kg\" puts an entry right, \"undo\" or \"strike 7\" takes it out. "
                + "Without a line it shows the journal.",
        footer = {
            "",
            "Ends with 0 kept and read back, 2 something must be asked first or is refused, "
                    + "3 it could not be written. Without a terminal the questions come with the lines to type."
        })
final class RecordCommand implements Callable<Integer> {
    private static final int LAST = 5;

    private final Surroundings surroundings;

    @Mixin
    private final BatchOptions batchOptions = new BatchOptions();

    @Parameters(index = "1..*", paramLabel = "LINE", description = "What happened; several things may stand in a line.")
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
        if (words.isEmpty()) {
            shown(batch, units);
            return Ending.DONE;
        }
        return recorded(String.join(" ", words), batch, units, now);
    }

    private int recorded(String line, BatchAtHand batch, DisplayUnits units, Instant now)
            throws OptionException, StoreException, NotWrittenException {
        PrintWriter out = surroundings.streams().out();
        Recording recording = batch.recordLine(line, units, now);
        UnderWayJson documents = new UnderWayJson(units, batch.zone());
        if (recording instanceof Recording.Refused refused) {
            if (json) out.print(documents.refused(refused.sentence()));
            else out.println(refused.sentence());
            return Ending.BAD_INPUT;
        }
        if (recording instanceof Recording.Asked asked) {
            if (json) out.print(documents.asked(asked.asked()));
            else return answered(asked.asked(), batch, units, now);
            return Ending.BAD_INPUT;
        }
        Recording.Kept kept = (Recording.Kept) recording;
        if (json) out.print(documents.recorded(kept.entries(), kept.questions(), kept.wetMalt()));
        else said(kept, batchOptions.open(surroundings), units);
        kept.calendarFault()
                .ifPresent(fault -> surroundings
                        .streams()
                        .err()
                        .println("piecewright: " + CalendarPhrases.say("live-behind", fault)));
        return Ending.DONE;
    }

    /** Asks whoever sits there; without anybody there the offers are all there is. */
    private int answered(Outcome.Asked asked, BatchAtHand batch, DisplayUnits units, Instant now)
            throws OptionException, StoreException, NotWrittenException {
        PrintWriter out = surroundings.streams().out();
        out.println(asked.question());
        for (int key = 1; key <= asked.offers().size(); key++) {
            Outcome.Offer offer = asked.offers().get(key - 1);
            out.println("  " + Phrases.say("record.offer", Integer.toString(key), offer.words(), offer.line()));
        }
        out.flush();
        String most = Integer.toString(asked.offers().size());
        Optional<String> answer = surroundings.streams().answer(Phrases.say("record.choose", most));
        if (answer.isEmpty() || answer.get().isBlank()) {
            if (answer.isPresent()) out.println(Phrases.say("record.nothing-kept"));
            return Ending.BAD_INPUT;
        }
        String typed = answer.get().strip();
        for (int key = 1; key <= asked.offers().size(); key++) {
            if (typed.equals(Integer.toString(key)))
                typed = asked.offers().get(key - 1).line();
        }
        return recorded(typed, batch, units, now);
    }

    private void shown(BatchAtHand batch, DisplayUnits units) {
        PrintWriter out = surroundings.streams().out();
        if (json) {
            out.print(new UnderWayJson(units, batch.zone())
                    .recorded(batch.journal().entries(), List.of(), Optional.empty()));
            return;
        }
        EntryWords entries = new EntryWords(units, batch.zone());
        batch.journal().entries().forEach(entry -> out.println(entries.sentence(entry)));
    }

    /** What was kept, and the last entries where they tell more than that. */
    private void said(Recording.Kept kept, BatchAtHand after, DisplayUnits units) {
        PrintWriter out = surroundings.streams().out();
        EntryWords words = new EntryWords(units, after.zone());
        kept.entries().forEach(entry -> out.println(words.sentence(entry)));
        WherePage questions = new WherePage(units, after.zone());
        kept.questions().forEach(question -> out.println(questions.question(question)));
        kept.wetMalt().ifPresent(malt -> out.println(questions.wetMalt(malt)));
        List<Entry> all = after.journal().entries();
        List<Entry> last = all.subList(Math.max(0, all.size() - LAST), all.size());
        if (last.size() <= kept.entries().size()) return;
        out.println(Phrases.say("record.last"));
        last.forEach(entry -> out.println("  " + words.sentence(entry)));
    }
}
