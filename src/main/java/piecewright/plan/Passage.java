package piecewright.plan;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import piecewright.plan.Found.ColdSpell;
import piecewright.plan.Simulation.Passing;
import piecewright.plan.Simulation.Read;
import piecewright.process.Metabolism;
import piecewright.process.PieceState;
import piecewright.process.Stage;

/** Lets time pass over a piece and takes in the readings made meanwhile. Scratch space of one run. */
final class Passage {
    private final List<Reading> readings;
    private final List<ColdSpell> coldSpells;
    private final ToDoubleFunction<Instant> hours;
    private final double fullestCoreRatio;
    private final Metabolism lot;
    private final List<Read> reads = new ArrayList<>();

    Passage(Found found, ToDoubleFunction<Instant> hours, double fullestCoreRatio, Metabolism lot) {
        this.lot = lot;
        this.readings = found.readings();
        this.coldSpells = found.coldSpells();
        this.hours = hours;
        this.fullestCoreRatio = fullestCoreRatio;
    }

    /** The piece as expected and, once it is in the kiln, in a slow one. */
    record Piece(PieceState expected, Optional<PieceState> slow) {}

    /** From one instant until another. */
    record Stretch(Instant from, Instant until) {}

    List<Read> reads() {
        return reads;
    }

    /** When the last reading not taken in yet was made, or else that instant. */
    Instant lastAt(Instant otherwise) {
        return reads.size() < readings.size()
                ? readings.get(readings.size() - 1).at()
                : otherwise;
    }

    /** The piece at the end of a stretch of one phase. A reading made before the stretch counts at its start. */
    Piece through(Piece start, Passing passing, Stretch stretch, Stage.Observer observer) {
        Piece now = start;
        Passing going = passing;
        Instant at = stretch.from();
        while (reads.size() < readings.size()
                && !readings.get(reads.size()).at().isAfter(stretch.until())) {
            Reading reading = readings.get(reads.size());
            Instant then = reading.at().isBefore(at) ? at : reading.at();
            if (then.isAfter(at)) {
                now = run(now, going, new Stretch(at, then), observer);
                going = passing.goingOn();
                at = then;
            }
            now = read(now, reading);
        }
        return run(now, going, new Stretch(at, stretch.until()), observer);
    }

    private Piece read(Piece now, Reading reading) {
        PieceState held = reading.held(now.expected(), fullestCoreRatio, lot);
        Optional<PieceState> slow = reading.weighs() ? now.slow().map(any -> held) : now.slow();
        double slowFraction = slow.orElse(held).mass().moisture().wetBasisFraction();
        reads.add(new Read(reading, now.expected(), held, slowFraction));
        return new Piece(held, slow);
    }

    /** Without heat the malt neither dries nor cures; it waits. */
    private Piece run(Piece start, Passing passing, Stretch stretch, Stage.Observer observer) {
        if (passing.kind() != PhaseKind.DRYING && passing.kind() != PhaseKind.CURING) {
            return heated(start, passing, stretch, observer);
        }
        Piece now = start;
        Instant at = stretch.from();
        for (ColdSpell spell : coldSpells) {
            if (!spell.until().isAfter(at) || !spell.from().isBefore(stretch.until())) continue;
            if (spell.from().isAfter(at)) now = heated(now, passing, new Stretch(at, spell.from()), observer);
            at = spell.until().isBefore(stretch.until()) ? spell.until() : stretch.until();
        }
        return heated(now, passing, new Stretch(at, stretch.until()), observer);
    }

    private Piece heated(Piece start, Passing passing, Stretch stretch, Stage.Observer observer) {
        double from = hours.applyAsDouble(stretch.from());
        double until = hours.applyAsDouble(stretch.until());
        PieceState expected = passing.expected().isPresent()
                ? passing.expected().get().run(start.expected(), from, until, observer)
                : start.expected();
        Optional<PieceState> slow = start.slow();
        if (slow.isPresent() && passing.slow().isPresent()) {
            slow = Optional.of(passing.slow().get().run(slow.get(), from, until));
        }
        return new Piece(expected, slow);
    }
}
