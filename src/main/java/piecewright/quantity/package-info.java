/** Units and the few quantities whose basis people confuse. The only place where pounds, Fahrenheit and percent are converted. */
@NullMarked
package piecewright.quantity;

import org.jspecify.annotations.NullMarked;
