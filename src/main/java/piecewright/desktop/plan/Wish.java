package piecewright.desktop.plan;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Objects;
import piecewright.app.PlanWish;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.style.MaltStyle;

/** What the sentence says now. */
public record Wish(MaltStyle style, double maltKg, LocalDate readyBy, Path lot, Path house) {
    public Wish {
        Objects.requireNonNull(style);
        Objects.requireNonNull(readyBy);
        Objects.requireNonNull(lot);
        Objects.requireNonNull(house);
    }

    public Wish withStyle(MaltStyle changed) {
        return new Wish(changed, maltKg, readyBy, lot, house);
    }

    public Wish withMaltKg(double changedKg) {
        return new Wish(style, changedKg, readyBy, lot, house);
    }

    public Wish withReadyBy(LocalDate changed) {
        return new Wish(style, maltKg, changed, lot, house);
    }

    public Wish withLot(Path changed) {
        return new Wish(style, maltKg, readyBy, changed, house);
    }

    public Wish withHouse(Path changed) {
        return new Wish(style, maltKg, readyBy, lot, changed);
    }

    /** The same for the planner, nothing to be done before today. */
    PlanWish planWish(LocalDate today) {
        return new PlanWish(style, lot, house, new Amount.FinishedMalt(maltKg), new When.ReadyBy(readyBy, today));
    }
}
