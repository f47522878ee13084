package piecewright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import piecewright.journal.AcrospireCount;
import piecewright.journal.Remark;
import piecewright.journal.Report.AcrospiresCounted;
import piecewright.journal.Report.ChittedCounted;
import piecewright.journal.Report.TemperatureRead;
import piecewright.journal.Report.VentsSet;
import piecewright.journal.Spot;
import piecewright.reading.Piece.Figure;
import piecewright.reading.Piece.Ratio;
import piecewright.reading.Piece.Row;
import piecewright.reading.Piece.Term;
import piecewright.reading.Standing.Stage;

/** Counts of kernels, and shares by eye. */
final class CountsTold {
    /** Judgement: shares people mean by a word. */
    private static final Map<String, Double> SHARES = Map.of(
            "share.zero", 0.0,
            "share.quarter", 0.25,
            "share.third", 1 / 3.0,
            "share.half", 0.5,
            "share.two-thirds", 2 / 3.0,
            "share.three-quarters", 0.75,
            "share.full", 1.0,
            "share.nearly-all", 0.95,
            "share.all", 1.0);

    private final Draft draft;

    CountsTold(Draft draft) {
        this.draft = draft;
    }

    /** The first share told in words. */
    static Optional<Double> share(Clause clause) {
        return clause.terms().flatMap(term -> share(term).stream()).findFirst();
    }

    static Optional<Double> share(Term term) {
        return term.keys().stream()
                .filter(SHARES::containsKey)
                .map(SHARES::get)
                .sorted()
                .findFirst();
    }

    /** Shares in words after what they are of: "nearly all chitted", "shoots mostly half way up". */
    boolean shares(Clause clause, Optional<String> inherited) throws NotSoException {
        boolean figured = clause.pieces().stream()
                .anyMatch(piece -> piece instanceof Figure || piece instanceof Ratio || piece instanceof Row);
        Optional<Double> share = share(clause);
        if (clause.has("chit") && !figured) {
            if (share.isPresent()) chitted(share.get(), clause);
            else if (clause.has("neg.no") || clause.has("neg.yet") || clause.has("neg.past")) chitted(0, clause);
            else if (clause.has("share.most")) chitted(0.8, clause);
            else {
                draft.doubt("ask.of-how-many", clause.text());
                chitted(1, clause);
            }
            return true;
        }
        boolean acrospire = clause.has("topic.acrospire");
        if (acrospire && !figured && share.isPresent()) {
            acrospire(share.get(), clause);
            return true;
        }
        return false;
    }

    void chitted(double fraction, Clause clause) throws NotSoException {
        if (!(fraction >= 0 && fraction <= 1))
            throw new NotSoException("line.more-than-all", Math.round(fraction * 100) + " %", "100 %");
        draft.remark(clause.words(), new Remark.ChittedShare(fraction));
    }

    void acrospire(double fraction, Clause clause) throws NotSoException {
        if (!(fraction >= 0 && fraction <= Remark.AcrospireShare.LONGEST_FRACTION))
            throw new NotSoException("line.long-acrospire");
        draft.remark(clause.words(), new Remark.AcrospireShare(fraction));
    }

    /** "45 chitted": of how many. */
    void bare(Figure figure, Clause clause) throws NotSoException {
        draft.doubt("ask.of-how-many", figure.digits());
        int way = draft.oracle.pick(3);
        int count = (int) figure.value();
        if (way == 2) chitted(figure.value() / 100, clause);
        else chitted(count, way == 0 ? 50 : 100);
    }

    private void chitted(int count, int of) throws NotSoException {
        if (of < 1 || count > of || count < 0)
            throw new NotSoException("line.more-than-all", String.valueOf(count), String.valueOf(of));
        draft.say(new ChittedCounted(count, of));
    }

    void ratio(Ratio ratio, Clause clause, Optional<String> key) throws NotSoException {
        String about = key.orElse("");
        boolean chit = clause.has("chit") || about.equals("chit");
        if (chit) {
            boolean rough = !ratio.slashed() && clause.text().matches("(?i).*\\bin\\b.*") && ratio.all() <= 10;
            if (rough) chitted(ratio.share(), clause);
            else chitted((int) ratio.of(), (int) ratio.all());
            return;
        }
        if (about.equals("topic.vents")) {
            if (!draft.says(VentsSet.class)) draft.say(new VentsSet(Math.min(1, ratio.share())));
        } else if (about.equals("topic.acrospire")) acrospires(ratio, clause);
        else if (about.isEmpty()
                && ratio.all() >= 10
                && (draft.stage() == Stage.DRAINED || draft.stage() == Stage.FLOOR)) {
            draft.doubt("ask.counted-what");
            chitted((int) ratio.of(), (int) ratio.all());
        }
    }

    /** "1/2", "1/2 to 3/4". */
    private void acrospires(Ratio ratio, Clause clause) throws NotSoException {
        List<Ratio> all = clause.pieces().stream()
                .filter(Ratio.class::isInstance)
                .map(Ratio.class::cast)
                .toList();
        if (all.indexOf(ratio) > 0) return;
        if (all.size() == 2) {
            draft.doubt("ask.range");
            double low = all.get(0).share();
            double high = all.get(1).share();
            acrospire(draft.oracle.pick(List.of(Math.floor((low + high) * 50) / 100, low, high)), clause);
        } else acrospire(ratio.share(), clause);
    }

    void row(Row row, Clause clause, Optional<String> key) throws NotSoException {
        String about = key.orElse("");
        boolean place = about.equals("topic.couch") || about.equals("topic.bed") || about.equals("topic.temp");
        if (row.slashed() && row.values().size() == 3 && (place || draft.stage() == Stage.COUCH)) {
            draft.doubt("ask.which-is-where");
            boolean rising = draft.oracle.pick(2) == 0;
            read(row.values().get(0), rising ? Spot.BOTTOM : Spot.TOP);
            read(row.values().get(1), Spot.CORE);
            read(row.values().get(2), rising ? Spot.TOP : Spot.BOTTOM);
            return;
        }
        boolean counted = about.equals("topic.acrospire") || about.equals("topic.corns");
        if (!counted && row.values().size() < 5) {
            draft.doubt("ask.of-what", String.valueOf(row.values()));
            draft.note(clause.text());
            return;
        }
        if (!counted) draft.doubt("ask.counted-what");
        List<Integer> counts = new ArrayList<>();
        row.values().forEach(value -> counts.add((int) Math.round(value)));
        if (counts.size() > AcrospireCount.CLASSES)
            throw new NotSoException("line.acrospires", String.valueOf(counts.size()));
        if (counts.size() < AcrospireCount.CLASSES - 1) {
            draft.doubt("ask.which-lengths");
            if (draft.oracle.pick(2) == 1) counts.add(0, 0);
            while (counts.size() < AcrospireCount.CLASSES) counts.add(0);
        } else if (counts.size() == AcrospireCount.CLASSES - 1) counts.add(0, 0);
        counted(counts);
    }

    private void read(double figure, Spot spot) {
        draft.say(new TemperatureRead(UnitSizes.celsius(figure, !draft.scene.metric()), spot));
    }

    private void counted(List<Integer> counts) throws NotSoException {
        boolean none = counts.stream().allMatch(count -> count == 0);
        if (none || counts.stream().anyMatch(count -> count > 10_000)) throw new NotSoException("line.no-kernels");
        draft.say(new AcrospiresCounted(new AcrospireCount(counts)));
    }

    /** A whole line of lengths: "split 10: two at quarter, six at half", "five corns: 3/4, 1/2", "most three quarters". */
    boolean lengths(List<Clause> clauses) throws NotSoException {
        boolean acted = clauses.stream()
                .anyMatch(clause -> clause.hasFamily("act.")
                        || clause.has("topic.vents")
                        || clause.has("topic.fan")
                        || clause.has("chit")
                        || clause.has("topic.bed")
                        || clause.has("topic.rootlets"));
        if (acted
                || draft.standing.stage(draft.at()) != Stage.FLOOR && draft.standing.stage(draft.at()) != Stage.DRAINED)
            return false;
        List<Piece> pieces =
                clauses.stream().flatMap(clause -> clause.pieces().stream()).toList();
        if (pieces.stream()
                .anyMatch(
                        piece -> piece instanceof Figure figure && figure.unit().isPresent())) return false;
        List<Integer> counts = new ArrayList<>(List.of(0, 0, 0, 0, 0, 0));
        int told = 0;
        int listed = 0;
        double pending = -1;
        for (Piece piece : pieces) {
            Optional<Double> share = piece instanceof Ratio ratio && ratio.slashed()
                    ? Optional.of(ratio.share())
                    : piece instanceof Term term ? share(term) : Optional.empty();
            if (piece instanceof Figure figure && figure.whole()) pending = figure.value();
            if (share.isEmpty()) continue;
            int row = (int) Math.round(share.get() * 4);
            if (pending >= 0) told++;
            listed++;
            counts.set(row, counts.get(row) + (pending >= 0 && told > 0 ? (int) pending : 1));
            pending = -1;
        }
        boolean topic = clauses.stream().anyMatch(clause -> clause.has("topic.acrospire") || clause.has("topic.corns"));
        if (told >= 2 && told == listed && topic) {
            counted(counts);
            return true;
        }
        if (listed >= 3 && topic) return list(pieces);
        boolean plain = pieces.stream().allMatch(piece -> piece instanceof Term || piece instanceof Ratio);
        boolean mostly = clauses.size() >= 1
                && listed >= 1
                && plain
                && !topic
                && clauses.get(0).terms().anyMatch(term -> term.is("share.most") || term.is("share.nearly-all"));
        if (!mostly) return false;
        Optional<Double> first = clauses.get(0).pieces().stream()
                .flatMap(piece -> (piece instanceof Ratio ratio
                                ? Optional.of(ratio.share())
                                : piece instanceof Term term ? share(term) : Optional.<Double>empty())
                        .stream())
                .findFirst();
        if (first.isEmpty()) return false;
        acrospire(first.get(), clauses.get(0));
        return true;
    }

    private boolean list(List<Piece> pieces) throws NotSoException {
        List<Integer> counts = new ArrayList<>(List.of(0, 0, 0, 0, 0, 0));
        for (Piece piece : pieces) {
            Optional<Double> share = piece instanceof Ratio ratio && ratio.slashed()
                    ? Optional.of(ratio.share())
                    : piece instanceof Term term ? share(term) : Optional.empty();
            if (share.isPresent())
                counts.set((int) Math.round(share.get() * 4), counts.get((int) Math.round(share.get() * 4)) + 1);
        }
        counted(counts);
        return true;
    }
}
