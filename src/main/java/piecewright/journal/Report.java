package piecewright.journal;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.plan.ActKind;
import piecewright.quantity.Moisture;

/** What an {@link Entry} says. */
public sealed interface Report {
    /** An act began. */
    record Started(ActKind act) implements Report {
        public Started {
            Objects.requireNonNull(act);
        }
    }

    /** An act was done; waterL sprinkled or filled in, litres, where it was said. */
    record Did(ActKind act, OptionalDouble waterL) implements Report {
        public Did {
            Objects.requireNonNull(act);
            if (waterL.isPresent()) mustBeAbove0("waterL", waterL.getAsDouble());
        }

        public static Did of(ActKind act) {
            return new Did(act, OptionalDouble.empty());
        }
    }

    /** A figure was found. */
    sealed interface Measured extends Report {}

    /**
     * The whole piece on the scale.
     *
     * @param grossKg what the scale showed, kg
     * @param tare the vessel it stood in, when it was weighed with one and the scale was not set to zero
     */
    record Weighed(double grossKg, Optional<Tare> tare) implements Measured {
        /** Judgement: practice, a jump of more than this share in a direction physics forbids is an error of weighing. */
        public static final double FORBIDDEN_JUMP_FRACTION = 0.04;

        public Weighed {
            Objects.requireNonNull(tare);
            mustBeAbove0("grossKg", grossKg);
            if (tare.isPresent() && !(tare.get().tareKg() < grossKg)) {
                throw new IllegalArgumentException("grossKg must be above the tare: " + grossKg);
            }
        }

        public static Weighed net(double netKg) {
            return new Weighed(netKg, Optional.empty());
        }

        /** Weight of the grain alone, kg. */
        public double netKg() {
            return grossKg - tare.map(Tare::tareKg).orElse(0.0);
        }
    }

    /** An empty vessel by name with its weight, kg, [0, 1000). */
    record Tare(String vessel, double tareKg) {
        /** Judgement: no vessel of a home weighs as much, kg. */
        public static final double HEAVIEST_KG = 1000;

        public Tare {
            Objects.requireNonNull(vessel);
            if (!(tareKg >= 0 && tareKg < HEAVIEST_KG)) {
                throw new IllegalArgumentException("tareKg must be in [0, 1000): " + tareKg);
            }
        }
    }

    /** A sample was dried through: its moisture was this. */
    record SampleDried(Moisture moisture) implements Measured {
        public SampleDried {
            Objects.requireNonNull(moisture);
        }
    }

    /** A thermometer was read, °C, [-40, 300]. */
    record TemperatureRead(double readC, Spot spot) implements Measured {
        public TemperatureRead {
            Objects.requireNonNull(spot);
            if (!(readC >= -40 && readC <= 300)) {
                throw new IllegalArgumentException("readC must be in [-40, 300]: " + readC);
            }
            readC = readC == 0 ? 0 : readC;
        }
    }

    /** Acrospires of germinated corns were counted by length. */
    record AcrospiresCounted(AcrospireCount count) implements Measured {
        public AcrospiresCounted {
            Objects.requireNonNull(count);
        }
    }

    /** So many of so many corns showed the root tip. */
    record ChittedCounted(int chitted, int of) implements Measured {
        public ChittedCounted {
            if (of < 1 || chitted < 0 || chitted > of) {
                throw new IllegalArgumentException("chitted must be in 0..of: " + chitted + ", " + of);
            }
        }

        public double chittedFraction() {
            return (double) chitted / of;
        }
    }

    /** Colour of a congress-like wort of the malt, EBC, [0, 3000]. */
    record ColourMeasured(double colourEbc) implements Measured {
        public ColourMeasured {
            if (!(colourEbc >= 0 && colourEbc <= 3000)) {
                throw new IllegalArgumentException("colourEbc must be in [0, 3000]: " + colourEbc);
            }
        }
    }

    /** Something was seen, smelt or happened; words as they were typed. */
    record Observed(Sign sign, String words) implements Report {
        public Observed {
            Objects.requireNonNull(sign);
            Objects.requireNonNull(words);
        }
    }

    /** The heater was set to this, °C, [0, 300]. */
    record HeatSet(double airOnC) implements Report {
        public HeatSet {
            if (!(airOnC >= 0 && airOnC <= 300)) {
                throw new IllegalArgumentException("airOnC must be in [0, 300]: " + airOnC);
            }
        }
    }

    /** The vents were set: 0 shut, 1 open. */
    record VentsSet(double openFraction) implements Report {
        public VentsSet {
            if (!(openFraction >= 0 && openFraction <= 1)) {
                throw new IllegalArgumentException("openFraction must be in [0, 1]: " + openFraction);
            }
        }
    }

    /** An empty vessel was weighed, to be remembered. */
    record VesselWeighed(Tare tare) implements Report {
        public VesselWeighed {
            Objects.requireNonNull(tare);
        }
    }

    /** Free words. */
    record Noted(String words) implements Report {
        public Noted {
            Objects.requireNonNull(words);
        }
    }

    /** Words that say something the batch's history need not make use of; every reader may take them for a note. */
    record Remarked(String words, Remark remark) implements Report {
        public Remarked {
            Objects.requireNonNull(words);
            Objects.requireNonNull(remark);
        }
    }

    /** An earlier entry was wrong: this is what it should say, at the instant of this entry; nothing: it is void. */
    record Corrected(int entry, Optional<Report> instead) implements Report {
        public Corrected {
            Objects.requireNonNull(instead);
            if (instead.isPresent() && instead.get() instanceof Corrected) {
                throw new IllegalArgumentException("a correction says what happened, not another correction");
            }
        }
    }

    private static void mustBeAbove0(String name, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be above 0: " + value);
        }
    }
}
