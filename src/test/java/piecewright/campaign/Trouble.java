package piecewright.campaign;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** What befalls a household: the power fails, a clock is wrong, a write is cut off in the middle. */
final class Trouble {
    private final Dice dice;
    private final Verdicts verdicts;

    Trouble(Dice dice, Verdicts verdicts) {
        this.dice = dice;
        this.verdicts = verdicts;
    }

    /** Gives back when all is well again. */
    Instant strikes(Batch batch, Path workspace, Instant now) {
        switch (dice.from(0, 2)) {
            case 0 -> {
                batch.record(now, "power out");
                Instant back = now.plus(Duration.ofMinutes(dice.from(5, 600)));
                batch.replanned(now, dice.once(0.5), List.of());
                batch.record(back, "power back");
                return back;
            }
            case 1 -> wrongClock(batch, now);
            default -> cutOff(batch, workspace, now);
        }
        return now;
    }

    /** A clock years off: nothing that says so may be kept without a question. */
    private void wrongClock(Batch batch, Instant now) {
        Instant wrong = dice.one(
                Instant.parse("1970-01-01T00:10:00Z"),
                now.plus(Duration.ofDays(2000)),
                now.minus(Duration.ofDays(365)));
        if (batch.diary().keptUnasked(wrong, dice.one("bed 14 C", "turned", "note here", "soaked"))) {
            verdicts.found("an entry of a wrong clock was kept", "record", wrong + " at " + now);
            batch.record(now, "strike " + batch.diary().lastNumber());
        }
        batch.where(now);
    }

    private void cutOff(Batch batch, Path workspace, Instant now) {
        Path journal = workspace.resolve("batches").resolve(batch.name() + ".json.journal.jsonl");
        if (!Files.exists(journal)) return;
        try {
            Files.writeString(journal, "{\"number\":9,\"at\"", StandardOpenOption.APPEND);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        batch.diary().compare(now, List.of());
        batch.where(now);
    }
}
