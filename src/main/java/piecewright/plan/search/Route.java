package piecewright.plan.search;

import java.util.List;
import java.util.function.Consumer;

/** A problem as the search sees it: where it starts, what can follow, what the rest costs at least. */
interface Route {
    /** The labels to start from. */
    List<Label> starts();

    /** Hands every label that can follow to the sink. */
    void expand(Label label, Consumer<Label> sink);

    /** Whether the label ends a plan. */
    boolean isGoal(Label label);

    /** Cost-minutes from here to any goal at least; infinite when none can be reached; never more than the truth. */
    double boundMinutes(Label label);

    /** Labels of equal bucket are taken for equal: the cheaper is kept. */
    long bucket(Label label);

    /** Labels of one cell are rivals: only the most promising few of each cell are followed. */
    long cell(Label label);

    /** How hard to look. */
    Effort effort();
}
