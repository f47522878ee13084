package piecewright.app;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import piecewright.learn.Learned;
import piecewright.learn.Lessons;
import piecewright.learn.Lessons.Known;
import piecewright.learn.Lessons.Outcome;
import piecewright.plan.ModelParameters;
import piecewright.store.FolderLock;
import piecewright.store.LearnedFile;
import piecewright.store.StoreException;

/**
 * Keeps what a batch taught beside the files of its lot and its house. Done twice for one batch it teaches nothing
 * twice, so what failed half way may simply be done again.
 *
 * @param lotFile the lot's own file, which is not touched; likewise the house's
 */
public record BatchLessons(Path lotFile, Path houseFile) {
    public BatchLessons {
        Objects.requireNonNull(lotFile);
        Objects.requireNonNull(houseFile);
    }

    /** What earlier batches taught. */
    public Known known() throws StoreException {
        return new Known(learned(lotFile), learned(houseFile));
    }

    /** What the batch teaches so far; nothing is kept. */
    public Outcome soFar(Lessons.Batch batch, Instant now) throws StoreException {
        return new Lessons(ModelParameters.defaults()).of(batch, known(), now);
    }

    /** Learns from the batch and keeps it. */
    public Outcome keep(Lessons.Batch batch, Instant now) throws StoreException, NotWrittenException {
        try (FolderLock lock = Locking.of(List.of(lotFile, houseFile))) {
            Outcome outcome = soFar(batch, now);
            if (outcome instanceof Outcome.Taught taught && lock.holds()) write(taught.known());
            return outcome;
        }
    }

    /** What was known before in place of what is known; what was learned meanwhile is not written over. */
    void putBack(Known knows, Known knew) throws NotWrittenException {
        try (FolderLock lock = Locking.of(List.of(lotFile, houseFile))) {
            if (lock.holds() && known().equals(knows)) write(knew);
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }

    private void write(Known known) throws NotWrittenException {
        try {
            LearnedFile.write(lotFile, known.lot());
            LearnedFile.write(houseFile, known.house());
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }

    private static Learned learned(Path file) throws StoreException {
        return LearnedFile.parse(LearnedFile.beside(file), LearnedFile.textBeside(file));
    }
}
