package piecewright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.journal.Report.HeatSet;
import piecewright.journal.Report.TemperatureRead;
import piecewright.journal.Spot;
import piecewright.plan.ActKind;
import piecewright.reading.Piece.Figure;
import piecewright.reading.Piece.Term;
import piecewright.reading.Standing.Stage;

/** Temperatures read and set. */
final class TemperaturesTold {
    /** Common oven scale, gas mark 1 to 9, °C. Common practice, no source. */
    private static final List<Integer> GAS_MARKS_C = List.of(140, 150, 170, 180, 190, 200, 220, 230, 240);

    private final Draft draft;

    TemperaturesTold(Draft draft) {
        this.draft = draft;
    }

    /** The place a word names. */
    static Optional<Spot> spot(String key, Stage stage) {
        return switch (key) {
            case "spot.core", "topic.heap" -> Optional.of(Spot.CORE);
            case "topic.couch" -> Optional.of(stage == Stage.FLOOR ? Spot.GRAIN : Spot.CORE);
            case "spot.edge" -> Optional.of(Spot.EDGE);
            case "spot.top" -> Optional.of(Spot.TOP);
            case "spot.bottom" -> Optional.of(Spot.BOTTOM);
            case "spot.water", "topic.water" -> Optional.of(Spot.WATER);
            case "spot.air" -> Optional.of(Spot.AIR);
            case "spot.air-on" -> Optional.of(Spot.AIR_ON);
            case "spot.air-off" -> Optional.of(Spot.AIR_OFF);
            case "topic.bed" -> Optional.of(Spot.GRAIN);
            default -> Optional.empty();
        };
    }

    /** A figure with degrees. */
    void united(Figure figure, Optional<String> key, Clause clause) throws NotSoException {
        if (figure.unit("deg")) {
            Figure bare = new Figure(
                    figure.values(),
                    figure.digits(),
                    Optional.empty(),
                    figure.high(),
                    1,
                    false,
                    figure.from(),
                    figure.until());
            Optional<Spot> spot = key.flatMap(about -> spot(about, draft.stage()));
            if (spot.isPresent()) bare(bare, Optional.of(soaked(spot.get(), clause)), clause);
            else if (key.filter("topic.kiln"::equals).isPresent()) kiln(bare, clause);
            else if (!byAct(celsius(bare), clause)) lone(bare);
            return;
        }
        double readC = UnitSizes.celsius(figure.value(), figure.unit("f"));
        Optional<Spot> spot = key.flatMap(about -> spot(about, draft.stage()));
        if (clause.has("reads") && key.filter("topic.kiln"::equals).isPresent()) spot = Optional.of(Spot.AIR_ON);
        if (clause.has("set") && spot.filter(Spot::inGrain).isEmpty()
                || key.filter("topic.kiln"::equals).isPresent() && spot.isEmpty()) set(readC);
        else if (spot.isPresent()) draft.say(read(readC, soaked(spot.get(), clause)));
        else if (!byAct(readC, clause)) places(readC, figure.digits());
    }

    /** "grain's in the water, 11 C": grain named beside another thing, that lies under water. */
    private Spot soaked(Spot spot, Clause clause) {
        boolean water =
                spot == Spot.GRAIN && !clause.has("topic.bed") && draft.acts().contains(ActKind.SOAK);
        return water ? Spot.WATER : spot;
    }

    private static TemperatureRead read(double readC, Spot spot) throws NotSoException {
        if (!(readC >= -40 && readC <= 300))
            throw new NotSoException("line.no-heat-at-all", String.valueOf(Math.round(readC)) + " °C");
        return new TemperatureRead(readC, spot);
    }

    private void set(double airOnC) throws NotSoException {
        if (!(airOnC >= 0 && airOnC <= 300))
            throw new NotSoException("line.no-heat-at-all", String.valueOf(Math.round(airOnC)) + " °C");
        draft.say(new HeatSet(airOnC));
    }

    /** Where the thermometer was by what was done. */
    private boolean byAct(double readC, Clause clause) throws NotSoException {
        List<ActKind> acts = draft.acts();
        Optional<Spot> spot = Optional.empty();
        if (acts.contains(ActKind.SOAK)) spot = Optional.of(Spot.WATER);
        else if (acts.contains(ActKind.LOAD)
                || acts.contains(ActKind.CURE)
                || acts.contains(ActKind.RAISE)
                || acts.contains(ActKind.ROAST)) {
            set(readC);
            return true;
        } else if (acts.contains(ActKind.BREAK)
                || acts.contains(ActKind.CHECK)
                || acts.contains(ActKind.LOOK)
                || acts.contains(ActKind.HEAP)) spot = Optional.of(Spot.CORE);
        else if (acts.contains(ActKind.TURN)
                || acts.contains(ActKind.FLOOR)
                || acts.contains(ActKind.PACK)
                || acts.contains(ActKind.WITHER)
                || acts.contains(ActKind.SPRINKLE)
                || acts.contains(ActKind.STIR)
                || acts.contains(ActKind.OFF)) {
            spot = Optional.of(Spot.GRAIN);
        }
        if (spot.isEmpty() && clause.has("sign.not-heating")) spot = Optional.of(Spot.CORE);
        if (spot.isEmpty()) return false;
        draft.say(read(readC, spot.get()));
        return true;
    }

    /** The person's own unit. */
    private double celsius(Figure figure) {
        return UnitSizes.celsius(figure.value(), !draft.scene.metric());
    }

    boolean possibleHere(Figure figure) {
        if (figure.digits().matches(".*[.,]\\d{2,}")) return false;
        return draft.temperatures.possible(celsius(figure), Optional.of(Spot.GRAIN), draft.stage())
                || draft.stage() == Stage.KILN
                        && draft.temperatures.possible(celsius(figure), Optional.of(Spot.AIR_ON), Stage.KILN);
    }

    boolean likelyHere(Figure figure) {
        return draft.temperatures.likely(celsius(figure), Optional.of(Spot.GRAIN), draft.stage());
    }

    /** A temperature without a place. */
    void lone(Figure figure) throws NotSoException {
        double readC = celsius(figure);
        if (draft.stage() != Stage.KILN
                && !draft.acts().isEmpty()
                && byActSpot().isPresent()) {
            draft.say(read(readC, byActSpot().get()));
            return;
        }
        places(readC, figure.digits());
    }

    private Optional<Spot> byActSpot() {
        List<ActKind> acts = draft.acts();
        if (acts.contains(ActKind.SOAK)) return Optional.of(Spot.WATER);
        return acts.contains(ActKind.TURN) || acts.contains(ActKind.STIR) ? Optional.of(Spot.GRAIN) : Optional.empty();
    }

    private void places(double readC, String digits) throws NotSoException {
        draft.doubt("ask.of-what", digits);
        Stage stage = draft.stage();
        if (stage == Stage.KILN || stage == Stage.OVEN) {
            if (draft.oracle.pick(2) == 0) set(readC);
            else draft.say(read(readC, Spot.GRAIN));
            return;
        }
        Spot first = switch (stage) {
            case DRY, STEEPING -> Spot.WATER;
            case COUCH -> Spot.CORE;
            default -> Spot.GRAIN;
        };
        draft.say(read(readC, draft.oracle.pick(List.of(first, Spot.AIR))));
    }

    void say(Figure figure, Spot spot) throws NotSoException {
        draft.say(read(celsius(figure), spot));
    }

    /** A bare figure at a place: the person's unit if that can be, else it is asked which. */
    void bare(Figure figure, Optional<Spot> spot, Clause clause) throws NotSoException {
        if (spot.isEmpty()) places(celsius(figure), figure.digits());
        else draft.say(read(alternative(figure, spot), spot.get()));
    }

    /** A bare figure after the kiln's name: what it is set to, or what it reads. */
    void kiln(Figure figure, Clause clause) throws NotSoException {
        if (clause.has("reads")) bare(figure, Optional.of(Spot.AIR_ON), clause);
        else heat(figure, clause);
    }

    void heat(Figure figure, Clause clause) throws NotSoException {
        set(alternative(figure, Optional.empty()));
    }

    private double alternative(Figure figure, Optional<Spot> spot) throws NotSoException {
        double ownC = celsius(figure);
        Stage stage = draft.act(ActKind.ROAST)
                        || draft.scene
                                        .next()
                                        .filter(next -> next == ActKind.ROAST)
                                        .isPresent()
                                && spot.isEmpty()
                ? Stage.OVEN
                : draft.stage();
        if (draft.temperatures.likely(ownC, spot, stage)) return ownC;
        List<Double> ways = new ArrayList<>();
        double otherC = UnitSizes.celsius(figure.value(), draft.scene.metric());
        boolean fahrenheit = !draft.scene.metric();
        double tenthC = UnitSizes.celsius(figure.value() / 10, fahrenheit);
        double tenfoldC = UnitSizes.celsius(figure.value() * 10, fahrenheit);
        if (draft.temperatures.likely(otherC, spot, stage)) ways.add(otherC);
        if (figure.whole()
                && figure.value() >= 10
                && draft.temperatures.possible(tenthC, spot, stage)
                && spot.isPresent()) ways.add(tenthC);
        if (spot.isEmpty() && draft.temperatures.likely(tenfoldC, spot, stage)) ways.add(tenfoldC);
        if (ways.size() < 3 && draft.temperatures.possible(ownC, spot, stage)) ways.add(ownC);
        if (ways.isEmpty()) return ownC;
        draft.doubt("ask.which-degrees", figure.digits());
        return draft.oracle.pick(ways);
    }

    /** Gas marks, "kiln off". */
    void settings(Clause clause) throws NotSoException {
        List<Piece> pieces = clause.pieces();
        for (int at = 0; at + 1 < pieces.size(); at++) {
            boolean mark =
                    pieces.get(at) instanceof Term term && term.is("gasmark") && pieces.get(at + 1) instanceof Figure;
            if (!mark) continue;
            int number = (int) Math.round(((Figure) pieces.get(at + 1)).value());
            if (number < 1 || number > GAS_MARKS_C.size())
                throw new NotSoException("line.no-gas-mark", String.valueOf(number));
            draft.say(new HeatSet(GAS_MARKS_C.get(number - 1)));
        }
        boolean off = clause.has("topic.kiln")
                && clause.terms().anyMatch(term -> term.is("off"))
                && clause.figures().findAny().isEmpty();
        if (off && !clause.has("heat.off")) off(clause);
    }

    /** Heater off, or the malt taken off. */
    private void off(Clause clause) {
        boolean powered = draft.says(piecewright.journal.Report.Observed.class);
        if (powered) {
            draft.note(clause.text());
            return;
        }
        draft.doubt("ask.heater-or-malt");
        if (draft.oracle.pick(2) == 0) draft.remark(clause.words(), new piecewright.journal.Remark.HeaterOff());
        else draft.say(piecewright.journal.Report.Did.of(ActKind.OFF));
    }
}
