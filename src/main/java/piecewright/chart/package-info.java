/** Pictures as SVG: a plan along its days, and the colours a style reaches; shapes and words beside every colour. */
@NullMarked
package piecewright.chart;

import org.jspecify.annotations.NullMarked;
