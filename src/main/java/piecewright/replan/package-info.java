/**
 * A piece under way: what its journal says was done, how it stands now, and the plan of the rest. Question answered:
 * where are we, and what moves because of it? Everything is a pure function of plan, journal and instant. Left out:
 * learning how the lot and the kit differ from the usual; here a weighing replaces the forecast, it does not teach it.
 */
@NullMarked
package piecewright.replan;

import org.jspecify.annotations.NullMarked;
