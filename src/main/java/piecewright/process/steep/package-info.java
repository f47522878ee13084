/**
 * Water uptake under water and in air rests, chitting, leaching.
 *
 * <p>Answers how wet a lot is after so many hours in and out of water of some temperature, and how long another soak
 * must be. State: core and outer water, hours of soaking as if at 15 °C, waters used, chitting progress, temperature.
 * Under water the outer layer is full and the core follows by second order, in closed form; in a rest the core drinks
 * the outer layer's film, so the weight stays and the corn gains. Constants are a hand compromise between a remembered
 * table and published weighings; a lot's own rate differs up to 2.4-fold and is worth a test soak. Left out: pH, salts,
 * sizes within a lot, the pile's own warmth in a rest. Within .6 pp of what it was fitted to; one regime of 4 h soaks
 * at 12 °C comes out 3 pp low at a multiplier of 1.
 */
@NullMarked
package piecewright.process.steep;

import org.jspecify.annotations.NullMarked;
