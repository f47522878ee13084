/** One piece along one time axis: a control, its skin and the figures it draws. */
@NullMarked
package piecewright.desktop.timeline;

import org.jspecify.annotations.NullMarked;
