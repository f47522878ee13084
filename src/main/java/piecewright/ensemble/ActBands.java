package piecewright.ensemble;

import java.util.Objects;
import java.util.Optional;

/**
 * What may be found at one act, in the realities in which it takes place.
 *
 * @param happensFraction share of realities in which it does: a soak too many may be left out
 * @param weighedKg as the scale shows it, its error and that of draining included, kg
 * @param moistureFraction wet basis, share of one
 * @param grainC grain temperature, °C
 * @param acrospireFraction mean acrospire, share of the corn; empty before chitting
 */
public record ActBands(
        String actId,
        double happensFraction,
        TimeBand at,
        Band weighedKg,
        Band moistureFraction,
        Band grainC,
        Optional<Band> acrospireFraction) {
    public ActBands {
        Objects.requireNonNull(actId);
        Objects.requireNonNull(at);
        Objects.requireNonNull(weighedKg);
        Objects.requireNonNull(moistureFraction);
        Objects.requireNonNull(grainC);
        Objects.requireNonNull(acrospireFraction);
    }
}
