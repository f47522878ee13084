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
        FinishSchedule finish,
        Couches couches,
        OvenSchedule oven) {
    public MaltStyle {
        Objects.requireNonNull(key);
        Objects.requireNonNull(title);
        grains = List.copyOf(grains);
        Objects.requireNonNull(steep);
        Objects.requireNonNull(growth);
        Objects.requireNonNull(kiln);
        Objects.requireNonNull(finish);
        Objects.requireNonNull(couches);
        Objects.requireNonNull(oven);
        if (grains.isEmpty()) throw new IllegalArgumentException("grains must not be empty");
        if (finish.lever() == ColourLever.ROAST_MINUTES && oven.roast().isEmpty()) {
            throw new IllegalArgumentException("a style coloured by roast minutes needs a roast");
        }
        if (finish.lever() == ColourLever.COUCH_HOURS && couches.hot().isEmpty()) {
            throw new IllegalArgumentException("a style coloured by couch hours needs a hot couch");
        }
    }

    /** A style that is only steeped, grown, kilned and rested. */
    public MaltStyle(
            String key,
            String title,
            List<GrainKind> grains,
            SteepSchedule steep,
            GrowthSchedule growth,
            KilnSchedule kiln,
            FinishSchedule finish) {
        this(key, title, grains, steep, growth, kiln, finish, Couches.none(), OvenSchedule.none());
    }

    /** The same style with the kiln changed. */
    public MaltStyle withKiln(KilnSchedule changed) {
        return new MaltStyle(key, title, grains, steep, growth, changed, finish, couches, oven);
    }

    /** The same style with other couches. */
    public MaltStyle withCouches(Couches changed) {
        return new MaltStyle(key, title, grains, steep, growth, kiln, finish, changed, oven);
    }

    /** The same style with stew and roast changed. */
    public MaltStyle withOven(OvenSchedule changed) {
        return new MaltStyle(key, title, grains, steep, growth, kiln, finish, couches, changed);
    }

    /** The same style with its steep changed. */
    public MaltStyle withSteep(SteepSchedule changed) {
        return new MaltStyle(key, title, grains, changed, growth, kiln, finish, couches, oven);
    }

    /** The same style with its growth changed. */
    public MaltStyle withGrowth(GrowthSchedule changed) {
        return new MaltStyle(key, title, grains, steep, changed, kiln, finish, couches, oven);
    }

    /** The same style with other figures for the finished malt. */
    public MaltStyle finishedBy(FinishSchedule other) {
        return new MaltStyle(key, title, grains, steep, growth, kiln, other, couches, oven);
    }

    /**
     * The finished malt.
     *
     * @param restDays rest before milling that the style asks for, days, 0 or more
     * @param preferredRestDays rest that is better still, days, at least restDays
     * @param colour usual congress-wort colour
     * @param lever what is left free to make that colour
     */
    public record FinishSchedule(double restDays, double preferredRestDays, EbcRange colour, ColourLever lever) {
        /** A style coloured by its cure. */
        public FinishSchedule(double restDays, double preferredRestDays, EbcRange colour) {
            this(restDays, preferredRestDays, colour, ColourLever.CURE_HOURS);
        }

        public FinishSchedule {
            Objects.requireNonNull(colour);
            Objects.requireNonNull(lever);
            if (!(restDays >= 0 && restDays <= preferredRestDays)) {
                throw new IllegalArgumentException(
                        "need 0 <= restDays <= preferredRestDays: " + restDays + ", " + preferredRestDays);
            }
        }
    }
}
