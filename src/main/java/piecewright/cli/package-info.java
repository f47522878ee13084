/** The command line: one class per command, exit codes in one handler. */
@NullMarked
package piecewright.cli;

import org.jspecify.annotations.NullMarked;
