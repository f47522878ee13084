/** A piece under way: where it stands, what happened, and its rest planned anew. */
@NullMarked
package piecewright.desktop.batch;

import org.jspecify.annotations.NullMarked;
