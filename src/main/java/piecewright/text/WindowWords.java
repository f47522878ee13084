package piecewright.text;

/** The sentences of the window, filled with arguments that are written out already. */
public final class WindowWords {
    private WindowWords() {}

    /** The words under "window." and this key. */
    public static String say(String key, String... arguments) {
        return Phrases.say("window." + key, arguments);
    }
}
