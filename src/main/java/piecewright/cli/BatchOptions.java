package piecewright.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import piecewright.app.BatchAtHand;
import piecewright.store.JournalFile;
import piecewright.store.JournalFile.DamagedLine;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.text.Quoted;

/** Which batch, and as if at which moment. */
final class BatchOptions {
    @Parameters(
            index = "0",
            paramLabel = "BATCH",
            description = "A batch kept with plan --into: its name in the workspace, or a file.")
    private @Nullable Path batch;

    @Mixin
    private final WorkspaceOptions workspaceOptions = new WorkspaceOptions();

    @Mixin
    private final StyleOption styleOption = new StyleOption();

    @Mixin
    private final NowOption nowOption = new NowOption();

    BatchAtHand open(Surroundings surroundings) throws StoreException {
        return open(typed(), surroundings);
    }

    /** Another batch, named the same way. */
    BatchAtHand open(Path named, Surroundings surroundings) throws StoreException {
        Path file = workspaceOptions.batch(named, surroundings);
        BatchAtHand opened = BatchAtHand.open(file, styleOption.library(), surroundings.continuation());
        for (DamagedLine line : opened.damaged()) {
            surroundings
                    .streams()
                    .err()
                    .println("piecewright: " + JournalFile.beside(file) + ": line " + line.line()
                            + " cannot be read and was passed over (" + Quoted.shortly(line.why())
                            + "); it stays in the file, write down again what it said");
        }
        return opened;
    }

    StyleLibrary library() throws StoreException {
        return styleOption.library();
    }

    WorkspaceOptions workspace() {
        return workspaceOptions;
    }

    private Path typed() {
        return java.util.Objects.requireNonNull(batch);
    }

    Instant now(Surroundings surroundings, ZoneId zone) throws OptionException {
        return nowOption.now(surroundings, zone);
    }
}
