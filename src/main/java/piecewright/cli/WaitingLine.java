package piecewright.cli;

import java.time.Duration;
import piecewright.plan.Watch;
import piecewright.text.Phrases;

/** Tells a person at a terminal that a plan is still being looked for, on one line that is wiped off afterwards. */
final class WaitingLine implements Watch, AutoCloseable {
    /** Judgement: what takes less needs no word. */
    private static final Duration QUIET = Duration.ofMillis(300);
    /** Judgement: quick enough to look alive. */
    private static final Duration AGAIN = Duration.ofMillis(200);

    private final Surroundings.Streams streams;
    private final long startNanos = System.nanoTime();
    private long nextNanos = QUIET.toNanos();
    private int shown;

    WaitingLine(Surroundings.Streams streams) {
        this.streams = streams;
    }

    @Override
    public synchronized void looking() {
        long passed = System.nanoTime() - startNanos;
        if (!streams.terminal() || passed < nextNanos) return;
        nextNanos = passed + AGAIN.toNanos();
        String tenths = String.valueOf(Duration.ofNanos(passed).toMillis() / 100 / 10.0);
        String line = Phrases.say("waiting.plan", tenths);
        streams.printOver(line);
        shown = line.length();
    }

    /** Wipes the line off. */
    @Override
    public synchronized void close() {
        if (shown == 0) return;
        streams.printOver(" ".repeat(shown));
        streams.printOver("");
        shown = 0;
    }
}
