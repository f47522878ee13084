package piecewright.desktop.colour;

import java.util.OptionalDouble;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import piecewright.colour.BeerColour;
import piecewright.text.DisplayUnits;
import piecewright.text.QuantityFormat;
import piecewright.text.QuantityParser;
import piecewright.text.UnitSystem;
import piecewright.text.UnreadableException;
import piecewright.text.WindowWords;

/** The other way to a malt colour: from the beer it is to make. */
public final class BeerViewModel {
    private final QuantityParser parser;
    private final QuantityFormat quantities;
    private final ReadOnlyObjectWrapper<Answer> answer = new ReadOnlyObjectWrapper<>();

    /**
     * What is typed.
     *
     * @param share of the grist that is the malt sought
     * @param rest colour of the other malts
     */
    public record Asked(String volume, String beer, String grist, String share, String rest) {}

    /**
     * What comes of it.
     *
     * @param sentence the colour in words; empty text where something typed is wrong
     * @param wrong what is wrong, or nothing
     */
    public record Answer(Asked asked, String sentence, OptionalDouble maltEbc, String wrong) {}

    public BeerViewModel(DisplayUnits units) {
        this.parser = QuantityParser.forPerson(units);
        this.quantities = new QuantityFormat(units);
        boolean metric = units.system() == UnitSystem.METRIC;
        ask(new Asked(
                metric ? "20 L" : "5 gal",
                quantities.colour(18),
                metric ? "4.5 kg" : "10 lb",
                "40 %",
                quantities.colour(4)));
    }

    ReadOnlyObjectProperty<Answer> answerProperty() {
        return answer.getReadOnlyProperty();
    }

    void ask(Asked asked) {
        answer.set(answered(asked));
    }

    private Answer answered(Asked asked) {
        try {
            double beerEbc = parser.colourEbc(asked.beer());
            BeerColour.Brew brew = new BeerColour.Brew(
                    parser.volumeL(asked.volume()),
                    parser.massKg(asked.grist()),
                    parser.shareFraction(asked.share()),
                    parser.colourEbc(asked.rest()));
            if (!BeerColour.holdsFor(beerEbc)) return wrong(asked, WindowWords.say("beer.too-dark"));
            double maltEbc = BeerColour.maltEbc(brew, beerEbc);
            if (!(maltEbc > 0)) return wrong(asked, WindowWords.say("beer.too-pale"));
            String sentence = WindowWords.say("beer.malt", quantities.colour(maltEbc));
            return new Answer(asked, sentence, OptionalDouble.of(maltEbc), "");
        } catch (UnreadableException unreadable) {
            return wrong(asked, String.valueOf(unreadable.getMessage()));
        } catch (IllegalArgumentException outOfRange) {
            return wrong(asked, WindowWords.say("beer.range"));
        }
    }

    private static Answer wrong(Asked asked, String why) {
        return new Answer(asked, "", OptionalDouble.empty(), why);
    }
}
