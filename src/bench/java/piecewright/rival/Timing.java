package piecewright.rival;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.solution.ProblemFactProperty;
import ai.timefold.solver.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import java.util.List;
import piecewright.plan.search.Problem;

/** All acts of one plan as Timefold solves for them. */
@PlanningSolution
public class Timing {
    @ProblemFactProperty
    private Problem problem;

    @PlanningEntityCollectionProperty
    private List<ActTime> acts;

    @PlanningScore
    private HardSoftLongScore score;

    /** For Timefold. */
    public Timing() {}

    Timing(Problem problem, List<ActTime> acts) {
        this.problem = problem;
        this.acts = acts;
    }

    public Problem getProblem() {
        return problem;
    }

    public List<ActTime> getActs() {
        return acts;
    }

    public HardSoftLongScore getScore() {
        return score;
    }

    /** For Timefold. */
    public void setScore(HardSoftLongScore score) {
        this.score = score;
    }
}
