package piecewright.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.chart.ColourChart;
import piecewright.colour.ColourReach;
import piecewright.colour.Cure;
import piecewright.colour.CureMap;
import piecewright.colour.CureSolver;
import piecewright.house.AirTemperature;
import piecewright.house.Heater;
import piecewright.house.House;
import piecewright.plan.Outfit.Drying;
import piecewright.process.kiln.HeaterLimit;
import piecewright.process.kiln.KilnParameters;
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
        double hottestC = hottestC(house);
        List<Way> ways = new ArrayList<>();
        for (MaltStyle style : styles) {
            Cure cure = new Cure(style, KilnParameters.defaults());
            ways.add(new Way(style, new CureSolver(cure, hottestC).reach(colourEbc)));
        }
        return new ColourChoice(colourEbc, ways);
    }

    /** The cure of a style over temperature and hours, for a picture. */
    public static CureMap map(MaltStyle style, Optional<House> house) {
        return CureMap.of(new Cure(style, KilnParameters.defaults()), hottestC(house));
    }

    /** What the cures of these styles give with the kit there is, as an SVG picture. */
    public String chart(Optional<House> house, DisplayUnits units) {
        List<ColourChart.Panel> panels = ways.stream()
                .map(way -> new ColourChart.Panel(way.style().title(), map(way.style(), house)))
                .toList();
        return ColourChart.of(panels, colourEbc, units);
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
