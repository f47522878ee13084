package piecewright.ensemble;

import java.time.Instant;
import piecewright.plan.Simulation.Passing;
import piecewright.plan.Timetable.Visit;
import piecewright.process.PieceState;
import piecewright.process.kiln.CoveredStew;
import piecewright.process.kiln.RoastCourse;

/** What the grain does, whoever follows the plan: our own model with other parameters, or other equations. */
public interface Reality {
    /** The grain before the first soak. */
    PieceState raw();

    /** What goes on after an act, given what went on before it. */
    Passing after(Visit visit, Passing before);

    /**
     * What somebody who reads scale and thermometer would foresee of that: by our equations, whatever goes on really.
     *
     * @param before what was foreseen before the act
     * @param after what goes on after it; returned itself where just that is foreseen
     */
    Passing foreseen(Visit visit, Passing before, Passing after);

    /** What an act changes at once, waterKg of it sprinkled. */
    PieceState acted(Visit visit, PieceState before, double waterKg);

    /** The covered stew once green malt goes in. */
    CoveredStew stew();

    /** A load of the roast. */
    RoastCourse roast();

    /** Water the person sprinkles at a turning, kg, if growth is to end then. */
    double sprinklingKg(Visit visit, PieceState before, Passing passing, Instant growthEnds);
}
