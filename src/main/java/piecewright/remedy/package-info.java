/**
 * When nothing fits: the smallest changes of the wish or the house that would help, each tried by planning again.
 *
 * <p>Each kind of {@link piecewright.remedy.Change} is tried in steps that ask more and more, until a plan comes of it;
 * what comes back is ranked by how little it asks.
 */
@NullMarked
package piecewright.remedy;

import org.jspecify.annotations.NullMarked;
