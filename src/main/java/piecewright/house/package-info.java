/** Where it is malted and by whom: places, hours, kit. Facts only. */
@NullMarked
package piecewright.house;

import org.jspecify.annotations.NullMarked;
