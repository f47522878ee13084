package piecewright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A typed line from which what was understood is taken away, piece by piece. Scratch space of one reading. */
final class RestOfLine {
    private static final int LONGEST = 400;

    private String rest;

    private RestOfLine(String rest) {
        this.rest = rest;
    }

    /** The line with any script's digits as ASCII, in lower case. */
    static RestOfLine of(String typed) throws UnclearException {
        String plain = DecimalReader.plain(typed).toLowerCase(Locale.ROOT);
        if (plain.isEmpty()) throw new UnclearException(Phrases.say("line.empty"));
        if (plain.length() > LONGEST) throw new UnclearException(Phrases.say("line.too-long"));
        return new RestOfLine(plain);
    }

    /** Takes away the first place that matches, if there is one. */
    Optional<MatchResult> take(Pattern pattern) {
        Matcher matcher = pattern.matcher(rest);
        if (!matcher.find()) return Optional.empty();
        MatchResult found = matcher.toMatchResult();
        rest = rest.substring(0, found.start()) + " \u0001 " + rest.substring(found.end());
        return Optional.of(found);
    }

    /** Takes away every place that matches. */
    List<MatchResult> takeAll(Pattern pattern) {
        List<MatchResult> all = new ArrayList<>();
        for (Optional<MatchResult> next = take(pattern); next.isPresent(); next = take(pattern)) all.add(next.get());
        return all;
    }

    boolean has(Pattern pattern) {
        return pattern.matcher(rest).find();
    }

    /** What nobody has taken yet, without words that carry nothing. */
    String left() {
        return rest.replaceAll(
                        "(?<![\\p{L}\\d])(the|a|an|at|of|in|on|to|is|was|it|and|with|for|from|now|grain|malt|whole|piece|weighs?|weight|net|about|kiln|again|again|all|then)(?![\\p{L}\\d])",
                        " ")
                .replaceAll("[\u0001\\s,;:.!=–-]+", " ")
                .strip();
    }

    /** The same with nothing left out. */
    String whole() {
        return rest.replace('\u0001', ' ').replaceAll("\\s+", " ").strip();
    }
}
