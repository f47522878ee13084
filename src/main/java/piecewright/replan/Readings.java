package piecewright.replan;

import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.journal.AcrospireCount;
import piecewright.journal.Entry;
import piecewright.journal.Report.AcrospiresCounted;
import piecewright.journal.Report.Measured;
import piecewright.journal.Report.SampleDried;
import piecewright.journal.Report.TemperatureRead;
import piecewright.journal.Report.Weighed;
import piecewright.journal.Spot;
import piecewright.plan.Reading;
import piecewright.process.couch.CouchProbe;

/** What a measured entry says of the state of a piece. */
final class Readings {
    /** Judgement: sorting corns into six classes by eye is out by so much all together, share of the corn. */
    private static final double SORTING_SD = 0.03;

    private Readings() {}

    /** The same for a piece in a hot couch: a thermometer tells the mean of the pile by where it was held. */
    static Optional<Reading> ofCouch(Entry entry, Measured measured) {
        if (!(measured instanceof TemperatureRead read)) return of(entry, measured);
        OptionalDouble meanC = switch (read.spot()) {
            case CORE, GRAIN -> OptionalDouble.of(CouchProbe.MIDDLE.meanC(read.readC()));
            case BOTTOM -> OptionalDouble.of(CouchProbe.BOTTOM.meanC(read.readC()));
            default -> OptionalDouble.empty();
        };
        return meanC.isPresent()
                ? Optional.of(Reading.nothing(entry.at()).withGrainC(meanC.getAsDouble()))
                : Optional.empty();
    }

    /** The reading; empty where the entry says nothing of the state. A count of chitted corns is compared, not obeyed. */
    static Optional<Reading> of(Entry entry, Measured measured) {
        Reading nothing = Reading.nothing(entry.at());
        if (measured instanceof Weighed weighed) return Optional.of(nothing.withNetKg(weighed.netKg()));
        if (measured instanceof SampleDried sample) {
            return Optional.of(nothing.withMoistureFraction(sample.moisture().wetBasisFraction()));
        }
        if (measured instanceof TemperatureRead read && read.spot().inGrain() && read.spot() != Spot.CORE) {
            return Optional.of(nothing.withGrainC(read.readC()));
        }
        if (measured instanceof AcrospiresCounted counted) {
            AcrospireCount count = counted.count();
            double sd = Math.hypot(SORTING_SD, count.sdFraction() / Math.sqrt(count.of()));
            return Optional.of(nothing.withGrowth(new Reading.Growth(count.meanFraction(), sd)));
        }
        return Optional.empty();
    }
}
