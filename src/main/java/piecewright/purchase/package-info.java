/** From malt wanted to grain bought: the plan's own ledger read as a list of losses, and what to carry home. */
@NullMarked
package piecewright.purchase;

import org.jspecify.annotations.NullMarked;
