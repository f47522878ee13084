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
        Map<Figure, Double> figures = new EnumMap<>(Figure.class);
        new SteepFollower(script, piece).follow();
        new FloorFollower(script, piece).follow();
        if (script.has(ActKind.PACK)) new CouchFollower(script, piece).follow();
        if (script.has(ActKind.STEW)) {
            figures.put(Figure.STEW_MINUTES, (double) new StewFollower(script, piece).follow());
        }
        new KilnFollower(script, piece).follow();
        if (script.has(ActKind.ROAST)) {
            RoastFollower.Out out = new RoastFollower(script, piece).follow();
            figures.put(Figure.ROAST_MINUTES, out.inOven().toSeconds() / 60.0);
            figures.put(Figure.ROASTED_C, out.hot().grainC());
        }
        figures(piece, figures);
        return new Happening(piece.met(), piece.breaches(), milestones(piece), figures);
    }

    private Map<Milestone, Double> milestones(UnderWay piece) {
        Map<Milestone, Double> minutes = new EnumMap<>(Milestone.class);
        minutes.put(Milestone.CHIT, piece.chitted().atMinutes());
        minutes.put(Milestone.GROWN, grownMinutes(piece));
        minutes.put(Milestone.CAUGHT, piece.pile().caught().atMinutes());
        minutes.put(Milestone.PEAK, piece.pile().peakMinutes());
        minutes.put(Milestone.DROPPED, piece.pile().dropped().atMinutes());
        minutes.put(Milestone.BREAK, piece.broken().atMinutes());
        minutes.put(Milestone.OFF, (double) met(piece, ActKind.OFF).minute());
        minutes.values().removeIf(minute -> minute.isNaN());
        return minutes;
    }

    /** When the acrospire was there, or would have been had growth gone on at its pace. */
    private double grownMinutes(UnderWay piece) {
        if (piece.grown().happened()) return piece.grown().atMinutes();
        Met off = met(piece, script.offTheFloor().visit().kind());
        double from = piece.chitted().atMinutes();
        double grown = off.found().growth().growthRatio();
        return from + (off.minute() - from) * script.endOfGrowth().growthRatio() / grown;
    }

    private void figures(UnderWay piece, Map<Figure, Double> figures) {
        PieceState finished = piece.now();
        figures.put(
                Figure.STEEP_OUT_FRACTION,
                lastDrain(piece).found().mass().moisture().wetBasisFraction());
        Met end = met(piece, script.endOfGrowth().visit().kind());
        figures.put(Figure.ACROSPIRE_FRACTION, end.found().growth().growthRatio());
        PieceState dry =
                script.has(ActKind.ROAST) ? finished : met(piece, ActKind.OFF).found();
        figures.put(Figure.END_MOISTURE_FRACTION, dry.mass().moisture().wetBasisFraction());
        figures.put(Figure.COLOUR_EBC, finished.kiln().colourEbc());
        if (!script.has(ActKind.ROAST))
            figures.put(Figure.DIASTATIC_FRACTION, finished.kiln().diastaticFraction());
        if (script.has(ActKind.PACK)) {
            figures.put(Figure.COUCH_PEAK_C, piece.pile().peakC());
            figures.put(
                    Figure.COUCH_INDEX_HOURS,
                    met(piece, ActKind.BREAK).found().couch().indexHours());
        }
        double energy = script.blueprint().setup().lot().energyFraction();
        figures.put(Figure.MALT_KG, Yield.usefulMaltKg(finished, energy));
        figures.put(Figure.SCALE_MALT_KG, finished.mass().totalKg());
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
