/** Air, drying bed, curing; colour, enzymes and the DMS precursor along it. */
@NullMarked
package piecewright.process.kiln;

import org.jspecify.annotations.NullMarked;
