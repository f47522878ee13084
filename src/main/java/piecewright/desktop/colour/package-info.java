/** Choosing a colour: the heat map of one kit. */
@NullMarked
package piecewright.desktop.colour;

import org.jspecify.annotations.NullMarked;
