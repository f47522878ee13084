package piecewright.ensemble;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import piecewright.plan.ActKind;
import piecewright.plan.Yield;
import piecewright.process.PieceState;

/** Follows a plan through one reality as a person would: by its rules, in somebody's hours, with scale and eyes that err. */
final class Rehearsal {
    private final Script script;

    Rehearsal(Script script) {
        this.script = script;
    }

    Happening in(Reality reality, RandomGenerator luck) {
        UnderWay piece = new UnderWay(script, reality, luck);
        new SteepFollower(script, piece).follow();
        new FloorFollower(script, piece).follow();
        new KilnFollower(script, piece).follow();
        return new Happening(piece.met(), piece.breaches(), milestones(piece), figures(piece));
    }

    /** What is met as far as rules are known: to couch or stew, or off the kiln and before a roast. */
    Map<String, Met> beginning(Reality reality, RandomGenerator luck) {
        UnderWay piece = new UnderWay(script, reality, luck);
        new SteepFollower(script, piece).follow();
        new FloorFollower(script, piece).follow();
        if (script.isKilned()) new KilnFollower(script, piece).follow();
        return piece.met();
    }

    private Map<Milestone, Double> milestones(UnderWay piece) {
        Map<Milestone, Double> minutes = new EnumMap<>(Milestone.class);
        minutes.put(Milestone.CHIT, piece.chitted().atMinutes());
        minutes.put(Milestone.GROWN, grownMinutes(piece));
        minutes.put(Milestone.BREAK, piece.broken().atMinutes());
        minutes.put(Milestone.OFF, (double) met(piece, ActKind.OFF).minute());
        minutes.values().removeIf(minute -> minute.isNaN());
        return minutes;
    }

    /** When the acrospire was there, or would have been had growth gone on at its pace. */
    private double grownMinutes(UnderWay piece) {
        if (piece.grown().happened()) return piece.grown().atMinutes();
        Met load = met(piece, ActKind.LOAD);
        double from = piece.chitted().atMinutes();
        double grown = load.found().growth().growthRatio();
        return from + (load.minute() - from) * script.endOfGrowth().growthRatio() / grown;
    }

    private Map<Figure, Double> figures(UnderWay piece) {
        PieceState finished = piece.now();
        Map<Figure, Double> figures = new EnumMap<>(Figure.class);
        figures.put(
                Figure.STEEP_OUT_FRACTION,
                lastDrain(piece).found().mass().moisture().wetBasisFraction());
        Met end = met(piece, script.endOfGrowth().visit().kind());
        figures.put(Figure.ACROSPIRE_FRACTION, end.found().growth().growthRatio());
        figures.put(
                Figure.END_MOISTURE_FRACTION,
                met(piece, ActKind.OFF).found().mass().moisture().wetBasisFraction());
        figures.put(Figure.COLOUR_EBC, finished.kiln().colourEbc());
        double energy = script.blueprint().setup().lot().energyFraction();
        figures.put(Figure.MALT_KG, Yield.usefulMaltKg(finished, energy));
        figures.put(Figure.SCALE_MALT_KG, finished.mass().totalKg());
        return figures;
    }

    private Met met(UnderWay piece, ActKind kind) {
        return Optional.ofNullable(piece.met().get(script.first(kind).id())).orElseThrow();
    }

    private static Met lastDrain(UnderWay piece) {
        return piece.met().values().stream()
                .filter(met -> met.visit().kind() == ActKind.DRAIN)
                .reduce((first, second) -> second)
                .orElseThrow();
    }
}
