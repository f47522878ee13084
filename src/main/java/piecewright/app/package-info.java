/** The use cases that the command line and the window share. */
@NullMarked
package piecewright.app;

import org.jspecify.annotations.NullMarked;
