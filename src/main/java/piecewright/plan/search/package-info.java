/**
 * Where every act falls: a best-first search over labels (stop, instant, state, cost).
 *
 * <p>Question answered: at which instants should each act of one piece happen, so that every act lies in somebody's
 * hours, no guard is broken and the cost is least? {@link piecewright.plan.search.Route} says what can follow what,
 * {@link piecewright.plan.Rules} what it costs, {@link piecewright.plan.search.Bound} what the rest must cost at
 * least, {@link piecewright.plan.search.BestFirst} walks.
 *
 * <p>Approximations, each measured in tests: instants on a grid; grain state merged in buckets; phases by the quick
 * forms of the same equations at 15-minute steps. The winner is run again by the reference stages.
 */
@NullMarked
package piecewright.plan.search;

import org.jspecify.annotations.NullMarked;
