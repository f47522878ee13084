package piecewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import piecewright.app.CalendarHabits;
import piecewright.app.CalendarManner;
import piecewright.app.CalendarPage;
import piecewright.app.CalendarReading;
import piecewright.app.CalendarUpdate;
import piecewright.app.CollectionCalendar;
import piecewright.app.CollectionCalendar.Shown;
import piecewright.app.LiveCalendar;
import piecewright.app.NotWrittenException;
import piecewright.app.OneOffCalendar;
import piecewright.calendar.ExportOptions;
import piecewright.publish.Account;
import piecewright.publish.PublishResult;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;

/** Puts kept batches into a calendar: a file to import, a file to watch, or a collection on a server. */
@Command(
        name = "calendar",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Puts kept batches into one calendar, or keeps it up to date; says first what would change.",
        footer = {
            "",
            "Ends with 0 done, 1 some entries were left alone (and why), 2 something given is wrong,",
            "3 a file could not be written or a server did not take it."
        })
final class CalendarCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Option(
            names = "--batch",
            paramLabel = "BATCH",
            description = "A batch kept with plan --into, by its name in the workspace or its file; once for each batch"
                    + " the calendar shall show.")
    private List<Path> named = new ArrayList<>();

    @Mixin
    private final WorkspaceOptions workspaceOptions = new WorkspaceOptions();

    @Option(names = "--file", paramLabel = "FILE", description = "Write one file to import by hand, or")
    private @Nullable Path file;

    @Option(
            names = "--live",
            paramLabel = "FILE",
            description = "keep this file up to date from now on, for a calendar that watches it, or")
    private @Nullable Path live;

    @Mixin
    private final CollectionOptions collection = new CollectionOptions();

    @Option(names = "--preview", description = "Only say what would change.")
    private boolean preview;

    @Option(names = "--take-out", description = "No longer show the batches: in the live file or the collection.")
    private boolean takeOut;

    @Option(
            names = "--forget",
            description =
                    "Let go of the collection the batches are published to without asking it: for a server that is"
                            + " gone.")
    private boolean forget;

    @Mixin
    private final EntryOptions entryOptions = new EntryOptions();

    @Mixin
    private final StyleOption styleOption = new StyleOption();

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    CalendarCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException, NotWrittenException {
        DisplayUnits units = unitOptions.displayUnits(surroundings.locale());
        if (forget) return forgotten(new CalendarPage(units.locale()));
        int targets = (file == null ? 0 : 1) + (live == null ? 0 : 1) + (collection.given() ? 1 : 0);
        if (targets != 1) {
            throw new OptionException("--file", "or --live or --collection must be given, one of the three");
        }
        List<Path> batches = batches();
        Optional<ExportOptions> before = live == null ? Optional.empty() : LiveCalendar.options(live);
        CalendarManner manner =
                entryOptions.manner(units, before.isPresent() ? before : CalendarHabits.chosen(batches));
        CalendarPage page = new CalendarPage(manner.units().locale());
        CalendarReading reading =
                new CalendarReading(styleOption.library(), surroundings.clock().instant());
        if (file != null) return toFile(file, batches, page, manner, reading);
        return live != null
                ? toLive(live, batches, page, manner, reading)
                : toCollection(batches, page, manner, reading);
    }

    private List<Path> batches() throws OptionException, StoreException {
        if (named.isEmpty()) {
            throw new OptionException("--batch", "is missing; give a file kept with plan --into");
        }
        List<Path> batches = new ArrayList<>();
        for (Path name : named) batches.add(workspaceOptions.batch(name, surroundings));
        return batches;
    }

    private int forgotten(CalendarPage page) throws OptionException, StoreException, NotWrittenException {
        List<CollectionCalendar.Forgotten> all = CollectionCalendar.forget(batches());
        if (all.isEmpty()) return say(page.nothingForgotten());
        StringBuilder lines = new StringBuilder();
        all.forEach(one -> lines.append(page.forgotten(one)));
        return say(lines.toString());
    }

    private int toFile(
            Path target, List<Path> batches, CalendarPage page, CalendarManner manner, CalendarReading reading)
            throws OptionException, StoreException, NotWrittenException {
        if (takeOut) throw new OptionException("--take-out", "needs --live or --collection; a file was imported");
        OneOffCalendar calendar = OneOffCalendar.of(target, batches, reading);
        if (preview) return say(page.preview(calendar.preview(manner)));
        return say(page.written(calendar.write(manner, reading.now())) + page.how("file"));
    }

    private int toLive(
            Path target, List<Path> batches, CalendarPage page, CalendarManner manner, CalendarReading reading)
            throws StoreException, NotWrittenException {
        LiveCalendar calendar = takeOut
                ? LiveCalendar.without(target, batches, reading)
                : LiveCalendar.with(target, batches, manner, reading);
        if (preview) return say(page.preview(calendar.preview()));
        if (!takeOut) CalendarHabits.choose(batches, manner.options());
        return say(page.written(calendar.write()) + (takeOut ? "" : page.how("live")));
    }

    private int toCollection(List<Path> batches, CalendarPage page, CalendarManner manner, CalendarReading reading)
            throws OptionException, StoreException, NotWrittenException {
        Shown shown = takeOut ? Shown.TAKE_OUT : Shown.SHOW;
        CollectionCalendar calendar = CollectionCalendar.of(collection.collection(), batches, shown, reading);
        CollectionCalendar.Choices choices = collection.choices();
        CalendarUpdate update = calendar.preview(manner, reading.now());
        if (preview) return say(page.preview(update));
        List<PublishResult> results;
        try (Account account = collection.account(surroundings.secrets())) {
            results = calendar.publish(account, collection.ifAbsent(), choices, manner, reading.now());
        }
        boolean finished = results.stream().allMatch(PublishResult.Published.class::isInstance);
        PrintWriter stream =
                finished ? surroundings.streams().out() : surroundings.streams().err();
        if (finished) stream.print(page.changed(update));
        results.forEach(result -> stream.print(page.published(update, result)));
        if (!finished) return Ending.NOT_WRITTEN;
        boolean leftAlone = results.stream()
                .anyMatch(result ->
                        !((PublishResult.Published) result).conflicts().isEmpty());
        return leftAlone ? Ending.NOT_POSSIBLE : Ending.DONE;
    }

    private int say(String text) {
        surroundings.streams().out().print(text);
        return Ending.DONE;
    }
}
