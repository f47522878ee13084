package piecewright.remedy;

import java.time.LocalDate;
import java.util.Objects;

/** One change of a wish or of a house. */
public sealed interface Change {
    /** Steep water cooled to so many °C before it is poured. */
    record ChilledWater(double fillC) implements Change {}

    /** The growing trays stand in another place of the house. */
    record ColderPlace(String place) implements Change {
        public ColderPlace {
            Objects.requireNonNull(place);
        }
    }

    /** Vessels and growing trays stand in another place of the house. */
    record OtherPlace(String place) implements Change {
        public OtherPlace {
            Objects.requireNonNull(place);
        }
    }

    /** The bed is spread so deep, cm. */
    record ShallowerBed(double bedCm) implements Change {}

    /** Somebody gets up so many times in all. */
    record NightActs(int most) implements Change {}

    /** Everybody's evening hours begin sooner by so many minutes and their mornings end later. */
    record LongerHours(int minutes) implements Change {}

    /** The malt is wanted on a later day. */
    record LaterDay(LocalDate readyBy) implements Change {
        public LaterDay {
            Objects.requireNonNull(readyBy);
        }
    }

    /** The first steep is on another day. */
    record OtherStart(LocalDate day) implements Change {
        public OtherStart {
            Objects.requireNonNull(day);
        }
    }

    /** The malt rests only so many days before it is milled. */
    record ShorterRest(double restDays) implements Change {}

    /** A smaller piece, kg of what was wished for. */
    record SmallerPiece(double massKg) implements Change {}

    /** More of the growing trays, so many in all. */
    record MoreTrays(String trays, int count) implements Change {
        public MoreTrays {
            Objects.requireNonNull(trays);
        }
    }
}
