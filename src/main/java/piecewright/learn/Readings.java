package piecewright.learn;

import java.time.Instant;
import java.util.Optional;
import piecewright.history.Keeping;
import piecewright.house.Scale;
import piecewright.journal.Report;
import piecewright.journal.Spot;
import piecewright.plan.Setup;
import piecewright.process.couch.CouchProbe;

/** What a measured entry says of the piece, and how sure it is. Working memory of one journal. */
final class Readings {
    private final Scale scale;
    private final double dryMatterKg;
    private boolean couchChecked;

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

    private Optional<Observation> temperature(String key, Instant at, Report.TemperatureRead read, Keeping keeping) {
        if (read.spot() == Spot.AIR_ON && keeping == Keeping.HEATED) {
            return Optional.of(new Observation(key, at, Figure.AIR_TEMPERATURE, read.readC(), ReadingErrors.AIR_ON_K));
        }
        if (read.spot().inGrain() && keeping == Keeping.COUCHED) {
            couchChecked |= couchC(read) > ReadingErrors.COUCH_CHECKED_C;
            return couchChecked
                    ? Optional.empty()
                    : Optional.of(
                            new Observation(key, at, Figure.GRAIN_TEMPERATURE, couchC(read), couchSdK(read.spot())));
        }
        if (read.spot().inGrain() && keeping == Keeping.GROWING) {
            return Optional.of(new Observation(key, at, Figure.GRAIN_TEMPERATURE, read.readC(), ReadingErrors.BED_K));
        }
        return Optional.empty();
    }

    /** Mean of the couch behind a reading, °C: somewhere in the grain is taken as the middle. */
    private static double couchC(Report.TemperatureRead read) {
        return switch (read.spot()) {
            case CORE, GRAIN -> CouchProbe.MIDDLE.meanC(read.readC());
            case BOTTOM -> CouchProbe.BOTTOM.meanC(read.readC());
            default -> read.readC() + ReadingErrors.COUCH_RIM_K;
        };
    }

    private static double couchSdK(Spot spot) {
        return spot == Spot.EDGE || spot == Spot.TOP ? ReadingErrors.COUCH_EDGE_K : ReadingErrors.COUCH_K;
    }
}
