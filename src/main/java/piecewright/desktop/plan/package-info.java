/** Making a plan: a sentence with a live answer. */
@NullMarked
package piecewright.desktop.plan;

import org.jspecify.annotations.NullMarked;
