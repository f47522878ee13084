/**
 * How sure a plan is: it is followed, with its rules, through many ways things may be.
 *
 * <p><b>Question.</b> Between which figures will each weight, moisture and hour lie eight times in ten, how likely is
 * every act to stay in its window, which act breaks first, and what would help most?
 *
 * <p><b>Method.</b> {@link piecewright.ensemble.Belief} says what is believed of lot and kit, before or after learning.
 * {@link piecewright.ensemble.Members} draws from it by a {@link piecewright.ensemble.Hypercube}.
 * {@link piecewright.ensemble.Rehearsal} follows the plan through one {@link piecewright.ensemble.Reality} as a person
 * would, to the mill: learns from drained weights how fast the lot drinks, soaks once more if they say short, casts when
 * four corns in five chitted, ends growth by the acrospire, packs by the weight, breaks a hot couch by its thermometer,
 * uncovers a stew when the corns are liquid, raises heat when the malt weighs dry enough, ends a roast by its samples;
 * sooner than planned where the grain is warmer than believed, and only when somebody is there.
 * {@link piecewright.ensemble.Ensemble} makes bands of it.
 *
 * <p><b>Left out.</b> Mistakes, illness, power cuts, mould; errors of the equations that no parameter stands for, such
 * as layers of an unturned bed or vapour of a couch. Humidity of the air is taken as told. A stalled couch is not
 * rescued with warm bottles, a heap too wet to pack not spread first.
 *
 * <p><b>How wrong.</b> Given the priors, a test holds the bands to eight in ten. The priors are judgements.
 */
@NullMarked
package piecewright.ensemble;

import org.jspecify.annotations.NullMarked;
