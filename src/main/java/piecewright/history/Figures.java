package piecewright.history;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import piecewright.journal.Entry;
import piecewright.journal.Report.AcrospiresCounted;
import piecewright.journal.Report.SampleDried;
import piecewright.journal.Report.TemperatureRead;
import piecewright.journal.Spot;

/** Whether moistures, temperatures and counts can be true, whatever lot and kit are like. Scratch space of one reading. */
final class Figures {
    /** Judgement: no sample is dried further at home, wet basis. */
    private static final double DRIEST_FRACTION = 0.01;
    /** No grain is wetter: saturation and a film, wet basis. */
    private static final double WETTEST_FRACTION =
            Contradiction.NoSuchWeight.WETTEST_RATIO / (1 + Contradiction.NoSuchWeight.WETTEST_RATIO);
    /** Judgement: below this wet grain and water are frozen, °C. */
    private static final double FROZEN_C = -5;
    /** Judgement: above this no living pile heats itself; reports end at 60 °C (storage texts), °C. */
    private static final double HOTTEST_LIVING_C = 65;
    /** Judgement: no kiln of a home is hotter, curing air and an oven's dial included, °C. */
    private static final double HOTTEST_KILN_C = 140;
    /** Judgement: nothing in a malting is hotter, °C. */
    private static final double HOTTEST_C = 260;
    /** Judgement: and no shed colder, °C. */
    private static final double COLDEST_C = -40;
    /** Judgement: fastest change of a pile left alone, three times the fastest heating foretold, K/h. */
    private static final double FASTEST_K_PER_HOUR = 8;
    /** Judgement: difference between two spots of a pile, K. */
    private static final double SPOTS_K = 6;
    /** Judgement: error of two counts, share of the kernel. */
    private static final double SHRINKING_FRACTION = 0.25;

    private @Nullable Measurement lastWarmth;
    private OptionalDouble lastLength = OptionalDouble.empty();

    /** The grain was moved or heated: its temperature may be another next time. */
    void disturbed() {
        lastWarmth = null;
    }

    /** What speaks against a figure other than a weight; one nothing speaks against is believed from here on. */
    Optional<Contradiction> against(Measurement measured) {
        Entry entry = measured.entry();
        if (measured.found() instanceof SampleDried sample) {
            double fraction = sample.moisture().wetBasisFraction();
            boolean can = fraction >= DRIEST_FRACTION && fraction <= WETTEST_FRACTION;
            return can
                    ? Optional.empty()
                    : Optional.of(new Contradiction.NoSuchMoisture(
                            entry.number(), entry.at(), fraction, DRIEST_FRACTION, WETTEST_FRACTION));
        }
        if (measured.found() instanceof AcrospiresCounted counted) {
            return counted(entry, counted.count().meanFraction());
        }
        return measured.found() instanceof TemperatureRead read ? warmth(measured, read) : Optional.empty();
    }

    private Optional<Contradiction> counted(Entry entry, double length) {
        if (lastLength.isPresent() && length < lastLength.getAsDouble() - SHRINKING_FRACTION) {
            return Optional.of(new Contradiction.Shrunk(entry.number(), entry.at(), length, lastLength.getAsDouble()));
        }
        lastLength = OptionalDouble.of(length);
        return Optional.empty();
    }

    private Optional<Contradiction> warmth(Measurement measured, TemperatureRead read) {
        Entry entry = measured.entry();
        double least = leastC(measured.keeping(), read.spot());
        double most = mostC(measured.keeping(), read.spot());
        if (read.readC() < least || read.readC() > most) {
            return Optional.of(new Contradiction.NoSuchTemperature(
                    entry.number(), entry.at(), read.spot(), read.readC(), least, most));
        }
        boolean alone = measured.keeping() == Keeping.GROWING || measured.keeping() == Keeping.COUCHED;
        OptionalDouble meanC = measured.grainMeanC();
        if (!alone || meanC.isEmpty()) return Optional.empty();
        Measurement before = lastWarmth;
        if (before != null) {
            double hours = Duration.between(before.at(), measured.at()).toMinutes() / 60.0;
            double beforeC = before.grainMeanC().orElse(meanC.getAsDouble());
            if (Math.abs(meanC.getAsDouble() - beforeC) > SPOTS_K + FASTEST_K_PER_HOUR * hours) {
                return Optional.of(new Contradiction.Jumped(entry.number(), entry.at(), read.readC(), readC(before)));
            }
        }
        lastWarmth = measured;
        return Optional.empty();
    }

    private static double readC(Measurement measured) {
        return measured.found() instanceof TemperatureRead read ? read.readC() : 0;
    }

    private static double leastC(Keeping keeping, Spot spot) {
        boolean dry = keeping == Keeping.DONE || spot == Spot.AIR || spot == Spot.AIR_ON;
        return dry ? COLDEST_C : FROZEN_C;
    }

    private static double mostC(Keeping keeping, Spot spot) {
        if (spot == Spot.WATER || spot == Spot.AIR) return HOTTEST_LIVING_C;
        if (spot == Spot.AIR_ON) return HOTTEST_KILN_C;
        return switch (keeping) {
            case STEEPING, GROWING, COUCHED -> HOTTEST_LIVING_C;
            case HEATED -> HOTTEST_KILN_C;
            case DONE -> HOTTEST_C;
        };
    }
}
