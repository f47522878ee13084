package piecewright.text;

import java.util.regex.Pattern;

/** Running text broken at blanks, though never between a figure and its unit; for plain terminals. */
final class Paragraph {
    /** Characters on a line at most, unless a single word is longer. */
    static final int WIDTH = 108;

    private static final Pattern UNIT = Pattern.compile(
            "(?<=[0-9]) (?=(?:kg|g|lb|oz|%|°C|°F|L|mL|gal|fl oz|cm|m²|in|h|min|d|EBC|SRM|°L)(?![A-Za-z]))");

    private static final char TIE = '\uE000';

    private Paragraph() {}

    /** The text after a label, every further line set in under its beginning; ends with a line end. */
    static String of(String label, String text) {
        String blanks = " ".repeat(label.codePointCount(0, label.length()));
        StringBuilder all = new StringBuilder(label);
        int column = blanks.length();
        boolean first = true;
        for (String word :
                UNIT.matcher(text).replaceAll(Character.toString(TIE)).split(" ")) {
            int length = word.codePointCount(0, word.length());
            if (!first && column + 1 + length > WIDTH) {
                all.append('\n').append(blanks);
                column = blanks.length();
                first = true;
            }
            if (!first) all.append(' ');
            all.append(word.replace(TIE, ' '));
            column += length + (first ? 0 : 1);
            first = false;
        }
        return all.append('\n').toString();
    }
}
