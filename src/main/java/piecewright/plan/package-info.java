/** Acts, phases, plans, and the search that places every act in somebody's hours. */
@NullMarked
package piecewright.plan;

import org.jspecify.annotations.NullMarked;
