/**
 * The hot couch: an insulated heap of green malt that warms itself to about 50 °C and is checked by its own heat.
 *
 * <p>Answers when it passes 45 °C, how hot it gets, when to unpack, and whether it is big enough to heat at all. State:
 * pile temperature, respiratory capacity, water, dry matter. Left out: oxygen, layers, turning, microbes by
 * themselves, growth. Two heating curves of one practice stand behind it: before any reading the time to 45 °C is
 * good to 30 % for wet and 50 % for wilted malt.
 */
@NullMarked
package piecewright.process.couch;

import org.jspecify.annotations.NullMarked;
