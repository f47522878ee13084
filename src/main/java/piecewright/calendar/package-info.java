/** A plan as iCalendar text. */
@NullMarked
package piecewright.calendar;

import org.jspecify.annotations.NullMarked;
