/** JSON and CSV files to domain records and back; bounded, versioned, atomic. */
@NullMarked
package piecewright.store;

import org.jspecify.annotations.NullMarked;
