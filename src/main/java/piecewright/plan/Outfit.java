package piecewright.plan;

import java.util.Objects;
import java.util.Optional;
import piecewright.house.Heater;
import piecewright.house.Heater.HotAir;

/**
 * The places and kit chosen for one piece.
 *
 * @param withering where it withers: where it grew, or where it dries best before a hot couch
 */
public record Outfit(Soaking soaking, Growing growing, Growing withering, Drying drying, Ovens ovens) {
    public Outfit {
        Objects.requireNonNull(soaking);
        Objects.requireNonNull(growing);
        Objects.requireNonNull(withering);
        Objects.requireNonNull(drying);
        Objects.requireNonNull(ovens);
    }

    /** What gives the malt most of its colour: the oven it is roasted in, else the kiln it is cured in. */
    public Heater colours() {
        return ovens.roasting().map(Roasting::oven).orElse(drying.curer());
    }

    Outfit withWithering(Growing changed) {
        return new Outfit(soaking, growing, changed, drying, ovens);
    }

    /**
     * @param vessels buckets used side by side, 1 or more
     * @param firstWaterL water for the first immersion, all vessels together, litres
     * @param laterWaterL water for each later immersion, all vessels together, litres
     */
    public record Soaking(String place, int vessels, double firstWaterL, double laterWaterL) {
        /** Water for the first (1) or a later immersion, all vessels together, litres. */
        public double waterL(int immersion) {
            return immersion == 1 ? firstWaterL : laterWaterL;
        }
    }

    /** Trays or floor used; depth of the fresh bed, cm. */
    public record Growing(String place, double areaM2, double depthCm) {}

    /** What stews and what roasts; empty where the style does neither. */
    public record Ovens(Optional<Stewing> stewing, Optional<Roasting> roasting) {}

    /** The oven of the stew, and how deep the whole piece lies in it, cm. */
    public record Stewing(Heater oven, double depthCm) {}

    /** The oven of the roast, and how many loads it takes, 1 or more. */
    public record Roasting(Heater oven, int loads) {}

    /**
     * @param dryer dries up to its hottest rung
     * @param curer cures; the same heater where one does both
     * @param hottestDryC hottest air-on the dryer reaches with its vents open, °C
     * @param cureC air-on at which this house cures the style, °C
     */
    public record Drying(Heater dryer, Heater curer, double hottestDryC, double cureC) {
        /** Judgement: vents are half shut for curing. */
        private static final double CURE_FLOW_RATIO = 0.5;

        /** The air of a heater with its vents half shut, as for curing. */
        public static HotAir vented(HotAir open) {
            return open.withAirFlowM3PerHour(open.airFlowM3PerHour() * CURE_FLOW_RATIO);
        }

        /** The curer's air while it cures. */
        public HotAir curingAir() {
            return vented(curer.air());
        }

        public boolean sameHeater() {
            return dryer.equals(curer);
        }
    }
}
