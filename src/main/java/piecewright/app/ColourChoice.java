package piecewright.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.colour.ColourAim;
import piecewright.colour.ColourReach;
import piecewright.colour.Cure;
import piecewright.colour.CureMap;
import piecewright.house.AirTemperature;
import piecewright.house.Heater;
import piecewright.house.House;
import piecewright.plan.Outfit.Drying;
import piecewright.process.kiln.HeaterLimit;
import piecewright.process.kiln.KilnParameters;
import piecewright.process.kiln.OvenLimit;
import piecewright.store.ColourJson;
import piecewright.style.MaltStyle;
import piecewright.text.ColourPage;
import piecewright.text.DisplayUnits;

/** A malt colour, and which styles reach it with the kit there is. */
public record ColourChoice(double colourEbc, List<Way> ways) {
    /** Cool air of a room whose temperature varies: what a heater must warm at worst. */
    private static final double COOL_ROOM_C = 10;

    public ColourChoice {
        ways = List.copyOf(ways);
    }

    /** One style and whether it reaches the colour. */
    public record Way(MaltStyle style, ColourReach reach) {}

    public static ColourChoice of(double colourEbc, List<MaltStyle> styles, Optional<House> house) {
        ColourAim aim = aim(house);
        List<Way> ways = new ArrayList<>();
        for (MaltStyle style : styles) ways.add(new Way(style, aim.reach(style, colourEbc)));
        return new ColourChoice(colourEbc, ways);
    }

    /** The finder of colours inside what the heaters of a house may do; unbounded where none is given. */
    public static ColourAim aim(Optional<House> house) {
        double hottestOvenC = house.isEmpty()
                ? OvenLimit.CEILING_C
                : house.get().kit().heaters().stream()
                        .mapToDouble(OvenLimit::hottestC)
                        .max()
                        .orElse(0);
        return new ColourAim(KilnParameters.defaults(), hottestC(house), hottestOvenC);
    }

    /** The cure of a style over temperature and hours, for a picture. */
    public static CureMap map(MaltStyle style, Optional<House> house) {
        return CureMap.of(new Cure(style, KilnParameters.defaults()), hottestC(house));
    }

    private static double hottestC(Optional<House> house) {
        if (house.isEmpty()) return Double.POSITIVE_INFINITY;
        double hottestC = 0;
        for (Heater heater : house.get().kit().heaters()) {
            var place = house.get().place(heater.place());
            double roomC = place.air() instanceof AirTemperature.Constant constant ? constant.airC() : COOL_ROOM_C;
            hottestC = Math.max(
                    hottestC, HeaterLimit.hottestAirOnC(Drying.vented(heater.air()), roomC, place.humidityFraction()));
        }
        return hottestC;
    }

    public String page(DisplayUnits units) {
        ColourPage page = new ColourPage(units);
        StringBuilder text = new StringBuilder(page.head(colourEbc));
        for (Way way : ways) text.append(page.way(way.style().title(), way.reach()));
        return text.toString();
    }

    public String json() {
        ColourJson json = new ColourJson(colourEbc);
        for (Way way : ways) json.add(way.style().key(), way.reach());
        return json.write();
    }
}
