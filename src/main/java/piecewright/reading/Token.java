package piecewright.reading;

/**
 * A word, figure or mark of a line.
 *
 * @param text in lower case
 * @param from where it begins in the line
 * @param glued whether no blank stands before it
 */
record Token(Kind kind, String text, int from, int to, boolean glued) {
    enum Kind {
        WORD,
        FIGURE,
        MARK
    }

    boolean is(String other) {
        return text.equals(other);
    }

    boolean word() {
        return kind == Kind.WORD;
    }

    boolean figure() {
        return kind == Kind.FIGURE;
    }
}
