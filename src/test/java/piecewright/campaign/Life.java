package piecewright.campaign;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import piecewright.oracle.Home;
import piecewright.oracle.HouseText;
import piecewright.oracle.Told;

/** The life of a batch or two in one made-up household, from the wish to the sack, as one seed has it. */
final class Life {
    private static final int MOST_TURNS = 90;
    private static final int MOST_WISHES = 5;

    private final Dice dice;
    private final Verdicts verdicts = new Verdicts();
    private final Homestead homestead;
    private final Terminal terminal;
    private final Path folder;
    private final Home home;
    private final Papers papers;
    private final List<Batch> batches = new ArrayList<>();
    private Instant now = Instant.EPOCH;

    Life(long seed, Path folder) {
        this.dice = new Dice(seed);
        this.folder = folder;
        this.homestead = new Homestead(dice);
        homestead.write(folder.resolve("house.json"));
        this.home = HouseText.home(folder.resolve("house.json"));
        this.terminal = new Terminal(folder.resolve("kept"), homestead.manners(), verdicts);
        this.papers = new Papers(dice, terminal, verdicts, folder);
    }

    /** How many batches came to be. */
    int batches() {
        return batches.size();
    }

    Verdicts lived() {
        begins("first", Optional.empty());
        if (batches.isEmpty()) return verdicts;
        if (dice.once(0.2)) begins("second", Optional.of(batches.get(0)));
        Lines lines = new Lines(dice, homestead);
        Maltster maltster = new Maltster(dice, Temper.any(dice), lines, home.zone());
        Trouble trouble = new Trouble(dice, verdicts);
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            Optional<Batch> due = batches.stream()
                    .filter(batch -> !batch.toCome().isEmpty())
                    .min(Comparator.comparing(batch -> batch.toCome().get(0).at()));
            if (due.isEmpty()) break;
            turn(due.get(), maltster, trouble);
        }
        batches.forEach(batch -> finished(batch, lines));
        return verdicts;
    }

    private void begins(String name, Optional<Batch> other) {
        for (int tries = 0; tries < MOST_WISHES; tries++) {
            Wish wish = Wish.any(dice, homestead.us());
            Batch batch = new Batch(name, terminal, verdicts, home, HouseText.norms(wish.style()));
            List<String> words = new ArrayList<>(wish.words());
            words.addAll(List.of("--lot", ownLot(wish.lot()).toString(), "--house", "" + folder.resolve("house.json")));
            other.ifPresent(first -> words.addAll(batch.beside(first)));
            Instant asked = wish.today().atTime(9, 0).atZone(home.zone()).toInstant();
            if (!batch.planned(asked, words)) continue;
            batches.add(batch);
            now = now.isAfter(asked) ? now : asked;
            return;
        }
    }

    private void turn(Batch batch, Maltster maltster, Trouble trouble) {
        Told.Step step = batch.toCome().get(0);
        Instant comes = maltster.comesTo(step, now);
        Duration gap = Duration.between(now, comes);
        if (gap.toHours() > 3) maltster.idles(batch, step, now.plus(gap.dividedBy(2)));
        now = comes;
        now = maltster.sees(batch, step, now).plus(Duration.ofMinutes(step.minutes()));
        batch.where(now);
        if (maltster.isCurious()) papers.asked(batch, now);
        if (maltster.hasTrouble()) now = trouble.strikes(batch, terminal.workspace(), now);
        if (maltster.wantsANewPlan()) {
            boolean calendar = dice.once(0.3);
            batch.replanned(
                    now,
                    calendar || dice.once(0.8),
                    calendar ? List.of("--calendar", "" + folder.resolve(batch.name() + "-plan.ics")) : List.of());
        }
    }

    private void finished(Batch batch, Lines lines) {
        Instant after = now.plus(Duration.ofDays(2));
        batch.where(after);
        String weight = lines.mass(batch.told().scaleKg());
        for (int times = 0; times < 2; times++) {
            Terminal.Said said =
                    terminal.run(after, "finish", batch.name(), "--now", after.toString(), "--weight", weight);
            if (said.code() == 2) verdicts.found("a batch cannot be finished", "finish", said.err());
        }
        batch.where(after);
        batch.diary().compare(after, List.of());
        papers.asked(batch, after);
    }

    /** A copy of the lot that this life may write beside. */
    private Path ownLot(Path lot) {
        Path own = folder.resolve(lot.getFileName());
        try {
            if (!Files.exists(own)) Files.copy(lot, own);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return own;
    }
}
