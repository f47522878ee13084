/**
 * A plan as iCalendar text that updates the person's calendar instead of doubling it.
 *
 * <p>A {@link piecewright.plan.Plan} becomes neutral {@link piecewright.calendar.CalendarEvent}s; the
 * {@link piecewright.calendar.Ledger} gives each its lasting UID, SEQUENCE and LAST-MODIFIED; the
 * {@link piecewright.calendar.IcsWriter} writes them; {@link piecewright.calendar.IcsChecks} reads every file again
 * before it leaves. All of it is pure: no clock, no files, no network.
 */
@NullMarked
package piecewright.calendar;

import org.jspecify.annotations.NullMarked;
