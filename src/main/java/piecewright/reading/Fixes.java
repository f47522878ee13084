package piecewright.reading;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import piecewright.journal.Report.Corrected;
import piecewright.journal.Report.Weighed;
import piecewright.reading.Candidate.Doubt;
import piecewright.reading.Outcome.Refused;
import piecewright.text.Phrases;

/** Lines that put earlier entries right: "undo", "strike 4", "correct 4 7.65 kg", "sorry, 7.65 not 7.70". */
final class Fixes {
    private final Tokens tokens;
    private final String line;
    private final Scene scene;
    private final Reading reading;
    private final Journal journal;

    Fixes(Tokens tokens, String line, Scene scene, Reading reading) {
        this.tokens = tokens;
        this.line = line;
        this.scene = scene;
        this.reading = reading;
        this.journal = scene.journal();
    }

    /** What comes of the line; empty where it puts nothing right. */
    Optional<Outcome> outcome() {
        Optional<Outcome> struck = struck();
        if (struck.isPresent()) return struck;
        Optional<Outcome> named = named();
        return named.isPresent() ? named : said();
    }

    private Choice choice() {
        return new Choice(scene, line, reading.sure());
    }

    /** Whether a line says "undo" or "strike 4": it needs nothing but the journal. */
    Optional<Outcome> struck() {
        int after = tokens.after(0, "fix.undo");
        List<Integer> numbers = after > 0 ? entryNumbers(after) : List.of();
        if (after > 0 && numbers.isEmpty() && filler(after)) return Optional.of(last());
        int named = tokens.after(0, "fix.void");
        if (named == 0) return Optional.empty();
        numbers = entryNumbers(named);
        if (numbers.isEmpty()) return Optional.empty();
        for (int number : numbers) {
            if (journal.entry(number).isEmpty())
                return Optional.of(new Refused(Phrases.say("line.no-entry", String.valueOf(number))));
        }
        return Optional.of(choice().kept(numbers.stream().map(this::voided).toList()));
    }

    private Saying voided(int number) {
        return new Saying(scene.now(), new Corrected(number, Optional.empty()), false);
    }

    private Outcome last() {
        Optional<Saying> back = corrected();
        if (back.isPresent()) return choice().kept(List.of(back.get()));
        Optional<Entry> last = highest(journal);
        if (last.isEmpty()) return new Refused(Phrases.say("line.no-entries"));
        return choice().kept(List.of(voided(last.get().number())));
    }

    private static Optional<Entry> highest(Journal some) {
        return some.effective().stream().max(java.util.Comparator.comparingInt(Entry::number));
    }

    /**
     * What takes back a correction, or the striking of an older entry, where that was written last. The last entry
     * struck stays struck: undoing again goes on to the one before it.
     */
    private Optional<Saying> corrected() {
        List<Entry> all = journal.entries();
        if (all.isEmpty() || !(all.get(all.size() - 1).report() instanceof Corrected corrected))
            return Optional.empty();
        Journal before = new Journal(all.subList(0, all.size() - 1));
        int root = root(before, corrected.entry());
        Optional<Entry> held = before.effective().stream()
                .filter(entry -> entry.number() == root)
                .findFirst();
        boolean undone = corrected.instead().isEmpty()
                && highest(before).filter(entry -> entry.number() == root).isPresent();
        if (undone) return Optional.empty();
        return held.map(entry -> new Saying(entry.at(), new Corrected(root, Optional.of(entry.report())), true))
                .or(() -> corrected.instead().isPresent() ? Optional.of(voided(root)) : Optional.empty());
    }

    /** The entry that a correction, or a correction of a correction, is about. */
    private static int root(Journal some, int number) {
        int root = number;
        for (int more = 0; more <= some.entries().size(); more++) {
            Optional<Entry> entry = some.entry(root);
            if (entry.isEmpty() || !(entry.get().report() instanceof Corrected corrected)) return root;
            root = corrected.entry();
        }
        return root;
    }

    private boolean filler(int from) {
        for (int at = from; at < tokens.size(); at++) {
            boolean mark = tokens.get(at).kind() == Token.Kind.MARK;
            if (!mark && !tokens.has(at, "filler") && !tokens.has(at, "skip")) return false;
        }
        return true;
    }

    /** The numbers up to the end of the line; none where something else stands there. */
    private List<Integer> entryNumbers(int from) {
        List<Integer> numbers = new ArrayList<>();
        for (int at = from; at < tokens.size(); at++) {
            Token token = tokens.get(at);
            if (token.figure() && token.text().matches("\\d{1,6}")) numbers.add(Integer.parseInt(token.text()));
            else if (token.figure()) return List.of();
            else if (!token.is("#")
                    && !token.is(",")
                    && !token.is("and")
                    && !token.is("no")
                    && !token.is(".")
                    && !token.is("entry")
                    && !token.is("entries")
                    && !token.is("number")
                    && !tokens.has(at, "filler")
                    && !tokens.has(at, "skip")) return List.of();
        }
        return numbers.stream().distinct().toList();
    }

    /** "correct 4 to 7.65 kg", "#4 should be 7.65 kg", "entry 3 was at 21:10". */
    private Optional<Outcome> named() {
        int at = tokens.after(0, "fix.correct");
        boolean corrects = at > 0;
        if (tokens.is(at, "number", "no", "entry", "of")) at++;
        if (tokens.is(at, "#")) at++;
        else if (!corrects) return Optional.empty();
        if (at >= tokens.size() || !tokens.get(at).text().matches("\\d{1,6}"))
            return corrects ? unnumbered(tokens.after(0, "fix.correct")) : Optional.empty();
        Tokens after = new Tokens(tokens.list().subList(at + 1, tokens.size()), tokens.lexicon(), tokens.numerals());
        boolean united = after.size() > 0
                && tokens.lexicon().at(after.list(), 0).keys().stream().anyMatch(key -> key.startsWith("unit."))
                && !after.is(0, "\"", "in");
        if (united || after.size() == 0) return unnumbered(at);
        int number = Integer.parseInt(tokens.get(at).text());
        int rest = tokens.is(at + 1, ":") ? at + 2 : at + 1;
        int should = tokens.after(rest, "fix.should");
        return Optional.of(corrected(number, tokens.list().subList(should, tokens.size())));
    }

    /** "correct 8 kg": which entry? */
    private Optional<Outcome> unnumbered(int from) {
        List<Token> rest = tokens.list().subList(from, tokens.size());
        if (rest.isEmpty()) return Optional.empty();
        Choice plain = reading.candidates(scene, rest);
        Choice choice = choice();
        for (Candidate candidate : plain.all()) {
            if (candidate.sayings().size() != 1) continue;
            Report report = candidate.sayings().get(0).report();
            lastOf(entry -> Saying.sameKind(entry.report(), report))
                    .ifPresent(entry ->
                            choice.possible(doubted(entry, new Saying(entry.at(), report, false), "ask.which-entry")));
            choice.possible(candidate.doubted(Doubt.of("ask.which-entry")));
        }
        if (choice.all().isEmpty())
            return Optional.of(new Refused(plain.reason().orElseGet(() -> Phrases.say("line.corrects-one"))));
        return Optional.of(choice.outcome());
    }

    private Optional<Entry> lastOf(Predicate<Entry> wanted) {
        return journal.effective().stream().filter(wanted).max(java.util.Comparator.comparingInt(Entry::number));
    }

    private static Candidate doubted(Entry entry, Saying saying, String key) {
        return corrected(entry, saying).doubted(Doubt.of(key, String.valueOf(entry.number())));
    }

    private static Candidate corrected(Entry entry, Saying saying) {
        Corrected corrected = new Corrected(entry.number(), Optional.of(saying.report()));
        return new Candidate(List.of(new Saying(saying.at(), corrected, saying.timed())), Optional.empty(), false);
    }

    private Outcome corrected(int number, List<Token> rest) {
        Optional<Entry> known = journal.effective().stream()
                .filter(entry -> entry.number() == number)
                .findFirst();
        Optional<Entry> entry =
                known.or(() -> journal.entry(number).filter(written -> !(written.report() instanceof Corrected)));
        if (entry.isEmpty()) return new Refused(Phrases.say("line.no-entry", String.valueOf(number)));
        return corrected(entry.get(), rest);
    }

    private Outcome corrected(Entry entry, List<Token> rest) {
        Optional<List<Instant>> times = times(rest);
        if (times.isPresent()) return retimed(entry, times.get());
        Choice found = reading.candidates(as(entry), rest);
        Choice choice = choice();
        for (Candidate candidate : found.all()) {
            if (candidate.sayings().size() != 1) return new Refused(Phrases.say("line.corrects-one"));
            Saying saying = candidate.sayings().get(0);
            Instant at = saying.timed() ? saying.at() : entry.at();
            Saying kept = new Saying(at, saying.report(), true);
            if (Saying.sameKind(entry.report(), saying.report())) {
                Candidate one = corrected(entry, kept);
                choice.possible(
                        candidate.doubt().isPresent()
                                ? one.doubted(candidate.doubt().get())
                                : one);
                continue;
            }
            if (!reading.sure())
                lastOf(other -> Saying.sameKind(other.report(), saying.report()))
                        .ifPresent(other -> choice.possible(
                                doubted(other, new Saying(other.at(), saying.report(), true), "ask.other-entry")));
            choice.possible(doubted(entry, kept, "ask.other-entry"));
        }
        found.reason().ifPresent(choice::impossible);
        return choice.outcome();
    }

    /** The scene as it was when the entry was made, without it. */
    private Scene as(Entry entry) {
        Journal without = new Journal(journal.effective().stream()
                .filter(each -> each.number() != entry.number())
                .sorted(java.util.Comparator.comparingInt(Entry::number))
                .toList());
        return scene.without(without);
    }

    private Optional<List<Instant>> times(List<Token> rest) {
        Tokens known = new Tokens(rest, tokens.lexicon(), tokens.numerals());
        List<Piece> pieces = new PieceReader(
                        known, new TimeWords(known, scene.today(), scene.units().locale()), Optional.empty(), List.of())
                .pieces();
        boolean only = pieces.stream()
                .allMatch(piece -> piece instanceof Piece.Time
                        || piece instanceof Piece.Mark
                        || piece instanceof Piece.Term term && term.empty());
        List<Piece.Told> told = pieces.stream()
                .filter(Piece.Time.class::isInstance)
                .map(piece -> ((Piece.Time) piece).told())
                .toList();
        if (!only || told.isEmpty()) return Optional.empty();
        try {
            List<When> whens = When.all(told);
            if (whens.isEmpty()) return Optional.empty();
            return Optional.of(new Moments(scene)
                    .of(whens.get(0), Optional.empty(), Standing.of(journal.effective())).stream()
                            .map(Moments.Moment::at)
                            .toList());
        } catch (NotSoException none) {
            return Optional.empty();
        }
    }

    private Outcome retimed(Entry entry, List<Instant> times) {
        Choice choice = choice();
        Standing standing = Standing.of(as(entry).journal().effective());
        for (Instant at : times) {
            Saying saying = new Saying(at, entry.report(), true);
            try {
                Optional<Doubt> doubt = new Bounds(as(entry)).judge(List.of(saying), standing);
                Candidate one = corrected(entry, saying);
                choice.possible(doubt.isPresent() ? one.doubted(doubt.get()) : one);
            } catch (NotSoException impossible) {
                choice.impossible(impossible.sentence());
            }
        }
        return choice.outcome();
    }

    /** "sorry, 7.65 not 7.70", "that was 21:40 not 22:05", "last weight was wrong, 7.65 kg". */
    private Optional<Outcome> said() {
        int sorry = tokens.after(0, "fix.sorry");
        int next = tokens.is(sorry, ",") ? sorry + 1 : sorry;
        int that = tokens.after(next, "fix.that");
        int weight = tokens.after(next, "fix.last-weight");
        int not = not(next);
        boolean fixes = sorry > 0 || that > next || weight > next && (weight >= tokens.size() || true);
        if (!fixes && not < 0 || journal.effective().isEmpty()) return Optional.empty();
        int from = Math.max(Math.max(next, that), weight);
        if (tokens.is(from, ",", ":")) from++;
        int until = not > from ? not : tokens.size();
        if (from >= until) return Optional.empty();
        List<Token> meant = tokens.list().subList(from, until);
        if (not > from) return contrasted(meant, tokens.list().subList(not + 1, tokens.size()));
        if (weight > next)
            return lastOf(entry -> entry.report() instanceof Weighed).map(entry -> corrected(entry, meant));
        Optional<List<Instant>> times = times(meant);
        if (times.isPresent()) return lastOf(entry -> true).map(entry -> retimed(entry, times.get()));
        Choice plain = reading.candidates(scene, meant);
        for (Candidate candidate : plain.all()) {
            if (candidate.sayings().size() != 1) continue;
            Report report = candidate.sayings().get(0).report();
            Optional<Entry> entry = lastOf(each -> Saying.sameKind(each.report(), report));
            boolean latest = entry.isPresent()
                    && lastOf(each -> true)
                            .filter(each -> each.number() <= entry.get().number() + 2)
                            .isPresent();
            if (latest) return Optional.of(corrected(entry.get(), meant));
        }
        return Optional.empty();
    }

    private int not(int from) {
        for (int at = from; at < tokens.size(); at++)
            if (tokens.is(at, "not")
                    && at > from
                    && at + 1 < tokens.size()
                    && tokens.get(at + 1).figure()) return at;
        return -1;
    }

    /** What was meant, and what was said by mistake: the entry that says the latter. */
    private Optional<Outcome> contrasted(List<Token> meant, List<Token> wrong) {
        Optional<List<Instant>> old = times(wrong);
        Optional<List<Instant>> right = times(meant);
        if (old.isPresent() && right.isPresent()) {
            return lastOf(entry -> old.get().stream().anyMatch(at -> Standing.isNow(entry.at(), at)))
                    .map(entry -> retimed(entry, right.get()));
        }
        List<Candidate> said = reading.candidates(scene, wrong).all();
        List<Double> figures = wrong.stream()
                .filter(Token::figure)
                .flatMap(token -> tokens.numerals().values(token.text()).stream())
                .toList();
        Optional<Entry> entry = lastOf(each -> said.stream()
                        .anyMatch(candidate -> candidate.sayings().size() == 1
                                && Saying.alike(candidate.sayings().get(0).report(), each.report()))
                || figures.stream().anyMatch(figure -> figured(each.report(), figure)));
        return entry.map(each -> corrected(each, meant));
    }

    private boolean figured(Report report, double figure) {
        double unitKg = scene.metric() ? 1 : piecewright.quantity.Units.KG_PER_POUND;
        if (report instanceof Weighed weighed) return Math.abs(weighed.netKg() - figure * unitKg) < 0.003;
        if (report instanceof Report.TemperatureRead read)
            return Math.abs(read.readC() - UnitSizes.celsius(figure, !scene.metric())) < 0.3;
        return report instanceof Report.HeatSet heat
                && Math.abs(heat.airOnC() - UnitSizes.celsius(figure, !scene.metric())) < 0.3;
    }
}
