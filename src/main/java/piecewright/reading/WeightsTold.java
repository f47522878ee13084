package piecewright.reading;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import piecewright.journal.Remark;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.Tare;
import piecewright.journal.Report.VesselWeighed;
import piecewright.journal.Report.Weighed;
import piecewright.plan.ActKind;
import piecewright.quantity.Units;
import piecewright.reading.Piece.Figure;
import piecewright.reading.Piece.Term;
import piecewright.reading.Piece.Time;
import piecewright.reading.Standing.Stage;
import piecewright.text.Quoted;

/** Weights: of the batch, with or without its vessel, of the malt, of rootlets, of an empty vessel. */
final class WeightsTold {
    private static final double TARE_KG = 0.03;
    /** Judgement: no batch grows more rootlets, share of its dry matter; and no malt weighs as little. */
    private static final double CULMS_FRACTION = 0.12;

    private final Draft draft;
    private final List<Tare> vessels;
    private final Set<Figure> taken = new HashSet<>();

    WeightsTold(Draft draft) {
        this.draft = draft;
        this.vessels = draft.scene.journal().vessels();
    }

    boolean taken(Figure figure) {
        return taken.contains(figure);
    }

    /** "red bucket weighs 1.18 kg empty". */
    boolean vessel(Clause clause) throws NotSoException {
        Optional<Figure> mass = clause.figures()
                .filter(figure -> figure.unit().filter(UnitSizes::mass).isPresent())
                .findFirst();
        if (!clause.has("vessel.empty") || mass.isEmpty() || clause.hasFamily("act.")) return false;
        StringBuilder name = new StringBuilder();
        for (Piece piece : clause.pieces()) {
            boolean word = piece instanceof Piece.Unknown || piece instanceof Term term && named(term);
            if (!word) continue;
            String text = piece instanceof Piece.Unknown unknown ? unknown.text() : ((Term) piece).text();
            name.append(name.isEmpty() ? "" : " ").append(text);
        }
        if (name.isEmpty()) return false;
        double kg = kg(mass.get());
        if (!(kg >= 0.005 && kg < 100))
            throw new NotSoException(
                    "line.no-such-vessel",
                    mass.get().digits() + " " + mass.get().unit().orElse(""));
        draft.say(new VesselWeighed(new Tare(Quoted.shortly(name.toString()), kg)));
        return true;
    }

    private static boolean named(Term term) {
        if (term.is("vessel.empty") && !term.is("vessel.noun") || term.is("topic.weight")) return false;
        if (term.is("vessel.empty") && term.text().equals("vessel")) return false;
        return term.is("vessel.noun")
                || term.is("body")
                || term.is("deed")
                || term.of("topic.").isPresent()
                || term.of("spot.").isPresent();
    }

    private static double kg(Figure figure) {
        return figure.value() * UnitSizes.kg(figure.unit().orElseThrow());
    }

    /** A figure with a unit of weight. */
    void mass(Figure figure, Optional<String> key, Clause clause) throws NotSoException {
        double factor = UnitSizes.kg(figure.unit().orElseThrow());
        if (!(figure.value() > 0)) throw new NotSoException("line.no-weight");
        if (key.filter("topic.floaters"::equals).isPresent()) return;
        double value = figure.values().size() > 1 ? draft.oracle.pick(figure.values()) : figure.value();
        told(value * factor, key, clause, figure);
    }

    /** A figure without a unit: in the person's own, in grams where only they fit, else asked. */
    void bare(Figure figure, Optional<String> key, Clause clause) throws NotSoException {
        if (!(figure.value() > 0)) throw new NotSoException("line.no-weight");
        List<Double> own = new ArrayList<>();
        boolean metric = draft.scene.metric();
        double unitKg = metric ? 1 : Units.KG_PER_POUND;
        for (double value : figure.values()) own.add(value * unitKg);
        if (figure.whole() && metric && figure.value() >= 50) own.add(figure.value() / 1000);
        double otherKg = figure.value() * (metric ? Units.KG_PER_POUND : 1);
        int pick = draft.oracle.pick(own.size() + 1);
        if (pick == own.size()) draft.doubt("ask.which-unit", figure.digits());
        told(pick == own.size() ? otherKg : own.get(pick), key, clause, figure);
    }

    /** Whether a bare figure would be a likely weight of the batch. */
    boolean likely(Figure figure) {
        double expectedKg = draft.scene.expectedKg().orElse(draft.scene.limits().grainKg());
        List<Double> all = new ArrayList<>();
        double unitKg = draft.scene.metric() ? 1 : Units.KG_PER_POUND;
        for (double value : figure.values()) all.add(value * unitKg);
        if (figure.whole() && draft.scene.metric()) all.add(figure.value() / 1000);
        double dryKg = draft.stage() == Stage.OFF || draft.stage() == Stage.OVEN
                ? 0
                : draft.scene.limits().dryKg() * 0.9;
        double heldKg = draft.standing.heldKg(draft.at()).orElse(Double.POSITIVE_INFINITY) * 1.04;
        return all.stream()
                .anyMatch(kg -> kg > 0.5 * expectedKg
                        && kg < 1.5 * expectedKg
                        && kg > dryKg
                        && kg < Math.max(heldKg, 1.15 * expectedKg));
    }

    /** Whether it would be a likely weight in the unit that is not the person's. */
    boolean likelyOther(Figure figure) {
        double expectedKg = draft.scene.expectedKg().orElse(draft.scene.limits().grainKg());
        double kg = figure.value() * (draft.scene.metric() ? Units.KG_PER_POUND : 1);
        boolean steeping = draft.stage() == Stage.DRAINED || draft.stage() == Stage.OFF;
        return steeping && Math.abs(kg / expectedKg - 1) < 0.3;
    }

    private void told(double kg, Optional<String> key, Clause clause, Figure figure) throws NotSoException {
        if (key.filter("topic.rootlets"::equals).isPresent()) {
            rootlets(kg, clause);
            return;
        }
        boolean culms =
                key.isEmpty() && kg <= CULMS_FRACTION * draft.scene.limits().dryKg();
        if (culms && draft.acts().contains(ActKind.DEROOT)) {
            draft.remark(clause.words(), new Remark.RootletsWeighed(kg));
            return;
        }
        if (clause.has("share.half")) {
            draft.doubt("ask.half");
            kg = draft.oracle.pick(List.of(2 * kg, kg));
        }
        boolean malt = key.filter("topic.malt"::equals).isPresent();
        boolean net = clause.has("net") || malt;
        Optional<Tare> tare = net ? Optional.empty() : less(figure, clause).or(() -> named(clause));
        if (tare.isEmpty() && !net) tare = unnamed(kg, clause, figure);
        weighed(kg, tare, clause, malt);
    }

    private void weighed(double kg, Optional<Tare> tare, Clause clause, boolean malt) throws NotSoException {
        if (tare.isPresent() && !(kg > tare.get().tareKg())) {
            var shown = new piecewright.text.QuantityFormat(draft.scene.units());
            throw new NotSoException(
                    "line.lighter-than-vessel",
                    () -> List.of(
                            shown.mass(kg),
                            tare.get().vessel(),
                            shown.mass(tare.get().tareKg())));
        }
        boolean steeping = draft.stage() == Stage.STEEPING
                && draft.acts().isEmpty()
                && draft.standing.stage(draft.at()) == Stage.STEEPING;
        boolean fits =
                kg >= draft.scene.limits().dryKg() && kg <= draft.scene.limits().dryKg() * 2.25;
        if (steeping && fits && !draft.sure) {
            draft.doubt("ask.under-water");
            if (draft.oracle.pick(2) == 0) draft.say(Did.of(ActKind.DRAIN));
        }
        boolean rooted = draft.stage() == Stage.OFF
                && !draft.standing.did(draft.at(), ActKind.DEROOT)
                && !draft.standing.did(draft.at(), ActKind.ROAST)
                && draft.standing.did(draft.at(), ActKind.OFF);
        if (!draft.sure
                && rooted
                && draft.acts().isEmpty()
                && !malt
                && !clause.has("topic.weight")
                && draft.scene.plans(ActKind.DEROOT)) {
            draft.doubt("ask.malt-or-rooted");
            if (draft.oracle.pick(2) == 0) draft.say(Did.of(ActKind.DEROOT));
        }
        Optional<Weighed> before = draft.weighed();
        if (before.isPresent() && draft.parts) {
            draft.reweigh(new Weighed(before.get().grossKg() + kg, before.get().tare()));
            return;
        }
        if (before.isPresent()) {
            draft.doubt("ask.two-weights");
            Weighed sum = new Weighed(before.get().grossKg() + kg, before.get().tare());
            draft.reweigh(draft.oracle.pick(List.of(sum, before.get(), new Weighed(kg, tare))));
            return;
        }
        draft.say(new Weighed(kg, tare));
    }

    private void rootlets(double kg, Clause clause) {
        if (kg <= CULMS_FRACTION * draft.scene.limits().dryKg()) {
            draft.remark(clause.words(), new Remark.RootletsWeighed(kg));
            return;
        }
        draft.doubt("ask.rootlets", new piecewright.text.QuantityFormat(draft.scene.units()).mass(kg));
        if (draft.oracle.pick(2) == 0) draft.say(Weighed.net(kg));
        else draft.remark(clause.words(), new Remark.RootletsWeighed(kg / 10));
    }

    /** "9.56 kg less 1.84 for the tub". */
    private Optional<Tare> less(Figure figure, Clause clause) {
        if (!clause.has("less")) return Optional.empty();
        List<Figure> figures = clause.figures().toList();
        int index = figures.indexOf(figure);
        if (index != 0 || figures.size() < 2) return Optional.empty();
        Figure minus = figures.get(1);
        taken.add(minus);
        double kg = minus.value()
                * (minus.unit().isPresent()
                        ? UnitSizes.kg(minus.unit().get())
                        : figure.unit().map(UnitSizes::kg).orElse(draft.scene.metric() ? 1 : Units.KG_PER_POUND));
        return Optional.of(vessels.stream()
                .filter(tare -> Math.abs(tare.tareKg() - kg) < TARE_KG)
                .findFirst()
                .orElse(new Tare("vessel", kg)));
    }

    /** A remembered vessel by its name, or by its last word where no other ends in it. */
    private Optional<Tare> named(Clause clause) {
        String text = " " + clause.text().toLowerCase(Locale.ROOT) + " ";
        for (Tare tare : vessels) {
            if (text.contains(" " + tare.vessel().toLowerCase(Locale.ROOT) + " ")) return Optional.of(tare);
        }
        List<Tare> ending = vessels.stream()
                .filter(tare -> {
                    String[] words = tare.vessel().toLowerCase(Locale.ROOT).split(" ");
                    String last = java.util.regex.Pattern.quote(words[words.length - 1]);
                    return text.matches(".* (in|with|incl|including|inside) (the |a |my |its )?" + last + "[ ,.].*");
                })
                .toList();
        return ending.size() == 1 ? Optional.of(ending.get(0)) : Optional.empty();
    }

    /** A vessel must have been on the scale, but nobody can tell which. */
    private Optional<Tare> unnamed(double kg, Clause clause, Figure figure) {
        String unknown = foreign(clause, figure);
        OptionalDouble held = draft.standing.heldKg(draft.at());
        boolean heavy = held.isPresent()
                && kg > held.getAsDouble() * (1 + Weighed.FORBIDDEN_JUMP_FRACTION)
                && draft.standing.stage(draft.at()) != Stage.STEEPING;
        List<Tare> fitting = heavy ? draft.bounds.explaining(kg, held.getAsDouble()) : vessels;
        boolean asked = !draft.sure && (clause.has("gross") || !unknown.isEmpty() || heavy && !fitting.isEmpty());
        if (!asked) return Optional.empty();
        if (unknown.isEmpty()) draft.doubt(heavy ? "ask.with-vessel" : "ask.which-vessel");
        else draft.doubt("ask.no-vessel", unknown);
        List<Optional<Tare>> ways = new ArrayList<>();
        fitting.stream().filter(tare -> tare.tareKg() < kg).limit(2).forEach(tare -> ways.add(Optional.of(tare)));
        ways.add(Optional.empty());
        return draft.oracle.pick(ways);
    }

    /** "in the red bucket": the name of a vessel nobody weighed, straight after the figure; else empty. */
    private String foreign(Clause clause, Figure figure) {
        List<Piece> pieces = clause.pieces();
        int at = pieces.indexOf(figure) + 1;
        boolean in = at > 0
                && at < pieces.size()
                && pieces.get(at) instanceof Term term
                && List.of("in", "with", "inside", "with a").contains(term.text());
        if (!in || draft.acts().contains(ActKind.SOAK)) return "";
        StringBuilder name = new StringBuilder();
        for (int next = at + 1; next < pieces.size(); next++) {
            Piece piece = pieces.get(next);
            if (piece instanceof Time) break;
            if (piece instanceof Term term && term.is("skip")) continue;
            String text = piece instanceof Term term
                    ? term.text()
                    : piece instanceof Piece.Unknown unknown ? unknown.text() : "";
            name.append(name.isEmpty() ? "" : " ").append(text);
            if (piece instanceof Term term && term.is("vessel.noun")) return name.toString();
        }
        return "";
    }
}
