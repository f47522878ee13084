/**
 * Keeps calendars outside this program up to date: a live file that a desktop calendar watches, and a collection on a
 * CalDAV server (RFC 4791). Only what we put there is ever changed or removed; a copy that the person edited is never
 * overwritten unless they say so.
 */
@NullMarked
package piecewright.publish;

import org.jspecify.annotations.NullMarked;
