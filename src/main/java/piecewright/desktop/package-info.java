/** The window: its start, its wiring, its theme. */
@NullMarked
package piecewright.desktop;

import org.jspecify.annotations.NullMarked;
