package piecewright.colour;

import java.util.Objects;
import piecewright.colour.Cure.Cured;
import piecewright.colour.RoastSolver.Roasted;

/** Whether a style reaches a colour, and how. */
public sealed interface ColourReach {
    /** By this cure. */
    record Reached(Cured cured, ColourBand band) implements ColourReach {
        public Reached {
            Objects.requireNonNull(cured);
            Objects.requireNonNull(band);
        }
    }

    /** Not within the style's cure; the nearest it comes, and what would have to change. */
    record OutOfReach(Cured nearest, Change change) implements ColourReach {
        public OutOfReach {
            Objects.requireNonNull(nearest);
            Objects.requireNonNull(change);
        }
    }

    /** By this roast. */
    record ReachedByRoast(Roasted roasted, ColourBand band) implements ColourReach {
        public ReachedByRoast {
            Objects.requireNonNull(roasted);
            Objects.requireNonNull(band);
        }
    }

    /** Not within the style's roast; the nearest it comes, and what would have to change. */
    record RoastOutOfReach(Roasted nearest, Change change) implements ColourReach {
        public RoastOutOfReach {
            Objects.requireNonNull(nearest);
            Objects.requireNonNull(change);
        }
    }

    /** No heater of the house cures or roasts this style at all: how hot it must be, and how hot the house gets. */
    record NoHeater(double neededC, double hottestC) implements ColourReach {}

    /** The style heats itself in an insulated box, and the house has none. */
    record NoBox() implements ColourReach {}

    /** Whether the style comes to the colour. */
    default boolean isReached() {
        return this instanceof Reached || this instanceof ReachedByRoast;
    }

    /** What would have to change. */
    enum Change {
        A_PALER_STYLE,
        A_DARKER_STYLE,
        A_HOTTER_HEATER
    }
}
