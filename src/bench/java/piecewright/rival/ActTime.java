package piecewright.rival;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.lookup.PlanningId;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import java.util.List;

/** One act as Timefold moves it: how long after the act before it, or that it is passed over. Timefold needs it mutable. */
@PlanningEntity
public class ActTime {
    @PlanningId
    private int stop;

    @ValueRangeProvider
    private List<Integer> choices;

    @PlanningVariable(allowsUnassigned = true)
    private Integer waitMinutes;

    /** For Timefold. */
    public ActTime() {}

    ActTime(int stop, List<Integer> choices, Integer waitMinutes) {
        this.stop = stop;
        this.choices = choices;
        this.waitMinutes = waitMinutes;
    }

    /** The stop of the search's numbering. */
    public int getStop() {
        return stop;
    }

    /** All waits there are to choose from. */
    public List<Integer> getChoices() {
        return choices;
    }

    /** Minutes since the act before began, or of the first act since the problem's origin; null when passed over. */
    public Integer getWaitMinutes() {
        return waitMinutes;
    }

    /** For Timefold. */
    public void setWaitMinutes(Integer minutes) {
        this.waitMinutes = minutes;
    }
}
