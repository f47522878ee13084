package piecewright.ensemble;

import piecewright.plan.Timetable.Visit;
import piecewright.process.PieceState;

/**
 * What was found at an act in one reality.
 *
 * @param minute after the origin
 * @param found the piece as the act begins; after it for the last act
 * @param weighedKg what the scale showed, kg
 * @param meanC mean grain temperature since the act before, °C
 */
record Met(Visit visit, int minute, PieceState found, double weighedKg, double meanC) {}
