package piecewright.reading;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import piecewright.journal.Remark;
import piecewright.journal.Report.Observed;
import piecewright.journal.Sign;
import piecewright.reading.Piece.Term;
import piecewright.reading.Piece.Unknown;

/** What was seen, smelt or happened, or was looked for and not found. A negative never becomes its positive. */
final class SignsTold {
    private static final Set<Sign> EVENTS =
            Set.of(Sign.KILN_BUSY, Sign.POWER_OUT, Sign.POWER_BACK, Sign.NOT_HEATING, Sign.OTHER);

    private final Draft draft;

    SignsTold(Draft draft) {
        this.draft = draft;
    }

    /** Takes the signs of a clause; false when it tells of none. */
    boolean take(Clause clause) {
        boolean any = false;
        for (Piece piece : clause.pieces()) {
            if (!(piece instanceof Term term) || term.of("sign.").isEmpty()) continue;
            Sign sign =
                    Sign.valueOf(term.of("sign.").get().toUpperCase(Locale.ROOT).replace('-', '_'));
            if (sign == Sign.SWEET_SMELL && qualified(term, clause)) continue;
            if (told(sign)) continue;
            boolean negated = negated(term, clause);
            if (!negated) draft.say(new Observed(sign, clause.words()));
            else if (EVENTS.contains(sign)) draft.say(new Observed(Sign.OTHER, clause.words()));
            else draft.remark(clause.words(), new Remark.Absent(sign));
            any = true;
        }
        if (any) return true;
        boolean sensed = clause.has("sense") || clause.has("topic.floaters") || clause.has("topic.test");
        if (!sensed) return false;
        draft.say(new Observed(Sign.OTHER, clause.words()));
        return true;
    }

    private boolean told(Sign sign) {
        return draft.candidate().sayings().stream()
                .anyMatch(saying -> saying.report() instanceof Observed seen
                        && seen.sign() == sign
                        && saying.at().equals(draft.at()));
    }

    /** "fresh bread": fresh says what the smell is like, not that it is right. */
    private static boolean qualified(Term term, Clause clause) {
        boolean water = clause.figures()
                .anyMatch(figure -> figure.unit().filter(UnitSizes::volume).isPresent());
        if (water) return true;
        Optional<Piece> next = clause.beside(clause.pieces().indexOf(term), 1);
        if (next.isEmpty()) return false;
        if (next.get() instanceof Unknown) return true;
        return next.get() instanceof Term noun
                && (noun.is("body")
                        || noun.is("vessel.noun")
                        || noun.is("deed")
                        || noun.of("topic.").isPresent())
                && noun.of("sign.").isEmpty();
    }

    private static boolean negated(Term sign, Clause clause) {
        boolean inside = sign.text().matches("(no|not|doesn't|does not|isn't|won't|hasn't|didn't)\\b.*");
        if (inside) return false;
        boolean before = clause.terms()
                .anyMatch(term -> term.of("neg.").isPresent()
                        && term.from() < sign.from()
                        && !term.text().equals("is not only"));
        boolean free = clause.terms().anyMatch(term -> term.is("free") && term.from() == sign.until());
        return before || free;
    }
}
