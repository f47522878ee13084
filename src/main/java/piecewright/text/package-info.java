/** Quantities as people type and read them, and findings as sentences. Locale is an argument. */
@NullMarked
package piecewright.text;

import org.jspecify.annotations.NullMarked;
