/** The sheet of one act. */
@NullMarked
package piecewright.desktop.act;

import org.jspecify.annotations.NullMarked;
