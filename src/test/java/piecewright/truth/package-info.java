/**
 * Another reality, and a diligent person in it: batches are planned, done, weighed, counted, recorded and planned anew
 * act by act. Its equations and numbers are its own; of the program it knows houses, lots, styles and acts, no stage.
 * What it draws (lot, weather, kit) lies hidden from the planner. Not to be tuned to the planner.
 */
@NullMarked
package piecewright.truth;

import org.jspecify.annotations.NullMarked;
