package piecewright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.journal.Report.Did;
import piecewright.plan.ActKind;
import piecewright.reading.Piece.Figure;

/** Water filled in or sprinkled. */
final class WaterTold {
    private final Draft draft;

    WaterTold(Draft draft) {
        this.draft = draft;
    }

    /** A figure with a unit of volume. */
    void volume(Figure figure, Clause clause) throws NotSoException {
        if (!(figure.value() > 0)) throw new NotSoException("line.no-water");
        String unit = figure.unit().orElseThrow();
        Optional<Boolean> imperial = UnitSizes.imperial(draft.scene.units().locale());
        double litres = figure.value() * UnitSizes.litres(unit, imperial.orElse(false));
        double other = figure.value() * UnitSizes.litres(unit, true);
        if (imperial.isEmpty() && Math.abs(other / litres - 1) > 0.1) {
            draft.doubt("ask.which-gallon");
            litres = draft.oracle.pick(List.of(litres, other));
        }
        to(litres);
    }

    private void to(double litres) {
        if (draft.water(ActKind.SPRINKLE, litres) || draft.water(ActKind.SOAK, litres)) return;
        if (!draft.acts().isEmpty()) return;
        if (draft.stage() == Standing.Stage.DRY) {
            draft.say(new Did(ActKind.SOAK, OptionalDouble.of(litres)));
            return;
        }
        draft.doubt("ask.water-where");
        draft.say(new Did(draft.oracle.pick(List.of(ActKind.SPRINKLE, ActKind.SOAK)), OptionalDouble.of(litres)));
    }

    /** A bare figure: litres or millilitres, gallons or fluid ounces; what cannot be is dropped later. */
    void bare(Figure figure, ActKind kind) throws NotSoException {
        if (!(figure.value() > 0)) throw new NotSoException("line.no-water");
        List<Double> ways = new ArrayList<>();
        boolean metric = draft.scene.metric();
        ways.add(figure.value() * UnitSizes.litres(metric ? "l" : "gal", false));
        if (kind == ActKind.SPRINKLE) ways.add(figure.value() * UnitSizes.litres(metric ? "ml" : "floz", false));
        if (kind == ActKind.SPRINKLE && !metric) ways.add(figure.value() * UnitSizes.litres("cup", false));
        draft.water(kind, draft.oracle.pick(ways));
    }
}
