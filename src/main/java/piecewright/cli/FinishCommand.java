package piecewright.cli;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import piecewright.app.BatchAtHand;
import piecewright.app.FinishBatch;
import piecewright.app.FinishBatch.Ending.Closed;
import piecewright.app.FinishBatch.Ending.NotYet;
import piecewright.app.FinishBatch.Ending.Wet;
import piecewright.app.NotWrittenException;
import piecewright.store.FinishJson;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;
import piecewright.text.FinishPage;
import piecewright.text.LearnedPage;
import piecewright.text.MomentFormat;
import piecewright.text.Phrases;
import piecewright.text.QuantityParser;
import piecewright.text.UnreadableException;
import piecewright.text.WherePage;

/** Closes a batch whose malt is cleaned and weighed. */
@Command(
        name = "finish",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Closes a batch: yield and colour against its plan, what it taught of its lot and kit, notes for"
                + " next time.",
        footer = {
            "",
            "Ends with 0 closed, 1 not yet (and why), such as malt that is too wet, 2 something given is wrong, 3 a file could not be written."
        })
final class FinishCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    private final BatchOptions batchOptions = new BatchOptions();

    @Option(
            names = "--weight",
            paramLabel = "WEIGHT",
            description = "The malt, rootlets off, such as \"4.93 kg\". Left out: as it was recorded.")
    private @Nullable String weight;

    @Option(
            names = "--colour",
            paramLabel = "COLOUR",
            description = "As measured or compared, such as \"4 EBC\". Left out: as it was recorded, if it was.")
    private @Nullable String colour;

    @Option(names = "--note", paramLabel = "WORDS", description = "What to do otherwise next time; may stand often.")
    private List<String> notes = new ArrayList<>();

    @Option(names = "--anyway", description = "Close it though the malt is still too wet to keep.")
    private boolean anyway;

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    @Option(names = "--json", description = "Print it as JSON instead of sentences.")
    private boolean json;

    FinishCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException, NotWrittenException {
        DisplayUnits units = unitOptions.displayUnits(surroundings.locale());
        FinishBatch.Told told = told(units);
        BatchAtHand batch = batchOptions.open(surroundings);
        Instant now = batchOptions.now(surroundings, batch.zone());
        FinishBatch.Ending ending = FinishBatch.of(batch, told, now);
        PrintWriter out = surroundings.streams().out();
        if (ending instanceof Wet wet) {
            String why = new WherePage(units, batch.zone()).wetMalt(wet.malt());
            out.print(json ? FinishJson.notYet(why) : FinishPage.notYet(why));
            if (json || !anyway()) {
                if (!json) out.print(FinishPage.notYet(Phrases.say("finish.not-yet.wet")));
                return Ending.NOT_POSSIBLE;
            }
            ending = FinishBatch.of(batch, told.despiteWater(), now);
        }
        if (ending instanceof NotYet not) {
            String why = Phrases.say("finish.not-yet." + Phrases.key(not.why()));
            out.print(json ? FinishJson.notYet(why) : FinishPage.notYet(why));
            return Ending.NOT_POSSIBLE;
        }
        Closed closed = (Closed) ending;
        List<String> sentences = new FinishPage(units)
                .sentences(
                        closed.finished(),
                        new FinishPage.Expected(
                                closed.expected().grainKg(),
                                closed.expected().maltKg(),
                                closed.expected().colourEbc()));
        if (json) out.print(FinishJson.finished(closed.finished(), closed.expected(), sentences));
        else out.print(page(batch, closed, sentences, units, now));
        return Ending.DONE;
    }

    /** Asks whoever sits there; with nobody there it stays open. */
    private boolean anyway() {
        surroundings.streams().out().flush();
        return surroundings
                .streams()
                .answer(Phrases.say("finish.anyway"))
                .filter(answer -> answer.strip().equalsIgnoreCase(Phrases.say("finish.yes")))
                .isPresent();
    }

    private FinishBatch.Told told(DisplayUnits units) throws OptionException {
        OptionalDouble colourEbc =
                colour == null ? OptionalDouble.empty() : OptionalDouble.of(MaltColour.ebc("--colour", colour, units));
        return new FinishBatch.Told(maltKg(units), colourEbc, notes, anyway);
    }

    private OptionalDouble maltKg(DisplayUnits units) throws OptionException {
        if (weight == null) return OptionalDouble.empty();
        try {
            double maltKg = QuantityParser.forPerson(units).massKg(weight);
            if (maltKg > 0) return OptionalDouble.of(maltKg);
            throw new OptionException("--weight", "must be more than nothing");
        } catch (UnreadableException unreadable) {
            throw new OptionException("--weight", String.valueOf(unreadable.getMessage()));
        }
    }

    private static String page(
            BatchAtHand batch, Closed closed, List<String> sentences, DisplayUnits units, Instant now) {
        MomentFormat moments = new MomentFormat(batch.zone(), units.locale());
        String lot = batch.request().lot().name();
        String learned = new LearnedPage(units).outcome(lot, closed.lessons(), LearnedPage.Kept.NO);
        return new FinishPage(units).of(moments.dated(now), sentences, learned);
    }
}
