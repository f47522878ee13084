package piecewright.style;

import java.util.Objects;
import piecewright.quantity.HoursRange;

/**
 * The first heap after the steep that a style may lie in until it has chitted evenly. Whether it does is for the search
 * to decide: where the place is cool or the chit lags.
 *
 * @param depthCm depth it is heaped to where no insulated box holds it, cm, more than 0
 * @param warmestCoreC its core never gets warmer than this, °C
 * @param hours how long it lies: low worth heaping for, high never exceeded
 */
public record WetCouchSchedule(double depthCm, double warmestCoreC, HoursRange hours) {
    public WetCouchSchedule {
        Objects.requireNonNull(hours);
        if (!(depthCm > 0)) throw new IllegalArgumentException("depthCm must be above 0: " + depthCm);
        if (!(hours.highHours() > 0)) throw new IllegalArgumentException("hours must end above 0: " + hours);
    }

    /** The same with its core kept so much cooler, K, 0 or more. */
    public WetCouchSchedule coolerByK(double coolerK) {
        return new WetCouchSchedule(depthCm, warmestCoreC - coolerK, hours);
    }
}
