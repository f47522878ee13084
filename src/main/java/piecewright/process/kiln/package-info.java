/**
 * Air, drying bed, curing, roast and stew; colour, enzymes and the DMS precursor along them.
 *
 * <p><b>Question.</b> How long does heat take to dry this piece, how warm is the grain meanwhile, and what colour and
 * enzymes are left?
 *
 * <p><b>State.</b> Moisture, grain temperature, colour, surviving diastatic power, surviving precursor; of the couch only
 * its index, which multiplies the substrate of colour.
 *
 * <p><b>Equations.</b> Bed: R = A (1 - exp(-K / A)), A the water the air can carry to where its line of constant enthalpy
 * meets the grain's equilibrium, K = k m (X - Xe) what the kernels can give, k slowed below 5 % where water is bound.
 * Trays: dT/dt = (set - T) / lag. Colour: {@link piecewright.process.kiln.ColourKinetics}. Enzymes and precursor: first
 * order.
 *
 * <p><b>Parameters.</b> {@link piecewright.process.kiln.KilnParameters}; every default names its source or owns up to
 * being a judgement.
 *
 * <p><b>Left out.</b> Heat to warm grain and kiln, the layers of an unturned bed, heat of sorption, air that goes round
 * more than once, colour that creeps on while a roast cools.
 *
 * <p><b>How wrong.</b> Air-limited hours 15 % where the air flow is known, kernel-limited hours a factor of 1.5, colour a
 * factor of 1.3 kilned to 2 couched, enzymes 15 points. At the small air flows of home kilns grain stays cooler than
 * the air for hours, so colours come out up to a quarter, and couched ones a third, below those of grain at the air's
 * temperature, to which the colour law was fitted.
 */
@NullMarked
package piecewright.process.kiln;

import org.jspecify.annotations.NullMarked;
