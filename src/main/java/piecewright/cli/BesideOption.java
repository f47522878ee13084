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
                "A batch in progress, by its name in the workspace or its file, that shares people and kit: its acts and",
                "its vessels, trays, box and heaters are not free while it needs them. Give it once for each batch."
            })
    private List<Path> batches = new ArrayList<>();

    boolean given() {
        return !batches.isEmpty();
    }

    /** Where names of batches belong. */
    record Where(WorkspaceOptions workspace, Surroundings surroundings) {}

    /** What they take of this house. */
    List<Booking> taken(Where where, StyleLibrary library, House house) throws StoreException {
        List<Path> files = new ArrayList<>();
        for (Path named : batches) files.add(where.workspace().batch(named, where.surroundings()));
        return new OtherBatches(library).taken(house, files);
    }
}
