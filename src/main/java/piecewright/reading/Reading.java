package piecewright.reading;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import piecewright.journal.Report.Corrected;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.Noted;
import piecewright.plan.ActKind;
import piecewright.reading.Outcome.Refused;
import piecewright.text.Phrases;

/** One reading of one line. Scratch space. */
final class Reading {
    private final String line;
    private final Scene scene;
    private final Lexicon lexicon;
    private final List<Token> tokens;
    private final boolean sure;

    Reading(String line, Scene scene) {
        this.line = line;
        this.scene = scene;
        this.lexicon = Lexicon.of(scene.units().locale());
        List<Token> all = Lexer.tokens(line);
        this.tokens = LineReader.unsure(all, lexicon);
        this.sure = tokens.size() < all.size() && !tokens.isEmpty();
    }

    Outcome outcome() {
        if (tokens.isEmpty()) return new Refused(Phrases.say("line.nothing-said"));
        Tokens known = new Tokens(tokens, lexicon, new Numerals(scene.units().locale()));
        if (known.has(0, "note")) return whole();
        if (LineReader.story(line)) return story();
        if (tokens.get(tokens.size() - 1).is("?")) return new Refused(Phrases.say("line.question"));
        Optional<Outcome> fixed = new Fixes(known, line, scene, this).outcome();
        return fixed.orElseGet(() -> {
            Choice choice = candidates(scene, tokens);
            return dryingAgain(choice).orElseGet(choice::outcome);
        });
    }

    Optional<Outcome> struck() {
        if (tokens.isEmpty()) return Optional.empty();
        Tokens known = new Tokens(tokens, lexicon, new Numerals(scene.units().locale()));
        return new Fixes(known, line, scene, this).struck();
    }

    private Outcome whole() {
        Choice choice = new Choice(scene, line, sure);
        String words =
                line.substring(tokens.get(0).to()).replaceFirst("^[\\s:,]+", "").strip();
        if (words.isEmpty()) return new Refused(Phrases.say("line.nothing-said"));
        Candidate noted = new Candidate(
                List.of(new Saying(scene.now(), new Noted(words), false)), new Bounds(scene).noted(scene.now()), false);
        choice.possible(noted);
        return choice.outcome();
    }

    private Outcome story() {
        Candidate note = new Candidate(
                List.of(new Saying(scene.now(), new Noted(line), false)),
                Optional.of(Candidate.Doubt.of("ask.story")),
                false);
        Choice choice = new Choice(scene, line, false);
        choice.possible(note);
        return choice.outcome();
    }

    boolean sure() {
        return sure;
    }

    /** Every reading of some tokens, judged. */
    Choice candidates(Scene at, List<Token> some) {
        return candidates(at, some, Standing.of(at.journal().effective()));
    }

    private Choice candidates(Scene at, List<Token> some, Standing standing) {
        Choice choice = new Choice(at, line, sure);
        Bounds bounds = new Bounds(at);
        Moments moments = new Moments(at);
        for (Optional<String> slip : slips(some)) {
            Tokens known = new Tokens(some, lexicon, new Numerals(at.units().locale()));
            List<Piece> pieces = new PieceReader(
                            known,
                            new TimeWords(known, at.today(), at.units().locale()),
                            slip,
                            at.limits().places())
                    .pieces();
            boolean whole = Oracle.every(oracle -> {
                try {
                    Draft draft = new Draft(at, standing, oracle, bounds, sure);
                    Candidate candidate = new LineWay(draft, moments, some, line).read(pieces);
                    if (slip.isPresent()) candidate = candidate.doubted(Candidate.Doubt.of("ask.which"));
                    if (candidate.sayings().isEmpty()) throw new NotSoException("line.nothing-said");
                    Optional<Candidate.Doubt> doubt = bounds.judge(candidate.sayings(), standing);
                    choice.possible(doubt.isPresent() ? candidate.doubted(doubt.get()) : candidate);
                } catch (NotSoException impossible) {
                    if (choice.reason().isEmpty()) choice.impossible(impossible.sentence());
                }
            });
            if (!whole) choice.unsure();
        }
        return choice;
    }

    /** The families a mistyped word may be of, where it may be of several. */
    private List<Optional<String>> slips(List<Token> some) {
        Set<String> families = new LinkedHashSet<>();
        for (Token token : some) {
            if (!token.word()) continue;
            Set<String> near = new LinkedHashSet<>();
            lexicon.near(token.text()).forEach(key -> near.add(key.substring(0, key.lastIndexOf('.') + 1)));
            if (near.size() > 1) families.addAll(near);
        }
        List<Optional<String>> all = new ArrayList<>();
        families.stream().limit(3).forEach(family -> all.add(Optional.of(family)));
        return all.isEmpty() ? List.of(Optional.empty()) : all;
    }

    /** Malt that was taken off and is loaded again was not off for good: what says so is offered to be struck. */
    private Optional<Outcome> dryingAgain(Choice read) {
        Standing standing = Standing.of(scene.journal().effective());
        Optional<Standing.Done> off = standing.lastOf(scene.now(), ActKind.OFF, ActKind.DEROOT);
        boolean roasted = standing.did(scene.now(), ActKind.ROAST);
        if (off.isEmpty() || roasted || sure || read.all().isEmpty()) return Optional.empty();
        boolean loads = read.all().stream()
                .allMatch(candidate -> candidate.sayings().stream()
                        .anyMatch(saying -> saying.act()
                                        .filter(kind -> kind == ActKind.LOAD)
                                        .isPresent()
                                && saying.at().isAfter(off.get().at())));
        if (!loads) return Optional.empty();
        List<Saying> struck = scene.journal().effective().stream()
                .filter(entry ->
                        entry.report() instanceof Did did && (did.act() == ActKind.OFF || did.act() == ActKind.DEROOT))
                .map(entry -> new Saying(scene.now(), new Corrected(entry.number(), Optional.empty()), false))
                .toList();
        if (struck.isEmpty()) return Optional.empty();
        Choice choice = new Choice(scene, line, false);
        choice.possible(new Candidate(struck, Optional.of(Candidate.Doubt.of("ask.drying-again")), false));
        return Optional.of(choice.outcome());
    }
}
