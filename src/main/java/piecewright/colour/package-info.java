/** What a colour in EBC looks like: from the absorbance of wort to a swatch on a screen. */
@NullMarked
package piecewright.colour;

import org.jspecify.annotations.NullMarked;
