package piecewright.desktop.couch;

import java.util.Optional;
import piecewright.desktop.batch.BatchViewModel.Shown;

/** Foretells a hot couch. */
public interface ForetellsCouch {
    /** The couch of a piece; empty where its style has none. */
    Optional<CouchCurve> of(Shown shown);
}
