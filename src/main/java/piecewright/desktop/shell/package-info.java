/** The three zones of the window. */
@NullMarked
package piecewright.desktop.shell;

import org.jspecify.annotations.NullMarked;
