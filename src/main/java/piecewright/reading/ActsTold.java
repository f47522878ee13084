package piecewright.reading;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import piecewright.journal.Remark;
import piecewright.journal.Report;
import piecewright.journal.Report.Did;
import piecewright.plan.ActKind;
import piecewright.reading.Order.Fit;
import piecewright.reading.Piece.Hours;
import piecewright.reading.Piece.Term;
import piecewright.reading.Piece.Time;
import piecewright.reading.Piece.Told;
import piecewright.reading.Piece.Unknown;
import piecewright.reading.Standing.Stage;

/** The steps a clause tells of: done, begun, left out, not done yet. */
final class ActsTold {
    private static final Set<ActKind> OFTEN =
            Set.of(ActKind.TURN, ActKind.SPRINKLE, ActKind.STIR, ActKind.CHECK, ActKind.LOOK);

    /** Steps that take hours: going on is not done. */
    private static final Set<ActKind> BLOCKS = Set.of(ActKind.STEW, ActKind.ROAST);

    private final Draft draft;
    private final boolean doing;

    /** @param doing whether the line says that it is being done now */
    ActsTold(Draft draft, boolean doing) {
        this.draft = draft;
        this.doing = doing;
    }

    /** What words for a step may mean, and how they say it. */
    private record Words(Set<ActKind> kinds, Set<String> forms, boolean change, Term term) {
        boolean weak() {
            return forms.stream().allMatch(form -> form.startsWith("weak"));
        }
    }

    /** Takes the steps of a clause; false when it tells of none. */
    boolean take(Clause clause) throws NotSoException {
        List<Words> told = told(clause);
        boolean negative = negative(clause);
        if (told.isEmpty()) return negative && skippedNext(clause);
        if (clause.has("stopped")) return stopped(told);
        boolean any = false;
        for (Words each : told) any |= one(each, clause, negative, told.size());
        return any;
    }

    /** "stopped stewing": what goes on ends here, for now or for good. */
    private boolean stopped(List<Words> told) {
        Optional<ActKind> block = told.stream()
                .flatMap(words -> words.kinds().stream())
                .filter(kind -> BLOCKS.contains(kind)
                        && draft.standing
                                .lastOf(draft.at(), kind)
                                .filter(Standing.Done::begun)
                                .isPresent())
                .findFirst();
        block.ifPresent(kind -> draft.say(Did.of(kind)));
        return block.isPresent();
    }

    private static List<Words> told(Clause clause) {
        List<Words> all = new ArrayList<>();
        clause.terms().forEach(term -> {
            Set<ActKind> kinds = new LinkedHashSet<>();
            Set<String> forms = new LinkedHashSet<>();
            boolean change = false;
            for (String key : new java.util.TreeSet<>(term.keys())) {
                if (!key.startsWith("act.")) continue;
                String[] parts = key.split("\\.");
                if (parts[1].equals("change")) change = true;
                else if (parts[1].equals("lower") && clause.figures().findAny().isPresent()) continue;
                else kinds.add(ActKind.valueOf(parts[1].toUpperCase(Locale.ROOT)));
                forms.add(parts[2]);
            }
            if (!kinds.isEmpty() || change) all.add(new Words(kinds, forms, change, term));
        });
        return all;
    }

    private boolean negative(Clause clause) {
        if (doing && clause.has("neg.forgot")) return false;
        return clause.has("neg.past") || clause.has("neg.yet") || clause.has("neg.no") || clause.has("neg.forgot");
    }

    /** "missed the 10 pm one". */
    private boolean skippedNext(Clause clause) {
        boolean alone = clause.terms()
                .noneMatch(term -> term.of("sign.").isPresent()
                        || term.of("topic.").isPresent()
                        || term.is("chit")
                        || term.is("body")
                        || term.is("sense"));
        Optional<ActKind> next = draft.scene.next();
        if (!clause.has("neg.past")
                || !alone
                || clause.unknown()
                || next.isEmpty()
                || clause.figures().anyMatch(figure -> !figure.spelled())) return false;
        draft.remark(clause.words(), new Remark.Skipped(next.get()));
        return true;
    }

    private boolean one(Words told, Clause clause, boolean negative, int many) throws NotSoException {
        if (told.change()) return negative ? skipped(ActKind.DRAIN, clause) : changed();
        Optional<ActKind> kind = kind(told, clause);
        if (kind.isEmpty()) return false;
        if (negative && before(clause, told.term())) return skipped(kind.get(), clause);
        if (clause.has("partial")) draft.doubt("ask.partly", clause.text());
        if (told.term().slipped()) slipped(told, kind.get(), clause);
        boolean reminder = told.forms().contains("bare")
                && clause.pieces().stream()
                        .anyMatch(piece -> piece instanceof Time time
                                && time.told() instanceof Told.Part part
                                && part.hours() == Hours.TONIGHT)
                && clause.pieces().stream()
                        .noneMatch(piece -> piece instanceof Time time && time.told() instanceof Told.Clock);
        if (reminder) draft.doubt("ask.reminder");
        if (told.forms().contains("lasting")) return lasting(kind.get());
        object(told.term(), clause);
        boolean goesOn = BLOCKS.contains(kind.get()) && told.forms().contains("ing");
        boolean began = goesOn
                || clause.has("started")
                || told.forms().contains("began")
                || told.forms().contains("weakin");
        if (began) {
            draft.say(new Report.Started(kind.get()));
            return true;
        }
        fitted(
                kind.get(),
                many,
                told.term().slipped() || clause.figures().findAny().isPresent());
        return true;
    }

    private boolean changed() {
        draft.say(Did.of(ActKind.DRAIN));
        draft.say(Did.of(ActKind.SOAK));
        return true;
    }

    private static boolean before(Clause clause, Term act) {
        return clause.terms()
                .anyMatch(term -> term.of("neg.").isPresent()
                        && (term.from() < act.from()
                                || term.is("neg.yet")
                                || term.text().equals("not done")));
    }

    private boolean skipped(ActKind kind, Clause clause) {
        boolean yet = clause.has("yet") || clause.has("neg.yet") || clause.has("neg.forgot") && !OFTEN.contains(kind);
        draft.remark(clause.words(), yet ? new Remark.NotYet(kind) : new Remark.Skipped(kind));
        return true;
    }

    private void slipped(Words told, ActKind kind, Clause clause) {
        boolean sure = draft.scene
                        .next()
                        .filter(next -> next == kind || kind == ActKind.SPRINKLE && next == ActKind.TURN)
                        .isPresent()
                && !clause.unknown();
        if (!sure)
            draft.doubt(
                    "ask.did-you-mean",
                    told.term().text(),
                    Lexicon.of(draft.scene.units().locale()).say("act." + kind.key() + ".did"));
    }

    /** An unknown word straight after the step says what it was done to. */
    private void object(Term act, Clause clause) {
        int index = clause.pieces().indexOf(act);
        boolean led = index + 1 < clause.pieces().size()
                && clause.pieces().get(index + 1) instanceof Term word
                && List.of("by", "with", "for", "while", "on", "as", "and", "after", "before")
                        .contains(word.text());
        Optional<Piece> next = clause.beside(index, 1);
        if (!led
                && next.isPresent()
                && next.get() instanceof Unknown unknown
                && !unknown.text().endsWith("ly")) draft.doubt("ask.unknown-words", unknown.text());
    }

    /** "let it drip since 21:15": drained then, or only now. */
    private boolean lasting(ActKind kind) {
        if (draft.oracle.pick(2) == 0) draft.say(Did.of(kind));
        else draft.sayAt(Did.of(kind), draft.scene.now());
        draft.doubt("ask.two-moments");
        return true;
    }

    /** The one step words can mean where the batch stands; asked where several are left. */
    private Optional<ActKind> kind(Words told, Clause clause) throws NotSoException {
        List<ActKind> fitting = told.kinds().stream()
                .filter(kind -> Order.of(kind, draft.at(), draft.standing) == Fit.FINE)
                .toList();
        if (told.weak()) {
            boolean in = told.forms().contains("weakin");
            if (in
                    && (draft.scene.next().filter(next -> next == ActKind.ROAST).isEmpty()
                            || clause.pieces().indexOf(told.term()) > 0)) return Optional.empty();
            boolean nowFits = told.kinds().stream()
                    .anyMatch(kind -> Order.of(kind, draft.scene.now(), draft.standing) == Fit.FINE);
            if (fitting.isEmpty() && nowFits)
                throw new NotSoException("line.too-early", told.term().text(), "");
            if (fitting.isEmpty()) return Optional.empty();
            boolean powered = told.term().is("sign.power-out")
                    || told.term().text().equals("out") && clause.pieces().size() == 1;
            if (powered) return outOf(fitting.get(0));
            boolean heater = List.of("off", "out").contains(told.term().text()) && other(clause);
            if (heater) return Optional.empty();
            return Optional.of(fitting.get(0));
        }
        if (fitting.size() > 1) draft.doubt("ask.which");
        List<ActKind> all = fitting.isEmpty() ? List.copyOf(told.kinds()) : fitting;
        return Optional.of(all.size() == 1 ? all.get(0) : draft.oracle.pick(all));
    }

    /** Whether something else is off or out: the fan, the lights. */
    private static boolean other(Clause clause) {
        boolean thing = clause.terms()
                .anyMatch(term -> term.of("topic.")
                                .filter(topic -> !topic.equals("malt") && !topic.equals("weight"))
                                .isPresent()
                        || term.is("deed"));
        return thing || clause.unknown();
    }

    private Optional<ActKind> outOf(ActKind kind) {
        draft.doubt("ask.which");
        if (draft.oracle.pick(2) == 0) return Optional.of(kind);
        draft.say(new Report.Observed(piecewright.journal.Sign.POWER_OUT, "out"));
        return Optional.empty();
    }

    /**
     * The step, or what is done in its stead where the batch stands.
     *
     * @param plain whether nothing but this step can be meant, whatever was left out before it
     */
    private void fitted(ActKind kind, int many, boolean plain) {
        Fit fit = Order.of(kind, draft.at(), draft.standing);
        Stage stage = draft.stage();
        boolean now = Standing.near(draft.at(), draft.scene.now(), Moments.AHEAD);
        if (draft.sure) {
            draft.say(Did.of(kind));
            return;
        }
        if (kind == ActKind.TURN && stage == Stage.KILN && fit != Fit.FINE) {
            instead(ActKind.STIR, kind);
            return;
        }
        if (kind == ActKind.HEAP
                && fit != Fit.FINE
                && draft.scene.next().filter(next -> next == ActKind.PACK).isPresent()) {
            instead(ActKind.PACK, kind);
            return;
        }
        if (kind == ActKind.DRAIN
                && stage == Stage.DRY
                && now
                && draft.standing.acts().isEmpty()) {
            unsoaked(plain);
            return;
        }
        if (kind == ActKind.DRAIN
                && fit == Fit.MISSING
                && many > 1
                && now
                && stage != Stage.DRAINED
                && !draft.act(ActKind.SOAK)) {
            draft.doubt("ask.nothing-soaked", piecewright.text.Phrases.say("act.drain.title"));
            return;
        }
        draft.say(Did.of(kind));
    }

    private void instead(ActKind likelier, ActKind said) {
        draft.doubt("ask.which");
        draft.say(Did.of(draft.oracle.pick(List.of(likelier, said))));
    }

    /** Drained though nothing was soaked: the soak was not written down, or it is meant where that can be. */
    private void unsoaked(boolean drained) {
        draft.doubt("ask.nothing-soaked", piecewright.text.Phrases.say("act.drain.title"));
        if (!drained && draft.oracle.pick(2) == 1) {
            draft.say(Did.of(ActKind.SOAK));
            return;
        }
        draft.scene.planned().stream()
                .filter(visit -> visit.kind() == ActKind.SOAK && !visit.at().isAfter(draft.scene.now()))
                .findFirst()
                .ifPresent(visit -> draft.sayAt(Did.of(ActKind.SOAK), visit.at()));
        draft.say(Did.of(ActKind.DRAIN));
    }
}
