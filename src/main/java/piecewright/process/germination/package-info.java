/** Growth on the floor, its heat, its loss of water and dry matter; sprinkling, turning, withering. */
@NullMarked
package piecewright.process.germination;

import org.jspecify.annotations.NullMarked;
