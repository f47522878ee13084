package piecewright.plan;

import piecewright.house.AirTemperature;
import piecewright.house.Heater;
import piecewright.house.House;
import piecewright.house.Place;
import piecewright.plan.Outfit.Drying;
import piecewright.process.kiln.HeaterLimit;

/** How hot the heaters of a house hold the air of a cure at worst. */
public final class HottestCure {
    /** Judgement: cool air of a room whose temperature varies: what a heater must warm at worst. */
    private static final double COOL_ROOM_C = 10;

    private HottestCure() {}

    /** Hottest air-on any heater of the house holds for curing, °C; 0 where there is none. */
    public static double ofC(House house) {
        double hottestC = 0;
        for (Heater heater : house.kit().heaters()) {
            Place place = house.place(heater.place());
            double roomC = place.air() instanceof AirTemperature.Constant constant ? constant.airC() : COOL_ROOM_C;
            double heldC = HeaterLimit.hottestAirOnC(Drying.vented(heater.air()), roomC, place.humidityFraction());
            hottestC = Math.max(hottestC, heldC);
        }
        return hottestC;
    }
}
