/** Inks that style sheets give to what is painted by hand. */
@NullMarked
package piecewright.desktop.paint;

import org.jspecify.annotations.NullMarked;
