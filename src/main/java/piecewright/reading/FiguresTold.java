package piecewright.reading;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import piecewright.journal.Remark;
import piecewright.journal.Report;
import piecewright.journal.Report.ColourMeasured;
import piecewright.journal.Report.SampleDried;
import piecewright.journal.Report.TemperatureRead;
import piecewright.journal.Report.VentsSet;
import piecewright.journal.Spot;
import piecewright.plan.ActKind;
import piecewright.quantity.Moisture;
import piecewright.reading.Piece.Figure;
import piecewright.reading.Piece.Mark;
import piecewright.reading.Piece.Ratio;
import piecewright.reading.Piece.Row;
import piecewright.reading.Piece.Term;
import piecewright.reading.Piece.Time;
import piecewright.reading.Piece.Unknown;
import piecewright.reading.Standing.Stage;
import piecewright.text.ColourUnit;

/** What the figures of a clause measure: told by their unit, by the word beside them, by the step. */
final class FiguresTold {
    private static final Set<String> GENERAL =
            Set.of("topic.kiln", "topic.couch", "topic.heap", "topic.bed", "topic.temp", "topic.weight", "topic.water");

    private final Draft draft;
    private final TemperaturesTold temperatures;
    private final WeightsTold weights;
    private final WaterTold water;
    private final CountsTold counts;
    /** Words that a figure has belonged to already. */
    private final Set<Term> bound = new HashSet<>();

    private Optional<String> topic = Optional.empty();

    FiguresTold(Draft draft, WeightsTold weights) {
        this.draft = draft;
        this.weights = weights;
        this.temperatures = new TemperaturesTold(draft);
        this.water = new WaterTold(draft);
        this.counts = new CountsTold(draft);
    }

    /** Takes the figures of a clause. */
    void take(Clause clause) throws NotSoException {
        Optional<String> inherited = topic;
        topic(clause).ifPresent(key -> topic = Optional.of(key));
        if (sample(clause)) return;
        if (weights.vessel(clause)) return;
        if (counts.shares(clause, inherited)) return;
        settings(clause);
        List<Piece> pieces = clause.pieces();
        for (int at = 0; at < pieces.size(); at++) {
            Piece piece = pieces.get(at);
            if (piece instanceof Row row)
                counts.row(row, clause, bound(clause, at).or(() -> topic));
            if (piece instanceof Ratio ratio)
                counts.ratio(ratio, clause, bound(clause, at).or(() -> topic));
            if (piece instanceof Figure figure && !ordinal(clause, at, figure)) figure(figure, at, clause, inherited);
        }
    }

    private static Optional<String> topic(Clause clause) {
        return clause.terms().flatMap(term -> key(term).stream()).reduce((first, second) -> second);
    }

    static Optional<String> key(Term term) {
        Optional<String> spot = term.of("spot.").map(name -> "spot." + name);
        if (term.is("chit")) return Optional.of("chit");
        return spot.or(() -> term.of("topic.").map(name -> "topic." + name));
    }

    /** The word a figure belongs to. */
    private Optional<String> bound(Clause clause, int at) {
        Optional<Term> before = beside(clause, at, -1);
        Optional<Term> after = beside(clause, at, 1);
        boolean used = before.filter(bound::contains).isPresent();
        boolean general = before.isEmpty()
                || used
                || key(before.get()).filter(GENERAL::contains).isPresent();
        Optional<Term> chosen = before;
        if (general && after.isPresent()) {
            boolean leads = leads(clause, clause.pieces().indexOf(after.get()));
            boolean closer = before.isEmpty()
                    || used
                    || key(after.get()).filter(key -> key.startsWith("spot.")).isPresent();
            if (!leads && closer) chosen = after;
        }
        chosen.ifPresent(bound::add);
        return chosen.flatMap(FiguresTold::key);
    }

    /** Whether the word at a place belongs to the figure behind it. */
    private static boolean leads(Clause clause, int index) {
        Optional<Piece> next = clause.beside(index, 1);
        if (next.isEmpty() || !(next.get() instanceof Figure || next.get() instanceof Row)) return false;
        return beside(clause, clause.pieces().indexOf(next.get()), 1).isEmpty();
    }

    /** The nearest word with a topic on one side, with no figure between. */
    private static Optional<Term> beside(Clause clause, int at, int step) {
        for (int next = at + step; next >= 0 && next < clause.pieces().size(); next += step) {
            Piece piece = clause.pieces().get(next);
            if (piece instanceof Term term && key(term).isPresent()) return Optional.of(term);
            boolean passes = piece instanceof Term || piece instanceof Time || piece instanceof Mark;
            boolean far = step > 0 && piece instanceof Term term && !term.empty() && !term.is("share.most");
            if (!passes || far) return Optional.empty();
        }
        return Optional.empty();
    }

    /** "turn 5": the fifth. */
    private boolean ordinal(Clause clause, int at, Figure figure) {
        if (!figure.whole() || figure.unit().isPresent() || figure.value() > 20 || at == 0) return false;
        return clause.pieces().get(at - 1) instanceof Term term
                && term.keys().stream().anyMatch(key -> key.startsWith("act.") && key.endsWith(".bare"));
    }

    private void figure(Figure figure, int at, Clause clause, Optional<String> inherited) throws NotSoException {
        Optional<String> key = bound(clause, at);
        boolean mark = at > 0 && clause.pieces().get(at - 1) instanceof Term before && before.is("gasmark");
        if (mark || thing(clause, at, figure) && key.isEmpty() || weights.taken(figure)) return;
        Optional<Piece> next = clause.beside(at, 1);
        if (next.isPresent() && next.get() instanceof Term term && term.is("something"))
            draft.doubt("ask.no-figure", figure.digits());
        Figure one = figure;
        if (figure.high().isPresent()) {
            double high = figure.high().getAsDouble();
            draft.doubt("ask.range");
            double value = draft.oracle.pick(List.of((figure.value() + high) / 2, figure.value(), high));
            one = figure.worth(Math.round(value * 1000) / 1000.0, figure.until());
        }
        if (one.unit().isPresent()) united(one, key, clause, inherited);
        else bare(one, key, clause, inherited);
    }

    /** So many of something that is no measurement: "3 trays". */
    private static boolean thing(Clause clause, int at, Figure figure) {
        if (figure.unit().isPresent() || at + 1 >= clause.pieces().size())
            return figure.spelled() && figure.unit().isEmpty();
        Piece next = clause.pieces().get(at + 1);
        boolean counted = next instanceof Unknown
                || next instanceof Term term && (term.is("vessel.noun") || term.is("deed") || term.is("topic.corns"));
        return figure.whole() && counted
                || figure.spelled() && figure.value() == Math.rint(figure.value()) && key(clause, at);
    }

    private static boolean key(Clause clause, int at) {
        return clause.terms().noneMatch(term -> key(term).isPresent());
    }

    private void united(Figure figure, Optional<String> key, Clause clause, Optional<String> inherited)
            throws NotSoException {
        String unit = figure.unit().orElseThrow();
        Optional<String> about = key.or(() -> topic);
        if (unit.equals("l") && about.filter("topic.colour"::equals).isPresent()) unit = "lovibond";
        if (UnitSizes.mass(unit)) weights.mass(figure, key.or(() -> topic), clause);
        else if (UnitSizes.volume(unit)) water.volume(figure, clause);
        else if (unit.equals("c") || unit.equals("f") || unit.equals("deg"))
            temperatures.united(figure, key.or(() -> inherited), clause);
        else if (unit.equals("percent")) percent(figure, key.or(() -> topic), clause);
        else if (UnitSizes.cm(1, unit).isPresent()) depth(figure, unit, key, clause);
        else if (unit.equals("ebc") || unit.equals("srm") || unit.equals("lovibond")) colour(figure.value(), unit);
        else if (unit.equals("times")) draft.doubt("ask.how-often", figure.digits());
        else if (!unit.equals("h") && !unit.equals("min")) draft.doubt("ask.unknown-words", figure.digits());
    }

    private void colour(double value, String unit) throws NotSoException {
        ColourUnit scale =
                unit.equals("ebc") ? ColourUnit.EBC : unit.equals("srm") ? ColourUnit.SRM : ColourUnit.LOVIBOND;
        double ebc = scale.ebcOf(value);
        if (!(ebc >= 0 && ebc <= 2000)) throw new NotSoException("line.no-such-colour", String.valueOf(value));
        draft.say(new ColourMeasured(ebc));
    }

    private void depth(Figure figure, String unit, Optional<String> key, Clause clause) throws NotSoException {
        double cm = UnitSizes.cm(figure.value(), unit).orElseThrow();
        boolean bed = key.filter(about ->
                                about.equals("topic.bed") || about.equals("topic.depth") || about.equals("topic.heap"))
                        .isPresent()
                || draft.act(ActKind.FLOOR);
        if (!bed) return;
        if (!(cm > 0 && cm <= 80)) throw new NotSoException("line.no-such-depth", figure.digits() + " " + unit);
        draft.remark(clause.words(), new Remark.BedDepth(cm));
    }

    private void percent(Figure figure, Optional<String> key, Clause clause) throws NotSoException {
        double fraction = figure.value() / 100;
        String about = key.orElse("");
        switch (about) {
            case "topic.moisture", "topic.sample" -> moisture(fraction);
            case "topic.vents" -> vents(fraction);
            case "topic.fan" -> fan(OptionalDouble.of(fraction), clause);
            case "topic.acrospire" -> counts.acrospire(fraction, clause);
            case "chit" -> counts.chitted(fraction, clause);
            default -> {
                draft.doubt("ask.of-what-share", figure.digits());
                boolean kiln = draft.stage() == Stage.KILN;
                if (kiln) {
                    if (draft.oracle.pick(2) == 0) moisture(fraction);
                    else vents(fraction);
                } else if (draft.oracle.pick(2) == 0) counts.chitted(fraction, clause);
                else moisture(fraction);
            }
        }
    }

    private void moisture(double fraction) throws NotSoException {
        if (!(fraction > 0 && fraction < 0.99))
            throw new NotSoException("line.too-wet", String.valueOf(Math.round(fraction * 100)));
        draft.say(new SampleDried(new Moisture(fraction)));
    }

    private void vents(double fraction) throws NotSoException {
        if (!(fraction >= 0 && fraction <= 1))
            throw new NotSoException("line.more-than-open", String.valueOf(Math.round(fraction * 100)));
        draft.say(new VentsSet(fraction));
    }

    private void fan(OptionalDouble fraction, Clause clause) throws NotSoException {
        if (fraction.isPresent() && !(fraction.getAsDouble() >= 0 && fraction.getAsDouble() <= 1)) {
            throw new NotSoException("line.more-than-open", String.valueOf(Math.round(fraction.getAsDouble() * 100)));
        }
        draft.remark(clause.words(), new Remark.FanSet(fraction));
    }

    /** Vents, fan and heater without a figure. */
    private void settings(Clause clause) throws NotSoException {
        boolean figured = clause.pieces().stream().anyMatch(piece -> piece instanceof Figure);
        if (clause.has("topic.vents") && !figured) {
            Optional<Double> share = clause.pieces().stream()
                    .flatMap(piece -> piece instanceof Ratio ratio
                            ? Optional.of(ratio.share()).stream()
                            : Optional.<Double>empty().stream())
                    .findFirst();
            if (share.isEmpty()) share = CountsTold.share(clause);
            if (share.isEmpty() && clause.has("vent.shut")) share = Optional.of(0.0);
            if (share.isEmpty() && clause.has("vent.open")) share = Optional.of(1.0);
            if (share.isPresent()) vents(share.get());
        }
        if (clause.has("topic.fan") && !figured) {
            Optional<Double> share = CountsTold.share(clause);
            if (share.isPresent()) fan(OptionalDouble.of(share.get()), clause);
            else if (clause.has("off")) fan(OptionalDouble.of(0), clause);
            else if (clause.has("on")) fan(OptionalDouble.empty(), clause);
        }
        boolean lowers =
                draft.scene.next().filter(next -> next == ActKind.LOWER).isPresent();
        if (clause.has("heat.off") && lowers) draft.say(Report.Did.of(ActKind.LOWER));
        else if (clause.has("heat.off")) draft.remark(clause.words(), new Remark.HeaterOff());
        temperatures.settings(clause);
    }

    /** "sample 50 g dried to 28.2 g". */
    private boolean sample(Clause clause) throws NotSoException {
        List<Figure> masses = clause.figures()
                .filter(figure -> figure.unit().filter(UnitSizes::mass).isPresent())
                .toList();
        boolean dried = clause.text().toLowerCase(java.util.Locale.ROOT).contains("dried");
        if (masses.size() != 2 || !(clause.has("topic.sample") || dried)) return false;
        double wetKg = masses.get(0).value() * UnitSizes.kg(masses.get(0).unit().orElseThrow());
        double dryKg = masses.get(1).value() * UnitSizes.kg(masses.get(1).unit().orElseThrow());
        if (!(dryKg > 0 && dryKg < wetKg)) throw new NotSoException("line.sample-gained");
        moisture(1 - dryKg / wetKg);
        return true;
    }

    private void bare(Figure figure, Optional<String> key, Clause clause, Optional<String> inherited)
            throws NotSoException {
        String about = key.or(() -> inherited.filter(FiguresTold::carries)).orElse("");
        boolean floored = draft.act(ActKind.FLOOR) || draft.stage() == Stage.DRAINED;
        switch (about) {
            case "topic.floaters", "topic.corns", "topic.test", "topic.scale-end" -> {}
            case "topic.moisture" -> moisture(figure.value() / 100);
            case "topic.vents" -> vents(figure.value() / 100);
            case "topic.fan" -> fan(OptionalDouble.of(figure.value() / 100), clause);
            case "topic.colour" -> colour(figure.value(), colourUnit());
            case "topic.depth" -> depth(figure, draft.scene.metric() ? "cm" : "in", key, clause);
            case "chit" -> counts.bare(figure, clause);
            case "topic.acrospire" -> counts.acrospire(figure.value() / 100, clause);
            case "topic.weight", "topic.malt", "topic.rootlets" ->
                weights.bare(figure, key.or(() -> inherited), clause);
            case "topic.bed" -> {
                if (floored && figure.value() >= 1 && figure.value() <= 20) bed(figure, clause);
                else temperatures.bare(figure, Optional.of(Spot.GRAIN), clause);
            }
            case "topic.heap" -> heap(figure, clause);
            case "topic.kiln" -> temperatures.kiln(figure, clause);
            case "topic.temp", "" -> lone(figure, about, clause);
            default -> temperatures.bare(figure, TemperaturesTold.spot(about, draft.stage()), clause);
        }
    }

    private static boolean carries(String key) {
        return key.equals("topic.malt")
                || key.equals("topic.weight")
                || key.equals("topic.floaters")
                || key.equals("topic.colour");
    }

    private String colourUnit() {
        return switch (draft.scene.units().colour()) {
            case EBC -> "ebc";
            case SRM -> "srm";
            case LOVIBOND -> "lovibond";
        };
    }

    /** "bed 8": deep or warm. */
    private void bed(Figure figure, Clause clause) throws NotSoException {
        double cm = draft.scene.metric() ? figure.value() : figure.value() * 2.54;
        draft.doubt("ask.deep-or-warm", figure.digits());
        if (draft.oracle.pick(2) == 0) draft.remark(clause.words(), new Remark.BedDepth(cm));
        else
            draft.say(new TemperatureRead(
                    draft.scene.metric() ? figure.value() : UnitSizes.celsius(figure.value(), true), Spot.GRAIN));
    }

    /** "heap 18": how warm it is, or that it was heaped. */
    private void heap(Figure figure, Clause clause) throws NotSoException {
        boolean heaped = draft.standing.did(draft.at(), ActKind.HEAP) || draft.stage() == Stage.COUCH;
        if (!heaped) {
            draft.doubt("ask.of-what", figure.digits());
            if (Order.of(ActKind.HEAP, draft.at(), draft.standing) == Order.Fit.FINE && draft.oracle.pick(2) == 1) {
                draft.say(Report.Did.of(ActKind.HEAP));
                return;
            }
        }
        temperatures.bare(figure, Optional.of(Spot.CORE), clause);
    }

    /** A figure and nothing that says of what. */
    private void lone(Figure figure, String about, Clause clause) throws NotSoException {
        if (figure.spelled() && figure.whole()) return;
        if (clause.has("set")) {
            temperatures.heat(figure, clause);
            return;
        }
        if (clause.has("reads") && draft.stage() == Stage.KILN) {
            temperatures.bare(figure, Optional.of(Spot.AIR_ON), clause);
            return;
        }
        if (draft.act(ActKind.SPRINKLE) && !clause.has("topic.temp")) {
            water.bare(figure, ActKind.SPRINKLE);
            return;
        }
        List<Way> ways = new ArrayList<>();
        boolean kiln = draft.act(ActKind.LOAD) || draft.act(ActKind.CURE) || draft.act(ActKind.RAISE);
        boolean weight = about.isEmpty() && weights.likely(figure);
        boolean sure = weight && !draft.acts().isEmpty() && !kiln
                || weight && figure.digits().matches(".*[.,]\\d{2,}")
                || weight && !figure.whole() && !temperatures.likelyHere(figure);
        if (weight
                || about.isEmpty() && weights.likelyOther(figure)
                || about.isEmpty() && !temperatures.possibleHere(figure) && !kiln)
            ways.add(() -> weights.bare(figure, Optional.empty(), clause));
        if (kiln && !sure) {
            boolean named = clause.hasFamily("act.load")
                            && clause.text()
                                    .toLowerCase(java.util.Locale.ROOT)
                                    .matches(".*(kiln|dryer|dehydrator|oven).*")
                    || draft.act(ActKind.CURE)
                    || draft.act(ActKind.RAISE);
            ways.add(() -> temperatures.heat(figure, clause));
            if (!named) {
                ways.add(() -> temperatures.say(figure, Spot.AIR_ON));
                draft.doubt("ask.set-or-read");
            }
        } else if (!sure && temperatures.possibleHere(figure)) ways.add(() -> temperatures.lone(figure));
        if (draft.act(ActKind.SOAK) && figure.whole() && figure.value() >= 2)
            ways.add(() -> water.bare(figure, ActKind.SOAK));
        if (ways.isEmpty()) ways.add(() -> weights.bare(figure, Optional.empty(), clause));
        if (ways.size() > 1 && !(kiln && ways.size() == 2 && weight)) draft.doubt("ask.of-what", figure.digits());
        draft.oracle.pick(ways).run();
    }

    /** One way of taking a figure. */
    private interface Way {
        void run() throws NotSoException;
    }
}
