package piecewright.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.Locale;

/**
 * Writes text so that it can only be read: characters by which a terminal is driven or text is turned around come out as
 * their code, as JSON writes them. Line ends and tabs pass. Whatever stands in a note, a file's name or a rejected line
 * moves no cursor, opens no link and hides nothing.
 */
final class TerminalWriter extends PrintWriter {
    private final PrintWriter terminal;

    /** @param terminal where it goes */
    TerminalWriter(PrintWriter terminal) {
        super(new Harmless(terminal));
        this.terminal = terminal;
    }

    /** Writes over the line that stands there, with words of the program's own. */
    void printOver(String words) {
        terminal.print("\r");
        print(words);
        flush();
    }

    @Override
    public boolean checkError() {
        return super.checkError() | terminal.checkError();
    }

    private static final class Harmless extends FilterWriter {
        /** A carriage return passes only before a line feed, as part of a line end. */
        private boolean returned;

        Harmless(Writer terminal) {
            super(terminal);
        }

        @Override
        public void write(int letter) throws IOException {
            if (returned && letter != '\n') out.write(code('\r'));
            else if (returned) out.write('\r');
            returned = letter == '\r';
            if (returned) return;
            if (drives((char) letter)) out.write(code((char) letter));
            else out.write(letter);
        }

        @Override
        public void write(char[] letters, int from, int length) throws IOException {
            for (int at = from; at < from + length; at++) write(letters[at]);
        }

        @Override
        public void write(String text, int from, int length) throws IOException {
            for (int at = from; at < from + length; at++) write(text.charAt(at));
        }

        /** C0 and C1 controls of ISO/IEC 6429, delete, the line ends and the directional marks of Unicode. */
        private static boolean drives(char letter) {
            if (letter == '\n' || letter == '\t') return false;
            return Character.isISOControl(letter)
                    || letter == '\u061c'
                    || letter == '\u200e'
                    || letter == '\u200f'
                    || letter >= '\u2028' && letter <= '\u202e'
                    || letter >= '\u2066' && letter <= '\u2069'
                    || letter == '\ufeff';
        }

        private static String code(char letter) {
            return "\\u" + String.format(Locale.ROOT, "%04x", (int) letter);
        }
    }
}
