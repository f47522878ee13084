/** Water uptake under water and in air rests, chitting, leaching. */
@NullMarked
package piecewright.process.steep;

import org.jspecify.annotations.NullMarked;
