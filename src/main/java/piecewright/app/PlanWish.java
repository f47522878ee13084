package piecewright.app;

import java.nio.file.Path;
import java.util.Objects;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.style.MaltStyle;

/** What somebody wishes, its lot and house still lying in files. */
public record PlanWish(MaltStyle style, Path lotFile, Path houseFile, Amount amount, When when) {
    public PlanWish {
        Objects.requireNonNull(style);
        Objects.requireNonNull(lotFile);
        Objects.requireNonNull(houseFile);
        Objects.requireNonNull(amount);
        Objects.requireNonNull(when);
    }

    /** The same wish with lot and house in these files. */
    public PlanWish withFiles(Path lot, Path house) {
        return new PlanWish(style, lot, house, amount, when);
    }
}
