package piecewright.app;

/** A word as it is typed at a terminal. */
final class ShellWord {
    private ShellWord() {}

    /** As it is where that is safe, else in single quotes. */
    static String of(String word) {
        return word.matches("[\\p{L}\\p{N}@%+=:,./_-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
    }
}
