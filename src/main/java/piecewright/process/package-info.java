/** What the stages share: the state of a piece, its surroundings, and how a stage is integrated. */
@NullMarked
package piecewright.process;

import org.jspecify.annotations.NullMarked;
