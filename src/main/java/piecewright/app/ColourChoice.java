package piecewright.app;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import piecewright.chart.ColourChart;
import piecewright.colour.ColourAim;
import piecewright.colour.ColourReach;
import piecewright.colour.Cure;
import piecewright.colour.CureMap;
import piecewright.colour.RoastMap;
import piecewright.house.House;
import piecewright.plan.HottestHeat;
import piecewright.process.kiln.KilnParameters;
import piecewright.process.kiln.OvenLimit;
import piecewright.store.ColourJson;
import piecewright.style.ColourLever;
import piecewright.style.MaltStyle;
import piecewright.text.ColourPage;
import piecewright.text.DisplayUnits;

/** A malt colour, and which styles reach it with the kit there is. */
public record ColourChoice(double colourEbc, List<Way> ways) {
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
        KilnParameters parameters = KilnParameters.defaults();
        return house.map(there -> HottestHeat.aim(there, parameters))
                .orElse(new ColourAim(parameters, new ColourAim.Kit(Double.POSITIVE_INFINITY, OvenLimit.CEILING_C, 1)));
    }

    /** The cure of a style over temperature and hours, for a picture. */
    public static CureMap map(MaltStyle style, Optional<House> house) {
        return CureMap.of(new Cure(style, KilnParameters.defaults()), hottestC(house));
    }

    /** The last roast of a roasted style over oven temperature and minutes, for a picture. */
    public static RoastMap roasts(MaltStyle style, Optional<House> house) {
        return RoastMap.of(style, KilnParameters.defaults(), aim(house).kit().hottestOvenC());
    }

    /** What the cures of these styles give with the kit there is, as an SVG picture; a roast makes its own colour. */
    public String chart(Optional<House> house, DisplayUnits units) {
        List<ColourChart.Panel> panels = ways.stream()
                .filter(way -> way.style().finish().lever() != ColourLever.ROAST_MINUTES)
                .map(way -> new ColourChart.Panel(way.style().title(), map(way.style(), house)))
                .toList();
        return ColourChart.of(panels, colourEbc, units);
    }

    /** The hottest air under the bed that any heater of the house holds for a cure, °C; infinite where none is given. */
    public static double hottestC(Optional<House> house) {
        return house.map(HottestHeat::cureC).orElse(Double.POSITIVE_INFINITY);
    }

    public String page(DisplayUnits units) {
        ColourPage page = new ColourPage(units);
        StringBuilder text = new StringBuilder(page.head(colourEbc));
        List<Way> reachedFirst = ways.stream()
                .sorted(Comparator.comparingInt(way -> rank(way.reach())))
                .toList();
        for (Way way : reachedFirst) text.append(page.way(way.style().title(), way.reach()));
        return text.toString();
    }

    private static int rank(ColourReach reach) {
        if (reach.isReached()) return 0;
        return reach instanceof ColourReach.NoHeater || reach instanceof ColourReach.NoBox ? 2 : 1;
    }

    public String json() {
        ColourJson json = new ColourJson(colourEbc);
        for (Way way : ways) json.add(way.style().key(), way.reach());
        return json.write();
    }
}
