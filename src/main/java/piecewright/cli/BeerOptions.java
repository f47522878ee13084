package piecewright.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import piecewright.colour.BeerColour;
import piecewright.text.DisplayUnits;
import piecewright.text.QuantityParser;
import piecewright.text.UnreadableException;

/** A malt colour asked for by the beer it makes. */
final class BeerOptions {
    @Option(names = "--beer", paramLabel = "COLOUR", description = "Or the beer's colour, with the four below.")
    private @Nullable String beer;

    @Option(names = "--volume", paramLabel = "VOLUME", description = "Beer into the fermenter, such as \"20 L\".")
    private @Nullable String volume;

    @Option(names = "--grist", paramLabel = "WEIGHT", description = "All malt in it, such as \"4.5 kg\".")
    private @Nullable String grist;

    @Option(names = "--share", paramLabel = "PERCENT", description = "Of it the malt sought, such as \"40 %%\".")
    private @Nullable String share;

    @Option(
            names = "--rest",
            paramLabel = "COLOUR",
            defaultValue = "4 EBC",
            description = "Colour of the other malts; 4 EBC if left out.")
    private String rest = "4 EBC";

    /** The malt's colour, EBC; empty when no beer was named. */
    Optional<Double> maltEbc(DisplayUnits units) throws OptionException {
        if (beer == null) return Optional.empty();
        if (volume == null || grist == null || share == null) {
            throw new OptionException("--beer", "needs --volume, --grist and --share beside it");
        }
        QuantityParser parser = QuantityParser.forPerson(units);
        try {
            double beerEbc = parser.colourEbc(beer);
            BeerColour.Brew brew = new BeerColour.Brew(
                    parser.volumeL(volume), parser.massKg(grist), parser.shareFraction(share), parser.colourEbc(rest));
            if (!BeerColour.holdsFor(beerEbc)) {
                throw new OptionException("--beer", "is darker than the formula is good for, 50 SRM or 98 EBC");
            }
            double maltEbc = BeerColour.maltEbc(brew, beerEbc);
            if (maltEbc > 0) return Optional.of(maltEbc);
            throw new OptionException("--beer", "is paler than the other malts make it; want a darker one");
        } catch (UnreadableException | IllegalArgumentException unfit) {
            throw new OptionException("--beer", String.valueOf(unfit.getMessage()));
        }
    }

    /** The formula used; nothing when no beer was named. */
    String saying() {
        return beer == null
                ? ""
                : "By Morey's power law, SRM = 1.4922 MCU^0.6859, from memory; good to about 50 SRM.\n";
    }
}
