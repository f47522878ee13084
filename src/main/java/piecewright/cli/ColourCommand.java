package piecewright.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import piecewright.app.ColourChoice;
import piecewright.app.NotWrittenException;
import piecewright.app.Printing;
import piecewright.app.StyleMap;
import piecewright.chart.ColourChart;
import piecewright.house.House;
import piecewright.store.HouseFile;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;

/** Shows a malt colour and which styles reach it. */
@Command(
        name = "colour",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Shows a malt colour on every scale, and which styles reach it, and how.",
        footer = {
            "",
            "Ends with 0 some style reaches it, 1 none does, 2 something given is wrong, 3 a file could not be written."
        })
final class ColourCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Option(names = "--target", paramLabel = "COLOUR", description = "The malt's colour, such as \"6 EBC\".")
    private @Nullable String target;

    @Option(names = "--house", paramLabel = "FILE", description = "The household whose heaters are asked.")
    private @Nullable Path house;

    @Option(
            names = "--map",
            paramLabel = "STYLE",
            description = "Instead: what every cure or last roast of this style gives, over temperature and time.")
    private @Nullable String map;

    @Option(
            names = "--chart",
            paramLabel = "FILE",
            description = "Draw what the cures of every style give as FILE.svg or FILE.png; roasts are left out.")
    private @Nullable Path chart;

    @Mixin
    private final WorkspaceOptions workspaceOptions = new WorkspaceOptions();

    @Mixin
    private final BeerOptions beerOptions = new BeerOptions();

    @Mixin
    private final StyleOption styleOption = new StyleOption();

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    @Option(names = "--json", description = "Print it as JSON instead of sentences.")
    private boolean json;

    ColourCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException, NotWrittenException {
        DisplayUnits units = unitOptions.displayUnits(surroundings.locale());
        Optional<House> read = house == null
                ? Optional.empty()
                : Optional.of(HouseFile.read(workspaceOptions.house(house, surroundings)));
        if (map != null) return map(map, read, units);
        Optional<Double> ofBeer = beerOptions.maltEbc(units);
        if (ofBeer.isPresent() == (target != null)) {
            throw new OptionException("--target", "or --beer must be given, one of the two");
        }
        Optional<Path> picture = Optional.ofNullable(chart);
        if (picture.isPresent()) Printing.mustBeFree(picture.get(), ColourChart.OURS);
        double wantedEbc = target == null ? ofBeer.orElse(0.0) : MaltColour.ebc("--target", target, units);
        ColourChoice choice = ColourChoice.of(wantedEbc, styleOption.library().all(), read);
        if (picture.isPresent()) Printing.picture(picture.get(), choice.chart(read, units));
        if (!json) surroundings.streams().out().print(beerOptions.saying());
        surroundings.streams().out().print(json ? choice.json() : choice.page(units));
        if (!json && picture.isPresent()) {
            surroundings.streams().out().print("\nPicture in " + picture.get() + "\n");
        }
        boolean reached = choice.ways().stream().anyMatch(way -> way.reach().isReached());
        return reached ? Ending.DONE : Ending.NOT_POSSIBLE;
    }

    private int map(String key, Optional<House> there, DisplayUnits units) throws OptionException, StoreException {
        if (target != null) throw new OptionException("--map", "stands beside --target; give one of the two");
        StyleMap styleMap = new StyleMap(styleOption.library().style(key.toLowerCase(Locale.ROOT)), there);
        surroundings.streams().out().print(json ? styleMap.json() : styleMap.page(units));
        return Ending.DONE;
    }
}
