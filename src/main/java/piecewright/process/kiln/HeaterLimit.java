package piecewright.process.kiln;

import piecewright.house.Heater.HotAir;
import piecewright.process.Psychrometrics;

/** What a heater's power allows: P = G c (t - room) + UA (t - room), at sea level. Warming-up heat is not counted. */
public final class HeaterLimit {
    /** Source: 3600 s per hour over 1000 J per kJ, exact. */
    private static final double KJ_PER_HOUR_PER_W = 3.6;

    private HeaterLimit() {}

    /**
     * Hottest air-on it holds, °C: by power, and never above its range. May lie below the range's low end: then it
     * holds nothing in that room.
     *
     * @param roomHumidityFraction relative humidity of the room, (0, 1)
     */
    public static double hottestAirOnC(HotAir heater, double roomC, double roomHumidityFraction) {
        double byPowerC = roomC + heater.powerW() / wattsPerK(heater, roomC, roomHumidityFraction);
        return Math.min(heater.range().highC(), byPowerC);
    }

    /** Power needed to hold an air-on temperature, W; 0 when the room is as warm. */
    public static double powerW(HotAir heater, double airOnC, double roomC, double roomHumidityFraction) {
        return Math.max(0, airOnC - roomC) * wattsPerK(heater, roomC, roomHumidityFraction);
    }

    private static double wattsPerK(HotAir heater, double roomC, double roomHumidityFraction) {
        AirOn air = AirOn.of(roomC, heater.airFlowM3PerHour(), roomC, roomHumidityFraction);
        double airWPerK =
                air.dryAirKgPerHour() * Psychrometrics.heatCapacityKJPerKgK(air.humidityRatio()) / KJ_PER_HOUR_PER_W;
        return airWPerK + heater.lossWPerK();
    }
}
