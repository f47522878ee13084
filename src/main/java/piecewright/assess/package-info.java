/** What counts of corns say of a lot: intervals, tolerances, and a verdict with its reasons. */
@NullMarked
package piecewright.assess;

import org.jspecify.annotations.NullMarked;
