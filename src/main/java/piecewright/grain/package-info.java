/** What is malted: a lot of grain and the tests made of it. Facts only. */
@NullMarked
package piecewright.grain;

import org.jspecify.annotations.NullMarked;
