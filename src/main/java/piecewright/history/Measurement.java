package piecewright.history;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.journal.AcrospireCount;
import piecewright.journal.Entry;
import piecewright.journal.Report.AcrospiresCounted;
import piecewright.journal.Report.ChittedCounted;
import piecewright.journal.Report.Measured;
import piecewright.journal.Report.SampleDried;
import piecewright.journal.Report.TemperatureRead;
import piecewright.journal.Report.Weighed;
import piecewright.journal.Spot;
import piecewright.plan.Chitted;
import piecewright.plan.Reading;
import piecewright.process.couch.CouchProbe;

/**
 * A figure that was found and is believed.
 *
 * @param entry where it stands in the log
 * @param keeping how the grain was kept then
 */
public record Measurement(Entry entry, Measured found, Keeping keeping) {
    /** Judgement: sorting corns into six classes by eye is out by so much all together, share of the corn. */
    private static final double SORTING_SD = 0.03;
    /** Judgement: top and edge of a couch run 2 to 5 K below its mean. */
    private static final double RIM_K = 3;

    public Measurement {
        Objects.requireNonNull(entry);
        Objects.requireNonNull(found);
        Objects.requireNonNull(keeping);
    }

    public Instant at() {
        return entry.at();
    }

    /** Mean temperature of the grain that a thermometer tells, °C; empty where it was not held in the grain. */
    public OptionalDouble grainMeanC() {
        if (!(found instanceof TemperatureRead read) || !read.spot().inGrain()) return OptionalDouble.empty();
        if (keeping != Keeping.COUCHED) return OptionalDouble.of(read.readC());
        return OptionalDouble.of(
                switch (read.spot()) {
                    case CORE, GRAIN -> CouchProbe.MIDDLE.meanC(read.readC());
                    case BOTTOM -> CouchProbe.BOTTOM.meanC(read.readC());
                    default -> read.readC() + RIM_K;
                });
    }

    /** What a forecast gives way to; empty where it says nothing of the state. */
    public Optional<Reading> reading() {
        Reading nothing = Reading.nothing(at());
        if (found instanceof Weighed weighed) return Optional.of(nothing.withNetKg(weighed.netKg()));
        if (found instanceof SampleDried sample) {
            return Optional.of(nothing.withMoistureFraction(sample.moisture().wetBasisFraction()));
        }
        if (found instanceof AcrospiresCounted counted) {
            AcrospireCount count = counted.count();
            double sd = Math.hypot(SORTING_SD, count.sdFraction() / Math.sqrt(count.of()));
            return Optional.of(nothing.withGrowth(new Reading.Growth(count.meanFraction(), sd)));
        }
        if (found instanceof ChittedCounted counted) {
            return Optional.of(nothing.withChitted(new Chitted(counted.chitted(), counted.of())));
        }
        return found instanceof TemperatureRead read && tellsTheMean(read.spot())
                ? Optional.of(nothing.withGrainC(grainMeanC().orElseThrow()))
                : Optional.empty();
    }

    /** In a couch middle and bottom tell it, on a bed anything but its core. */
    private boolean tellsTheMean(Spot spot) {
        boolean rim = spot == Spot.EDGE || spot == Spot.TOP;
        return spot.inGrain() && (keeping == Keeping.COUCHED ? !rim : spot != Spot.CORE);
    }
}
