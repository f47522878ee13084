package piecewright.plan;

import piecewright.colour.ColourAim;
import piecewright.house.AirTemperature;
import piecewright.house.Heater;
import piecewright.house.House;
import piecewright.house.Place;
import piecewright.plan.Outfit.Drying;
import piecewright.process.kiln.HeaterLimit;
import piecewright.process.kiln.KilnParameters;
import piecewright.process.kiln.OvenLimit;

/** How hot the heaters of a house cure and roast at worst. */
public final class HottestHeat {
    /** Judgement: cool air of a room whose temperature varies: what a heater must warm at worst. */
    private static final double COOL_ROOM_C = 10;

    private HottestHeat() {}

    /** Hottest air-on any heater of the house holds for curing, °C; 0 where there is none. */
    public static double cureC(House house) {
        double hottestC = 0;
        for (Heater heater : house.kit().heaters()) {
            Place place = house.place(heater.place());
            double roomC = place.air() instanceof AirTemperature.Constant constant ? constant.airC() : COOL_ROOM_C;
            double heldC = HeaterLimit.hottestAirOnC(Drying.vented(heater.air()), roomC, place.humidityFraction());
            hottestC = Math.max(hottestC, heldC);
        }
        return hottestC;
    }

    /** The finder of colours inside what the heaters of a house may do. */
    public static ColourAim aim(House house, KilnParameters parameters) {
        double ovenC = house.kit().heaters().stream()
                .mapToDouble(OvenLimit::hottestC)
                .max()
                .orElse(0);
        return new ColourAim(
                parameters,
                new ColourAim.Kit(cureC(house), ovenC, house.kit().boxes().size()));
    }
}
