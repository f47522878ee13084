/**
 * Growth on the floor, its heat, its loss of water and dry matter; sprinkling, turning, withering; the wet couch before it.
 *
 * <p>Answers how far a piece has grown, how warm and how wet it lies between two turnings, and what it lost. State:
 * grain temperature, water, dry matter, chitting progress, growth, rootlet clock. The bed is one lump that loses heat
 * through its depth and surface and dries by a still-air law scaled by what covers it; a heap loses its heat by all faces, or
 * as its box does. Growth is ± 20 % before an
 * acrospire count, ± 10 % after; drying ± 30 %. Left out: layers within a bed, oxygen, mould, sprinkling's chill.
 */
@NullMarked
package piecewright.process.germination;

import org.jspecify.annotations.NullMarked;
