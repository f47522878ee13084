/**
 * What batches teach about a lot and a kit.
 *
 * <p>Answers how fast this lot drinks and grows, how leaky this box is, how much air this kiln moves, how far this oven's
 * dial is off, and how sure that is. One estimator for all of it: the most probable values of some unknowns, given what
 * was believed of them and what was observed, by least squares over logarithms (temperatures: kelvin), with the
 * covariance of the same fit. The forward model is the reference stages along the acts as they really happened.
 * Observations that physics forbids, or that nothing believed can explain, are questioned and teach nothing.
 *
 * <p>Left out: that unknowns drift between batches, errors of the models other than those the unknowns stand for, more
 * than one explanation at a time. The intervals are those of a normal distribution in the logarithm; their coverage is
 * tested on made-up batches whose truth is known, not on real ones.
 */
@NullMarked
package piecewright.learn;

import org.jspecify.annotations.NullMarked;
