/** Files of a workspace taken one by one, so that none of them keeps the others from being used. */
@org.jspecify.annotations.NullMarked
package piecewright.app.files;
