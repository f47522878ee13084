/**
 * How sure what is known of a lot and of kit is: one table of spreads, one joint normal of means and covariance.
 *
 * <p>Each {@link piecewright.belief.Trait} of a lot, a place, a box or a heater is normal on its own axis, the logarithm
 * where it is positive. {@link piecewright.belief.Priors} says what is believed before anything was used; the estimator
 * of {@code learn} makes a posterior of it; files keep that with its covariance; gates, bands, draws and the ± of where
 * a batch stands all ask it. What was never observed keeps the spread of its prior.
 */
@NullMarked
package piecewright.belief;

import org.jspecify.annotations.NullMarked;
