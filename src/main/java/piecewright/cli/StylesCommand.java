package piecewright.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import piecewright.grain.GrainKind;
import piecewright.store.StoreException;
import piecewright.style.MaltStyle;
import piecewright.text.QuantityFormat;

/** Lists the styles there are. */
@Command(name = "styles", mixinStandardHelpOptions = true, description = "Lists the styles that can be planned.")
final class StylesCommand implements Callable<Integer> {
    /** The longest key that comes with the program, and two spaces. */
    private static final int KEY_COLUMN = 16;

    private final Surroundings surroundings;

    @Mixin
    private final StyleOption styleOption = new StyleOption();

    @Mixin
    private final UnitOptions unitOptions = new UnitOptions();

    StylesCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws OptionException, StoreException {
        QuantityFormat quantities = new QuantityFormat(unitOptions.displayUnits(surroundings.locale()));
        PrintWriter out = surroundings.streams().out();
        for (MaltStyle style : styleOption.library().all()) out.println(line(style, quantities));
        return Ending.DONE;
    }

    private static String line(MaltStyle style, QuantityFormat quantities) {
        String grains = style.grains().stream().map(GrainKind::key).collect(Collectors.joining(", "));
        String colours = quantities.colour(style.finish().colour().lowEbc()) + " to "
                + quantities.colour(style.finish().colour().highEbc());
        String key =
                style.key() + " ".repeat(Math.max(2, KEY_COLUMN - style.key().length()));
        return key + style.title() + ", from " + grains + ", " + colours;
    }
}
