package piecewright.app;

import java.nio.file.Path;
import java.util.List;
import piecewright.store.Links;

/** The files that lie beside a batch or a calendar, by what they are called. */
final class Beside {
    /** Endings of what lies beside a batch. */
    static final List<String> OF_A_BATCH =
            List.of(".journal.jsonl", ".ledger.json", ".published.json", ".calendar.json", ".live.json");

    private Beside() {}

    /** What was exported of a batch: beside the batch, or beside the calendar when the batch is not kept. */
    static Path ledger(Path file) {
        return named(file, ".ledger.json");
    }

    /** What lies in a collection because of a batch. */
    static Path published(Path batch) {
        return named(batch, ".published.json");
    }

    /** Where else its entries went, and how they were wanted. */
    static Path places(Path batch) {
        return named(batch, ".calendar.json");
    }

    /** Which live calendar shows a batch. */
    static Path liveMark(Path batch) {
        return named(batch, ".live.json");
    }

    /** Which batches a live calendar shows, and how. */
    static Path liveList(Path calendar) {
        return named(calendar, ".batches.json");
    }

    /** The file of one of several batches: plan-2.json for plan.json. */
    static Path part(Path file, int number) {
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        String numbered = dot < 1 ? name + "-" + number : name.substring(0, dot) + "-" + number + name.substring(dot);
        return file.resolveSibling(numbered);
    }

    private static Path named(Path file, String ending) {
        Path whole = Links.end(file);
        return whole.resolveSibling(whole.getFileName() + ending);
    }
}
