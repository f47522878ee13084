package piecewright.plan;

import piecewright.plan.Simulation.Course;

/** A timetable that was searched for, simulated and found to keep every guard. */
record Draft(Setup setup, Timetable timetable, Course course, Bill bill, double costMinutes) {}
