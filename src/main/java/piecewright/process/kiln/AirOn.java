package piecewright.process.kiln;

import piecewright.process.Psychrometrics;

/**
 * The heated air as it meets the grain.
 *
 * @param airOnC temperature, °C, [-100, 150]
 * @param humidityRatio kg of vapour per kg of dry air, more than 0
 * @param dryAirKgPerHour dry air through the bed, kg/h, more than 0
 * @param pressurePa pressure, Pa, more than 0
 */
public record AirOn(double airOnC, double humidityRatio, double dryAirKgPerHour, double pressurePa) {
    public AirOn {
        if (!(airOnC >= -100 && airOnC <= 150))
            throw new IllegalArgumentException("airOnC must be in [-100, 150]: " + airOnC);
        if (!(humidityRatio > 0)) throw new IllegalArgumentException("humidityRatio must be above 0: " + humidityRatio);
        if (!(dryAirKgPerHour > 0)) {
            throw new IllegalArgumentException("dryAirKgPerHour must be above 0: " + dryAirKgPerHour);
        }
        if (!(pressurePa > 0)) throw new IllegalArgumentException("pressurePa must be above 0: " + pressurePa);
    }

    /**
     * Room air warmed once, at sea level. A heater cannot cool: in a room warmer than airOnC the air-on is the room's.
     *
     * @param airFlowM3PerHour fresh air, m³/h as it is in the room, more than 0
     * @param roomHumidityFraction relative humidity of the room, (0, 1)
     */
    public static AirOn of(double airOnC, double airFlowM3PerHour, double roomC, double roomHumidityFraction) {
        double pressurePa = Psychrometrics.STANDARD_PRESSURE_PA;
        double ratio = Psychrometrics.humidityRatio(roomC, roomHumidityFraction, pressurePa);
        double flowKgPerHour = airFlowM3PerHour / Psychrometrics.specificVolumeM3PerKg(roomC, ratio, pressurePa);
        return new AirOn(Math.max(airOnC, roomC), ratio, flowKgPerHour, pressurePa);
    }

    /** Relative humidity, share of one. */
    public double humidityFraction() {
        return Psychrometrics.relativeHumidityFraction(airOnC, humidityRatio, pressurePa);
    }

    /** Enthalpy, kJ per kg of dry air. */
    public double enthalpyKJPerKg() {
        return Psychrometrics.enthalpyKJPerKg(airOnC, humidityRatio);
    }
}
