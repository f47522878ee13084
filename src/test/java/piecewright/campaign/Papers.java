package piecewright.campaign;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

/** Pages, pictures and calendars somebody asks for on the way. */
final class Papers {
    private final Dice dice;
    private final Terminal terminal;
    private final Verdicts verdicts;
    private final Path folder;

    Papers(Dice dice, Terminal terminal, Verdicts verdicts, Path folder) {
        this.dice = dice;
        this.terminal = terminal;
        this.verdicts = verdicts;
        this.folder = folder;
    }

    void asked(Batch batch, Instant now) {
        switch (dice.from(0, 4)) {
            case 0 -> well(now, "agenda", "--now", now.toString());
            case 1 -> calendar(now, "--file", folder.resolve(batch.name() + ".ics"), batch);
            case 2 -> calendar(now, "--live", folder.resolve("live.ics"), batch);
            case 3 -> sheet(batch, now);
            default -> well(now, "where", batch.name(), "--now", now.toString());
        }
    }

    private void well(Instant now, String... words) {
        Terminal.Said said = terminal.run(now, words);
        if (!said.well()) verdicts.found("a page is not given", words[0], said.code() + said.err() + said.out());
    }

    private void sheet(Batch batch, Instant now) {
        Path sheet = folder.resolve(batch.name() + ".html");
        Path chart = folder.resolve(batch.name() + ".svg");
        well(now, "papers", batch.name(), "--now", now.toString(), "--sheet", "" + sheet, "--chart", "" + chart);
        if (!Files.exists(sheet)) verdicts.found("a page was not written", "papers", "" + sheet);
    }

    private void calendar(Instant now, String kind, Path file, Batch batch) {
        Terminal.Said said = terminal.run(now, "calendar", "--batch", batch.name(), kind, file.toString());
        if (!said.well()) {
            verdicts.found("a calendar is not written", "calendar " + kind, said.err() + said.out());
            return;
        }
        try {
            List<String> uids = Files.readAllLines(file).stream()
                    .filter(line -> line.startsWith("UID:"))
                    .toList();
            if (uids.isEmpty() || uids.stream().distinct().count() < uids.size()) {
                verdicts.found("a calendar with none or twice the same entries", "calendar " + kind, uids.size() + "");
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
