package piecewright.style;

import java.util.List;
import java.util.Objects;
import piecewright.grain.GrainKind;
import piecewright.quantity.EbcRange;

/**
 * A style of malt as its schedule file tells it.
 *
 * @param key short name used on the command line, letters, digits and hyphens
 * @param grains kinds of grain it is made from, at least one
 */
public record MaltStyle(
        String key,
        String title,
        List<GrainKind> grains,
        SteepSchedule steep,
        GrowthSchedule growth,
        KilnSchedule kiln,
        FinishSchedule finish) {
    public MaltStyle {
        Objects.requireNonNull(key);
        Objects.requireNonNull(title);
        grains = List.copyOf(grains);
        Objects.requireNonNull(steep);
        Objects.requireNonNull(growth);
        Objects.requireNonNull(kiln);
        Objects.requireNonNull(finish);
        if (grains.isEmpty()) throw new IllegalArgumentException("grains must not be empty");
    }

    public MaltStyle withSteep(SteepSchedule changed) {
        return new MaltStyle(key, title, grains, changed, growth, kiln, finish);
    }

    public MaltStyle withGrowth(GrowthSchedule changed) {
        return new MaltStyle(key, title, grains, steep, changed, kiln, finish);
    }

    /**
     * The finished malt.
     *
     * @param restDays rest before milling that the style asks for, days, 0 or more
     * @param preferredRestDays rest that is better still, days, at least restDays
     * @param colour usual congress-wort colour
     */
    public record FinishSchedule(double restDays, double preferredRestDays, EbcRange colour) {
        public FinishSchedule {
            Objects.requireNonNull(colour);
            if (!(restDays >= 0 && restDays <= preferredRestDays)) {
                throw new IllegalArgumentException(
                        "need 0 <= restDays <= preferredRestDays: " + restDays + ", " + preferredRestDays);
            }
        }
    }
}
