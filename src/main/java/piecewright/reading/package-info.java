/**
 * Reads what a person types at the bucket: tokens → pieces (words of the vocabulary, figures, times) → every reading the
 * line can have → what cannot be is dropped → one reading is kept, or it is asked with whole readings to choose from, or
 * it is refused with the reason. Pure: everything it knows of the batch is in the {@link piecewright.reading.Scene}.
 */
@NullMarked
package piecewright.reading;

import org.jspecify.annotations.NullMarked;
