/** The program's entry: chooses between the command line and the window. */
@NullMarked
package piecewright;

import org.jspecify.annotations.NullMarked;
