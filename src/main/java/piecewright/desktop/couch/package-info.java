/** The heap that heats itself: what its thermometer will show, and what it showed. */
@NullMarked
package piecewright.desktop.couch;

import org.jspecify.annotations.NullMarked;
