package piecewright.learn;

import java.time.Instant;
import java.util.Optional;
import piecewright.house.Scale;
import piecewright.journal.Report;
import piecewright.journal.Spot;
import piecewright.plan.Setup;

/** What a measured entry says of the piece, and how sure it is. */
final class Readings {
    private final Scale scale;
    private final double dryMatterKg;

    Readings(Scale scale, Setup setup) {
        this.scale = scale;
        this.dryMatterKg = setup.dryMatterKg();
    }

    /** The observation; empty for what no unknown here depends on. */
    Optional<Observation> of(String key, Instant at, Report.Measured measured, Keeping keeping) {
        if (measured instanceof Report.Weighed weighed) {
            double kg = weighed.netKg();
            boolean drained = keeping == Keeping.STEEPING;
            double sdKg =
                    drained ? ReadingErrors.drainedKg(scale, kg, dryMatterKg) : ReadingErrors.handledKg(scale, kg);
            return Optional.of(new Observation(key, at, Figure.WEIGHT, kg, sdKg));
        }
        if (measured instanceof Report.SampleDried sample) {
            double fraction = sample.moisture().wetBasisFraction();
            return Optional.of(new Observation(key, at, Figure.MOISTURE, fraction, ReadingErrors.SAMPLE_FRACTION));
        }
        if (measured instanceof Report.AcrospiresCounted counted) {
            double sd = ReadingErrors.acrospireSd(counted.count().of());
            return Optional.of(
                    new Observation(key, at, Figure.ACROSPIRE, counted.count().meanFraction(), sd));
        }
        if (measured instanceof Report.ColourMeasured colour && keeping == Keeping.DONE && colour.colourEbc() > 0) {
            return Optional.of(new Observation(key, at, Figure.COLOUR, colour.colourEbc(), ReadingErrors.COLOUR_SD));
        }
        return measured instanceof Report.TemperatureRead read ? temperature(key, at, read, keeping) : Optional.empty();
    }

    private static Optional<Observation> temperature(
            String key, Instant at, Report.TemperatureRead read, Keeping keeping) {
        if (read.spot() == Spot.AIR_ON && keeping == Keeping.HEATED) {
            return Optional.of(new Observation(key, at, Figure.AIR_TEMPERATURE, read.readC(), ReadingErrors.AIR_ON_K));
        }
        if (read.spot().inGrain() && keeping == Keeping.GROWING) {
            return Optional.of(new Observation(key, at, Figure.GRAIN_TEMPERATURE, read.readC(), ReadingErrors.BED_K));
        }
        return Optional.empty();
    }
}
