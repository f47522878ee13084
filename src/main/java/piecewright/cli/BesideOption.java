package piecewright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import piecewright.app.OtherBatches;
import piecewright.house.House;
import piecewright.plan.Booking;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;

/** Batches in progress whose hands and kit are not free. */
final class BesideOption {
    @Option(
            names = "--beside",
            paramLabel = "BATCH",
            description = {
                "A batch in progress (plan --into) that shares people and kit: its acts and its vessels, trays, box",
                "and heaters are not free while it needs them. Give it once for each batch."
            })
    private List<Path> batches = new ArrayList<>();

    boolean given() {
        return !batches.isEmpty();
    }

    /** What they take of this house. */
    List<Booking> taken(StyleLibrary library, House house) throws StoreException {
        return new OtherBatches(library).taken(house, batches);
    }
}
