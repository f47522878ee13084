package piecewright.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import piecewright.journal.Report.Observed;
import piecewright.journal.Sign;
import piecewright.plan.ActKind;
import piecewright.reading.Moments.Moment;
import piecewright.reading.Piece.Figure;
import piecewright.reading.Piece.Mark;
import piecewright.reading.Piece.Term;
import piecewright.reading.Piece.Time;
import piecewright.reading.Piece.Told;
import piecewright.reading.Piece.Unknown;

/** Reads a whole line one way. */
final class LineWay {
    private final Draft draft;
    private final Moments moments;
    private final List<Token> tokens;
    private final String line;
    private final List<Chosen> chosen = new ArrayList<>();

    /** The instant a time was taken for: the same wherever it holds. */
    private record Chosen(When when, Moment moment) {}

    LineWay(Draft draft, Moments moments, List<Token> tokens, String line) {
        this.draft = draft;
        this.moments = moments;
        this.tokens = tokens;
        this.line = line;
    }

    Candidate read(List<Piece> pieces) throws NotSoException {
        List<Piece> open = new ArrayList<>();
        for (Piece piece : pieces) {
            boolean note = open.isEmpty() && piece instanceof Term term && term.is("note");
            if (note) {
                close(open);
                words(piece);
                return draft.candidate();
            }
            if (piece instanceof Mark mark && mark.sign().equals(";")) close(open);
            else open.add(piece);
        }
        close(open);
        return draft.candidate();
    }

    private void words(Piece note) throws NotSoException {
        String words = line.substring(tokens.get(note.until() - 1).to())
                .replaceFirst("^[\\s:,]+", "")
                .strip();
        if (words.isEmpty()) throw new NotSoException("line.nothing-said");
        draft.from(new Moment(draft.scene.now(), Optional.empty(), false), false);
        draft.note(words);
    }

    private void close(List<Piece> open) throws NotSoException {
        if (!open.isEmpty()) segment(List.copyOf(open));
        open.clear();
    }

    /** What stands between two semicolons has its own times. */
    private void segment(List<Piece> pieces) throws NotSoException {
        boolean acted = pieces.stream()
                .anyMatch(piece -> piece instanceof Term term
                        && (term.keys().stream().anyMatch(key -> key.startsWith("act.") && !key.endsWith(".weakin"))
                                || term.is("started")
                                || term.of("sign.power").isPresent()));
        List<Piece> clocked = new Clockable(draft.oracle, draft.scene.units().locale(), draft).chosen(pieces, acted);
        List<Clause> clauses = Clause.split(clocked, tokens, line);
        draft.parts = clauses.stream().anyMatch(clause -> clause.has("parts"));
        boolean doing = clauses.stream().anyMatch(clause -> clause.has("doing"));
        List<Clause> told = new ArrayList<>();
        for (Clause clause : clauses) if (entry(clause, doing, clauses.size())) told.add(clause);
        if (told.isEmpty() && !clauses.isEmpty()) throw new NotSoException("line.plan");
        List<Timed> timed = timed(told);
        SignsTold signs = new SignsTold(draft);
        FiguresTold figures = new FiguresTold(draft, new WeightsTold(draft));
        Words words = new Words(draft, told);
        if (!timed.isEmpty()
                && timed.get(0).whens().size() == 1
                && lengths(told, timed.get(0).whens().get(0))) return;
        for (Timed each : timed) {
            for (When when : each.whens()) {
                draft.from(moment(when, each.clause()), when.said());
                clause(each.clause(), doing, signs, figures, words);
            }
        }
        words.rest();
    }

    private boolean lengths(List<Clause> told, When when) throws NotSoException {
        Optional<Moment> at = when.said() ? Optional.of(moment(when, told.get(0))) : Optional.empty();
        at.ifPresent(moment -> draft.from(moment, true));
        return new CountsTold(draft).lengths(told);
    }

    private void clause(Clause clause, boolean doing, SignsTold signs, FiguresTold figures, Words words)
            throws NotSoException {
        int before = draft.candidate().sayings().size();
        boolean listed = clause.has("topic.floaters")
                || clause.has("topic.test")
                || clause.has("sense") && !clause.hasFamily("act.");
        boolean acted = !listed && new ActsTold(draft, doing).take(clause);
        boolean restarted = clause.has("same");
        if (restarted) again();
        if (!acted && !listed) started(clause);
        boolean seen = signs.take(clause);
        if (!acted && !seen && clause.has("opened")) opened(clause);
        if (!listed) figures.take(clause);
        else if (clause.has("topic.floaters")) figures.take(clause);
        words.took(clause, draft.candidate().sayings().size() > before);
    }

    private void again() {
        draft.doubt("ask.again-which");
        draft.scene
                .next()
                .or(() -> draft.standing.acts().stream()
                        .reduce((one, other) -> other)
                        .map(Standing.Done::kind))
                .ifPresent(kind -> draft.say(piecewright.journal.Report.Did.of(kind)));
    }

    /** "started" alone: the next step. */
    private void started(Clause clause) {
        if (!clause.has("started") || clause.hasFamily("sign.")) return;
        Optional<ActKind> next = draft.scene.next();
        if (next.isEmpty()) {
            draft.doubt("line.started-what");
            return;
        }
        draft.say(new piecewright.journal.Report.Started(next.get()));
    }

    private void opened(Clause clause) {
        if (draft.standing.stage(draft.at()) != Standing.Stage.COUCH) return;
        draft.doubt("ask.opened");
        draft.say(piecewright.journal.Report.Did.of(draft.oracle.pick(List.of(ActKind.BREAK, ActKind.CHECK))));
    }

    private static boolean entry(Clause clause, boolean doing, int many) throws NotSoException {
        if (clause.has("doing") && many > 1 || clause.has("written")) return false;
        boolean plan = clause.has("plan") && !clause.has("note") && !doing && !clause.has("sense");
        boolean asks = clause.pieces().get(0) instanceof Term lead && lead.is("ask.lead");
        if (asks) throw new NotSoException("line.question");
        return !plan;
    }

    /** A clause with the times it happened at. */
    private record Timed(Clause clause, List<When> whens) {}

    private static List<Timed> timed(List<Clause> clauses) throws NotSoException {
        List<Told> parts = new ArrayList<>();
        for (Clause clause : clauses) {
            for (Piece piece : clause.pieces()) {
                if (!(piece instanceof Time time)) continue;
                if (time.told() instanceof Told.Bad bad) throw new NotSoException(bad.key(), bad.typed());
                if (!since(clause)) parts.add(time.told());
            }
        }
        List<When> all = When.all(parts);
        if (all.size() <= 1) {
            When one = all.isEmpty() ? When.unsaid() : all.get(0);
            return clauses.stream()
                    .sorted(Comparator.comparing(clause -> !clause.hasFamily("act.drain")))
                    .map(clause -> new Timed(clause, List.of(one)))
                    .toList();
        }
        List<Timed> timed = new ArrayList<>();
        When last = own(clauses.get(0)).stream().findFirst().orElse(all.get(0));
        for (Clause clause : clauses) {
            List<When> own = own(clause);
            boolean bare = clause.pieces().stream()
                    .allMatch(piece -> piece instanceof Time || piece instanceof Term term && term.empty());
            if (bare
                    && !own.isEmpty()
                    && !timed.isEmpty()
                    && timed.get(timed.size() - 1).clause().hasFamily("act.")) {
                Timed before = timed.remove(timed.size() - 1);
                List<When> more = new ArrayList<>(before.whens());
                more.addAll(own);
                timed.add(new Timed(before.clause(), more));
                continue;
            }
            if (!own.isEmpty()) last = own.get(own.size() - 1);
            timed.add(new Timed(clause, own.isEmpty() ? List.of(last) : own));
        }
        return timed;
    }

    /** "haven't turned since this morning": no time of an entry. */
    private static boolean since(Clause clause) {
        return clause.hasFamily("neg.")
                && clause.text().toLowerCase(Locale.ROOT).contains("since");
    }

    private static List<When> own(Clause clause) {
        if (since(clause)) return List.of();
        return When.all(clause.pieces().stream()
                .flatMap(piece -> piece instanceof Time time ? Stream.of(time.told()) : Stream.<Told>empty())
                .toList());
    }

    private Moment moment(When when, Clause clause) throws NotSoException {
        Optional<Moment> known = chosen.stream()
                .filter(each -> each.when() == when)
                .map(Chosen::moment)
                .findFirst();
        if (known.isPresent()) return known.get();
        Moment moment = fresh(when, clause);
        chosen.add(new Chosen(when, moment));
        return moment;
    }

    private Moment fresh(When when, Clause clause) throws NotSoException {
        boolean negative = clause.hasFamily("neg.");
        if (negative && !when.exact()) return new Moment(draft.scene.now(), Optional.empty(), false);
        Optional<ActKind> act = clause.terms()
                .flatMap(term -> term.of("act.").stream())
                .map(key -> key.substring(0, key.indexOf('.')))
                .filter(key -> !key.equals("change"))
                .map(key -> ActKind.valueOf(key.toUpperCase(Locale.ROOT)))
                .findFirst();
        return draft.oracle.pick(moments.of(when, act, draft.standing));
    }

    /** Words nobody has a place for: kept as they are, or asked about where nothing else is in the line. */
    private static final class Words {
        private final Draft draft;
        private final List<Clause> all;
        private final List<Clause> idle = new ArrayList<>();
        private boolean facts;

        Words(Draft draft, List<Clause> all) {
            this.draft = draft;
            this.all = all;
        }

        void took(Clause clause, boolean said) {
            facts |= said;
            boolean heard = clause.pieces().stream()
                    .anyMatch(piece -> piece instanceof Unknown || piece instanceof Term term && content(term));
            if (!said && heard) idle.add(clause);
            boolean strange = clause.unknown() && !clause.has("vessel.empty") && !vessel(clause);
            if (said && strange && !noted(clause)) draft.note(clause.text());
        }

        /** Whether all that is strange in it is the name of the vessel that was weighed too. */
        private boolean vessel(Clause clause) {
            return draft.weighed()
                    .flatMap(piecewright.journal.Report.Weighed::tare)
                    .map(tare -> tare.vessel().toLowerCase(Locale.ROOT))
                    .filter(name -> clause.pieces().stream()
                            .allMatch(piece -> !(piece instanceof Unknown unknown)
                                    || List.of(name.split(" "))
                                            .contains(unknown.text().toLowerCase(Locale.ROOT))))
                    .isPresent();
        }

        private boolean noted(Clause clause) {
            return draft.candidate().sayings().stream()
                    .anyMatch(saying -> saying.report() instanceof Observed seen
                                    && seen.words().equals(clause.words())
                            || saying.report() instanceof piecewright.journal.Report.Remarked remarked
                                    && remarked.words().equals(clause.words()));
        }

        private static boolean content(Term term) {
            return !term.empty()
                    && (term.is("body")
                            || term.is("deed")
                            || term.is("sense")
                            || term.of("act.").isPresent()
                            || term.of("neg.").isPresent()
                            || term.of("topic.").isPresent()
                            || term.of("sign.").isPresent());
        }

        void rest() {
            for (Clause clause : idle) {
                boolean body = clause.has("body") || clause.has("sense");
                boolean topical = clause.pieces().size() == 1 && clause.hasFamily("topic.")
                        || clause.terms()
                                        .allMatch(term -> term.of("topic.").isPresent()
                                                || term.empty()
                                                || term.is("parts")
                                                || term.is("net"))
                                && !clause.unknown();
                if (topical && (facts || all.size() > 1)) continue;
                if (body) draft.say(new Observed(Sign.OTHER, clause.words()));
                else if (facts || clause.has("deed")) draft.note(clause.text());
                else {
                    draft.doubt(figureMissing(clause) ? "ask.figure-missing" : "ask.unknown-line", clause.text());
                    draft.note(clause.text());
                }
            }
        }

        private static boolean figureMissing(Clause clause) {
            return clause.has("topic.weight") && clause.figures().findAny().isEmpty();
        }
    }

    static boolean figured(Clause clause) {
        return clause.pieces().stream().anyMatch(Figure.class::isInstance);
    }
}
