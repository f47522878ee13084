/** Lots as test sheets, and the grain that malt takes. */
@NullMarked
package piecewright.desktop.grain;

import org.jspecify.annotations.NullMarked;
