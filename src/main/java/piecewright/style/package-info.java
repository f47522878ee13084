/** What is wanted: a malt style and its schedule, read from data. Facts only. */
@NullMarked
package piecewright.style;

import org.jspecify.annotations.NullMarked;
