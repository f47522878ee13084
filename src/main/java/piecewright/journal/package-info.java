/**
 * What happened to one piece, as it was written down. Question answered: what do we know happened, and when? State: an
 * append-only list of entries; a correction is an entry too, and the effective view applies it. No models, no files, no
 * judgement of whether an entry can be true.
 */
@NullMarked
package piecewright.journal;

import org.jspecify.annotations.NullMarked;
