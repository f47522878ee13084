/** What batches taught of lots and kit, and two batches side by side. */
@NullMarked
package piecewright.desktop.learned;

import org.jspecify.annotations.NullMarked;
