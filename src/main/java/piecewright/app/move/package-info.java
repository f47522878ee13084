/** A workspace in one file: packed here, unpacked elsewhere. */
@org.jspecify.annotations.NullMarked
package piecewright.app.move;
