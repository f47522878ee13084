package piecewright.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import piecewright.plan.ActKind;
import piecewright.plan.Households;
import piecewright.plan.Timetable.Visit;
import piecewright.style.MaltStyle;

/** Plans by hand, without a search. */
final class Plans {
    static final Instant START = Instant.parse("2031-02-01T18:00:00Z");
    /** Of five kilograms of barley. */
    static final double DRY_KG = 4.329;

    private final List<Visit> visits = new ArrayList<>();

    static Instant at(double hours) {
        return START.plusSeconds(Math.round(3600 * hours));
    }

    /** Three soaks, five days on the floor, a day in the kiln. */
    static Followed pale() {
        return upToTheCure(new Plans())
                .act(202, "kiln.off", ActKind.OFF, 0)
                .act(203, "finish.deroot", ActKind.DEROOT, 0)
                .of(Households.pale());
    }

    static Plans upToTheCure(Plans plans) {
        plans.act(0, "steep-1.soak", ActKind.SOAK, 1)
                .act(8, "steep-1.drain", ActKind.DRAIN, 1)
                .act(20, "steep-2.soak", ActKind.SOAK, 2)
                .act(28, "steep-2.drain", ActKind.DRAIN, 2)
                .act(40, "steep-3.soak", ActKind.SOAK, 3)
                .act(44, "steep-3.drain", ActKind.DRAIN, 3)
                .act(52, "floor.spread", ActKind.FLOOR, 0);
        for (int turn = 1; turn <= 9; turn++) plans.act(52 + 12 * turn, "floor.turn-" + turn, ActKind.TURN, turn);
        return plans.act(172, "kiln.load", ActKind.LOAD, 0)
                .act(176, "kiln.stir-1", ActKind.STIR, 1)
                .act(186, "kiln.raise-1", ActKind.RAISE, 1)
                .act(190, "kiln.raise-2", ActKind.RAISE, 2)
                .act(198, "kiln.cure", ActKind.CURE, 0);
    }

    Plans act(double hours, String id, ActKind kind, int number) {
        visits.add(new Visit(id, kind, number, at(hours)));
        return this;
    }

    Plans inTimeOrder() {
        visits.sort(java.util.Comparator.comparing(Visit::at));
        return this;
    }

    Followed of(MaltStyle style) {
        return new Followed(style, DRY_KG, visits);
    }
}
