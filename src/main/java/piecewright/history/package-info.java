/**
 * One account of what happened to a batch. Question answered: of all that was written down, what was done and when, what
 * must have been done though nobody wrote it down, what was measured, what cannot be true, and what was struck out? The
 * event log is read once, here, beside the plan that was followed; where a batch stands, its re-plan, what it teaches and
 * how it ends all read the same account. Reading never fails, whatever a log holds: an entry that cannot be true is kept,
 * listed and asked about, and nothing is concluded from it. No models: only what holds for any lot and any kit.
 */
@NullMarked
package piecewright.history;

import org.jspecify.annotations.NullMarked;
