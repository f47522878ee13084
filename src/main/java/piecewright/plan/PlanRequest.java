package piecewright.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import piecewright.belief.Belief;
import piecewright.belief.Priors;
import piecewright.grain.GrainLot;
import piecewright.house.House;
import piecewright.style.MaltStyle;

/**
 * A wish: this style from this lot in this house, so much, by or from a day.
 *
 * @param besides what other batches have taken of hands and kit
 * @param arrangement how it is set up where the house leaves a choice
 * @param learned what batches taught of lot and kit; of anything else it says nothing
 */
public record PlanRequest(
        MaltStyle style,
        GrainLot lot,
        House house,
        Amount amount,
        When when,
        List<Booking> besides,
        Arrangement arrangement,
        Belief learned) {
    public PlanRequest {
        Objects.requireNonNull(style);
        Objects.requireNonNull(lot);
        Objects.requireNonNull(house);
        Objects.requireNonNull(amount);
        Objects.requireNonNull(when);
        Objects.requireNonNull(arrangement);
        Objects.requireNonNull(learned);
        besides = List.copyOf(besides);
    }

    /** A wish of a house in which nothing else is going on, arranged as usual. */
    public PlanRequest(MaltStyle style, GrainLot lot, House house, Amount amount, When when) {
        this(style, lot, house, amount, when, List.of(), Arrangement.usual(), Belief.nothing());
    }

    /** The same wish beside these batches. */
    public PlanRequest beside(List<Booking> changed) {
        return new PlanRequest(style, lot, house, amount, when, changed, arrangement, learned);
    }

    /** The same wish set up in another way. */
    public PlanRequest arranged(Arrangement changed) {
        return new PlanRequest(style, lot, house, amount, when, besides, changed, learned);
    }

    /** The same wish of another style. */
    public PlanRequest withStyle(MaltStyle changed) {
        return new PlanRequest(changed, lot, house, amount, when, besides, arrangement, learned);
    }

    /** The same wish by or from another day. */
    public PlanRequest withWhen(When changed) {
        return new PlanRequest(style, lot, house, amount, changed, besides, arrangement, learned);
    }

    /** The same wish in another house. */
    public PlanRequest withHouse(House changed) {
        return new PlanRequest(style, lot, changed, amount, when, besides, arrangement, learned);
    }

    /** The same wish from another lot. */
    public PlanRequest withLot(GrainLot changed) {
        return new PlanRequest(style, changed, house, amount, when, besides, arrangement, learned);
    }

    /** The same wish for another amount. */
    public PlanRequest withAmount(Amount changed) {
        return new PlanRequest(style, lot, house, changed, when, besides, arrangement, learned);
    }

    /** The same wish with what batches taught of its lot and kit. */
    public PlanRequest withLearned(Belief changed) {
        return new PlanRequest(style, lot, house, amount, when, besides, arrangement, changed);
    }

    /** All that is believed of the lot and the kit: what batches taught, and the usual spread of what none did. */
    public Belief belief() {
        return Priors.of(lot, house).knowing(learned);
    }

    /** How much. */
    public sealed interface Amount {
        /** Malt from germinated corns wanted at the end, kg, (0, 1000]. */
        record FinishedMalt(double maltKg) implements Amount {
            public FinishedMalt {
                check("maltKg", maltKg);
            }
        }

        /** Grain to put to steep, kg, (0, 1000]. */
        record RawGrain(double grainKg) implements Amount {
            public RawGrain {
                check("grainKg", grainKg);
            }
        }

        private static void check(String name, double kg) {
            if (!(kg > 0 && kg <= 1000)) throw new IllegalArgumentException(name + " must be in (0, 1000]: " + kg);
        }
    }

    /** By or from when. */
    public sealed interface When {
        /** Rested and ready when this day begins; no act before earliestStart. */
        record ReadyBy(LocalDate day, LocalDate earliestStart) implements When {}

        /** First steep on this day. */
        record StartOn(LocalDate day) implements When {}
    }
}
