/** The bench sheet: a plan as one HTML file to print or to open on a phone, with boxes, blanks and rescue rules. */
@NullMarked
package piecewright.sheet;

import org.jspecify.annotations.NullMarked;
