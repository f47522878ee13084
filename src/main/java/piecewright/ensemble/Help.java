package piecewright.ensemble;

import java.util.Objects;
import piecewright.remedy.Change;

/** Something that was tried to make a plan surer. */
public sealed interface Help {
    /** Chance that every act stays within its soft window then. */
    double softFraction();

    /** A doubt was lessened by measuring; the plan stayed as it was. */
    record Measured(Doubt doubt, double softFraction) implements Help {
        public Measured {
            Objects.requireNonNull(doubt);
        }
    }

    /** The wish or the house was changed and planned again. */
    record Arranged(Change change, double softFraction) implements Help {
        public Arranged {
            Objects.requireNonNull(change);
        }
    }
}
