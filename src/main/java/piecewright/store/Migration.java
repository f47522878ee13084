package piecewright.store;

import java.nio.file.Path;
import java.util.List;
import tools.jackson.databind.node.ObjectNode;

/**
 * Brings documents of earlier formats to the present one. Files are read in any format up to the present and written in
 * the present one only.
 *
 * @param steps the first turns format 1 into 2, and so on
 */
record Migration(List<Step> steps) {
    Migration {
        steps = List.copyOf(steps);
    }

    /** Changes a document of one format into the next. */
    interface Step {
        void change(ObjectNode document) throws StoreException;
    }

    /** The format documents have afterwards, and are written in. */
    int present() {
        return steps.size() + 1;
    }

    /** The text as a document of the present format; one of a later format is refused. */
    JsonBlock read(Path file, String text, String... keys) throws StoreException {
        ObjectNode document = JsonText.parse(file, text);
        int format = JsonBlock.of(file, document).whole("format", 1, Integer.MAX_VALUE);
        if (format > present()) {
            throw new StoreException(
                    file,
                    "was written by a later Piecewright (format " + format + ", this one knows up to " + present()
                            + "); open it with that one");
        }
        for (Step step : steps.subList(format - 1, steps.size())) step.change(document);
        document.put("format", present());
        return JsonBlock.rooted(file, document, keys);
    }
}
