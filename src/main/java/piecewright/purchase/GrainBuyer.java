package piecewright.purchase;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.grain.GrainKind;
import piecewright.grain.GrainLot;
import piecewright.grain.LotMoisture;
import piecewright.grain.LotTraits;
import piecewright.grain.Treatment;
import piecewright.plan.ModelParameters;
import piecewright.plan.Yield;
import piecewright.quantity.Moisture;
import piecewright.style.MaltStyle;

/** Works out the grain for malt and the malt from grain where there is no house to plan in. Pure. */
public final class GrainBuyer {
    /** Judgement: raw grain in trade, wet basis. */
    private static final double USUAL_MOISTURE_FRACTION = 0.12;
    /** Judgement: guessed to a point. */
    private static final double GUESSED_SD_FRACTION = 0.01;
    /** Judgement: kg of grain per kg of malt to begin with. */
    private static final double FIRST_GUESS_RATIO = 1.24;
    /** Judgement: the amount is right when the malt is within this share of the wish; as the planner. */
    private static final double TOLERANCE_FRACTION = 1e-4;

    private final ModelParameters parameters;

    public GrainBuyer(ModelParameters parameters) {
        this.parameters = parameters;
    }

    /** The grain for so much malt from germinated corns, kg, more than 0. */
    public GrainNeed forMalt(MaltStyle style, GrainLot lot, double maltKg) {
        ReferenceCourse course = new ReferenceCourse(style, lot, parameters);
        double grainKg = FIRST_GUESS_RATIO * maltKg;
        for (int round = 0; round < 6; round++) {
            double usefulKg = Yield.usefulMaltKg(course.finished(grainKg), GrainNeed.growing(lot));
            if (Math.abs(usefulKg / maltKg - 1) < TOLERANCE_FRACTION) break;
            grainKg *= maltKg / usefulKg;
        }
        return fromGrain(style, lot, grainKg);
    }

    /** What so much grain, kg, more than 0, gives. */
    public GrainNeed fromGrain(MaltStyle style, GrainLot lot, double grainKg) {
        ReferenceCourse course = new ReferenceCourse(style, lot, parameters);
        return GrainNeed.of(style.title(), lot, grainKg, course.finished(grainKg), GrainNeed.Basis.REFERENCE_COURSE);
    }

    /** A lot of that grain that nobody bought yet: usual moisture, untested. */
    public static GrainLot usual(GrainKind kind) {
        Optional<LocalDate> unknown = Optional.empty();
        return new GrainLot(
                "usual " + kind.key(),
                kind,
                new LotMoisture(new Moisture(USUAL_MOISTURE_FRACTION), GUESSED_SD_FRACTION, false),
                List.of(),
                new GrainLot.LotSize(OptionalDouble.empty(), OptionalDouble.empty(), unknown),
                Treatment.UNKNOWN,
                LotTraits.unknown());
    }
}
