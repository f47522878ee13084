package piecewright.desktop.plan;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Objects;
import java.util.OptionalDouble;
import piecewright.app.PlanWish;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.style.MaltStyle;

/**
 * What the sentence says now.
 *
 * @param malt what is to become
 */
public record Wish(Malt malt, LocalDate readyBy, Path lot, Path house, Company company) {
    public Wish {
        Objects.requireNonNull(malt);
        Objects.requireNonNull(readyBy);
        Objects.requireNonNull(lot);
        Objects.requireNonNull(house);
        Objects.requireNonNull(company);
    }

    /** How much of which style in which colour, EBC; empty for the middle of what is usual for the style. */
    public record Malt(MaltStyle style, double maltKg, OptionalDouble colourEbc) {
        public Malt {
            Objects.requireNonNull(style);
            Objects.requireNonNull(colourEbc);
        }

        /** In the usual colour. */
        public static Malt of(MaltStyle style, double maltKg) {
            return new Malt(style, maltKg, OptionalDouble.empty());
        }
    }

    /** Whether what is under way in the same house keeps its hands and kit. */
    public enum Company {
        BESIDE_OTHERS,
        ALONE
    }

    public MaltStyle style() {
        return malt.style();
    }

    public double maltKg() {
        return malt.maltKg();
    }

    /** Another style in the colour that is usual for it. */
    public Wish withStyle(MaltStyle changed) {
        return withMalt(Malt.of(changed, maltKg()));
    }

    public Wish withMaltKg(double changedKg) {
        return withMalt(new Malt(style(), changedKg, malt.colourEbc()));
    }

    public Wish withColourEbc(OptionalDouble changedEbc) {
        return withMalt(new Malt(style(), maltKg(), changedEbc));
    }

    private Wish withMalt(Malt changed) {
        return new Wish(changed, readyBy, lot, house, company);
    }

    public Wish withReadyBy(LocalDate changed) {
        return new Wish(malt, changed, lot, house, company);
    }

    public Wish withLot(Path changed) {
        return new Wish(malt, readyBy, changed, house, company);
    }

    public Wish withHouse(Path changed) {
        return new Wish(malt, readyBy, lot, changed, company);
    }

    public Wish with(Company changed) {
        return new Wish(malt, readyBy, lot, house, changed);
    }

    /** The same for the planner, nothing to be done before today. */
    public PlanWish planWish(LocalDate today) {
        return new PlanWish(style(), lot, house, new Amount.FinishedMalt(maltKg()), new When.ReadyBy(readyBy, today));
    }
}
