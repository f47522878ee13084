package piecewright.house;

import java.util.Objects;
import piecewright.quantity.TemperatureRange;

/**
 * Something that dries or cures: dehydrator, box kiln, kitchen oven.
 *
 * @param air what it does to the air
 * @param trayAreaM2 area the grain lies on, m², more than 0
 * @param control what may be trusted to it
 */
public record Heater(String name, String place, HotAir air, double trayAreaM2, HeatControl control) {
    public Heater {
        Objects.requireNonNull(name);
        Objects.requireNonNull(place);
        Objects.requireNonNull(air);
        Objects.requireNonNull(control);
        if (!(trayAreaM2 > 0)) throw new IllegalArgumentException("trayAreaM2 must be above 0: " + trayAreaM2);
    }

    /** The same heater blowing more or less. */
    public Heater withAirFlowM3PerHour(double changedM3PerHour) {
        return new Heater(name, place, air.withAirFlowM3PerHour(changedM3PerHour), trayAreaM2, control);
    }

    /**
     * @param range air-on temperatures it can hold, °C
     * @param airFlowM3PerHour fresh air through the bed, m³/h at the room's temperature, more than 0
     * @param flowMeasured true once two weighings calibrated it
     * @param powerW heating power, W, more than 0
     * @param lossWPerK heat lost through the walls, W/K, 0 or more
     * @param openFlame whether the fumes of a flame pass through the grain
     */
    public record HotAir(
            TemperatureRange range,
            double airFlowM3PerHour,
            boolean flowMeasured,
            double powerW,
            double lossWPerK,
            boolean openFlame) {
        /** Heat without fumes in it. */
        public HotAir(
                TemperatureRange range,
                double airFlowM3PerHour,
                boolean flowMeasured,
                double powerW,
                double lossWPerK) {
            this(range, airFlowM3PerHour, flowMeasured, powerW, lossWPerK, false);
        }

        public HotAir {
            Objects.requireNonNull(range);
            if (!(airFlowM3PerHour > 0)) {
                throw new IllegalArgumentException("airFlowM3PerHour must be above 0: " + airFlowM3PerHour);
            }
            if (!(powerW > 0)) throw new IllegalArgumentException("powerW must be above 0: " + powerW);
            if (!(lossWPerK >= 0)) throw new IllegalArgumentException("lossWPerK must be 0 or more: " + lossWPerK);
        }

        public HotAir withAirFlowM3PerHour(double changedM3PerHour) {
            return new HotAir(range, changedM3PerHour, flowMeasured, powerW, lossWPerK, openFlame);
        }
    }

    /**
     * @param holdsSetPoint keeps a set temperature without being watched
     * @param rampsItself changes the set temperature by itself at a time or reading
     * @param safeUnattended thermostat and an independent cut-out: may run hot while nobody is awake and near
     * @param thermostatErrorK standard deviation of the temperature against the dial, K, 0 or more
     * @param dialOffsetK by how much it is hotter than its dial says, as an empty-oven check found, K; 0 when unchecked
     */
    public record HeatControl(
            boolean holdsSetPoint,
            boolean rampsItself,
            boolean safeUnattended,
            double thermostatErrorK,
            double dialOffsetK) {
        /** A heater whose dial nobody has checked. */
        public HeatControl(
                boolean holdsSetPoint, boolean rampsItself, boolean safeUnattended, double thermostatErrorK) {
            this(holdsSetPoint, rampsItself, safeUnattended, thermostatErrorK, 0);
        }

        public HeatControl {
            if (!(thermostatErrorK >= 0 && thermostatErrorK <= 50)) {
                throw new IllegalArgumentException("thermostatErrorK must be in [0, 50]: " + thermostatErrorK);
            }
        }
    }
}
