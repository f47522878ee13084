package piecewright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
                "A batch in progress, by its name in the workspace or its file, that shares people and kit: its steps and",
                "its vessels, trays, box and heaters are not free while it needs them. Give it once for each batch."
            })
    private List<Path> batches = new ArrayList<>();

    boolean given() {
        return !batches.isEmpty();
    }

    /** Where names of batches belong. */
    record Where(WorkspaceOptions workspace, Surroundings surroundings) {}

    /**
     * What they take of this house.
     *
     * @param own the file of the batch that is planned, which cannot stand beside itself
     */
    List<Booking> taken(Where where, StyleLibrary library, House house, Optional<Path> own)
            throws StoreException, OptionException {
        List<Path> files = new ArrayList<>();
        for (Path named : batches) {
            Path file = where.workspace().batch(named, where.surroundings());
            if (own.filter(mine -> same(mine, file)).isPresent()) {
                throw new OptionException("--beside", named + " is the batch that is planned; name only others");
            }
            files.add(file);
        }
        return new OtherBatches(library).taken(house, files);
    }

    private static boolean same(Path one, Path other) {
        return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
    }
}
