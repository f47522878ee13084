/** The household: hours painted on a week, places and kit. */
@NullMarked
package piecewright.desktop.house;

import org.jspecify.annotations.NullMarked;
