package piecewright.history;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import piecewright.journal.Report.HeatSet;
import piecewright.plan.ActKind;
import piecewright.plan.Timetable.Visit;
import piecewright.style.KilnSchedule.Rung;

/** Finds for each act written down its name in the plan. Scratch space of one reading of a log. */
final class VisitNames {
    /** Judgement: a turning so near a planned one is that one. */
    private static final Duration SAME_TURNING = Duration.ofHours(8);
    /** Judgement: a dial is set this near to a rung, K. */
    private static final double SAME_HEAT_K = 4;

    /** Judgement: nobody gives more soaks than this, one an hour for a day. */
    private static final int MOST_SOAKS = 24;

    private final Followed plan;
    private final Acts known;

    /** @param known the acts told so far; grows meanwhile */
    VisitNames(Followed plan, Acts known) {
        this.plan = plan;
        this.known = known;
    }

    /** The act that setting this heat is, if it is one. */
    Optional<ActKind> actOf(HeatSet heat) {
        if (!known.has(ActKind.LOAD) || known.has(ActKind.CURE) || known.isMalt()) {
            return Optional.empty();
        }
        if (heat.airOnC() >= plan.style().kiln().cureC().lowC() - SAME_HEAT_K) return Optional.of(ActKind.CURE);
        return rung(heat) > known.highest(ActKind.RAISE) ? Optional.of(ActKind.RAISE) : Optional.empty();
    }

    private int rung(HeatSet heat) {
        List<Rung> ladder = ladder();
        int best = 0;
        for (int rung = 1; rung < ladder.size(); rung++) {
            if (Math.abs(ladder.get(rung).airOnC() - heat.airOnC()) <= SAME_HEAT_K) best = rung;
        }
        return best;
    }

    private List<Rung> ladder() {
        return plan.style().kiln().ladder();
    }

    /** The act as the plan calls it; empty for more soaks than anybody gives and more rises of heat than there are. */
    Optional<Visit> visit(Told told) {
        ActKind kind = told.kind();
        Instant at = told.entry().at();
        Optional<Visit> named = told.entry()
                .actId()
                .flatMap(id -> plan.planned().stream()
                        .filter(visit -> visit.kind() == kind && visit.id().equals(id))
                        .findFirst());
        if (named.isPresent()) {
            return Optional.of(new Visit(named.get().id(), kind, named.get().number(), at));
        }
        Optional<Visit> again = turnedUpAgain(kind);
        if (again.isPresent()) {
            return Optional.of(new Visit(again.get().id(), kind, again.get().number(), at));
        }
        int number = switch (kind) {
            case SOAK -> soak(at);
            case DRAIN -> known.soaking() ? known.highest(ActKind.SOAK) : known.highest(ActKind.DRAIN) + 1;
            case RAISE -> told.heat().map(this::rung).orElseGet(this::nextRaise);
            case LOOK, TURN, STIR, LOWER, CHECK -> inner(kind, at);
            case ROAST -> told.load();
            default -> 0;
        };
        boolean tooHot = kind == ActKind.RAISE && number >= ladder().size();
        boolean tooWet = number > MOST_SOAKS && (kind == ActKind.SOAK || kind == ActKind.DRAIN);
        if (tooHot || tooWet) return Optional.empty();
        return Optional.of(new Visit(id(kind, number), kind, number, at));
    }

    /** After heat was turned down, the next planned act of that kind that was not done. */
    private Optional<Visit> turnedUpAgain(ActKind kind) {
        boolean down = known.last().filter(last -> last.kind() == ActKind.LOWER).isPresent();
        if (!down || kind != ActKind.RAISE && kind != ActKind.CURE) return Optional.empty();
        return plan.planned().stream()
                .filter(visit -> visit.kind() == kind && known.of(visit.id()).isEmpty())
                .findFirst();
    }

    /** The next soak; while the grain is under water the same again, unless a planned later one is nearer. */
    private int soak(Instant at) {
        int last = known.highest(ActKind.SOAK);
        if (!known.soaking()) return last + 1;
        Optional<Visit> next = planned(ActKind.SOAK, last + 1);
        Optional<Visit> same = known.of(id(ActKind.SOAK, last));
        boolean nextIsNearer = next.isPresent()
                && same.isPresent()
                && Duration.between(next.get().at(), at)
                                .abs()
                                .compareTo(Duration.between(same.get().at(), at).abs())
                        < 0;
        return nextIsNearer ? last + 1 : last;
    }

    private int nextRaise() {
        int last = known.highest(ActKind.RAISE);
        return plan.planned().stream()
                .filter(visit -> visit.kind() == ActKind.RAISE && visit.number() > last)
                .mapToInt(Visit::number)
                .min()
                .orElse(last + 1);
    }

    /** The number of the planned turning nearest by and not told yet; else the next free one. */
    private int inner(ActKind kind, Instant at) {
        return plan.planned().stream()
                .filter(visit ->
                        visit.kind() == kind && !known.has(kind, visit.number()) && close(visit.at(), at, SAME_TURNING))
                .min(Comparator.comparing(
                        visit -> Duration.between(visit.at(), at).abs()))
                .map(Visit::number)
                .orElseGet(() -> 1 + Math.max(highestPlanned(kind), known.highest(kind)));
    }

    private int highestPlanned(ActKind kind) {
        return plan.planned().stream()
                .filter(visit -> visit.kind() == kind)
                .mapToInt(Visit::number)
                .max()
                .orElse(0);
    }

    private Optional<Visit> planned(ActKind kind, int number) {
        return plan.planned().stream()
                .filter(visit -> visit.kind() == kind && visit.number() == number)
                .findFirst();
    }

    /** As the plan calls it; by the usual name when it stands in no plan. */
    String id(ActKind kind, int number) {
        return planned(kind, number).map(Visit::id).orElseGet(() -> usualId(kind, number));
    }

    /** Whether two instants are so close that they may tell of one act. */
    static boolean close(Instant one, Instant other, Duration within) {
        return Duration.between(one, other).abs().compareTo(within) <= 0;
    }

    private static String usualId(ActKind kind, int number) {
        return switch (kind) {
            case SOAK -> "steep-" + number + ".soak";
            case DRAIN -> "steep-" + number + ".drain";
            case HEAP -> "wetcouch.heap";
            case LOOK -> "wetcouch.look-" + number;
            case FLOOR -> "floor.spread";
            case WITHER -> "floor.wither";
            case TURN, SPRINKLE -> "floor.turn-" + number;
            case PACK -> "couch.pack";
            case CHECK -> "couch.check-" + number;
            case BREAK -> "couch.break";
            case STEW -> "oven.stew";
            case LOAD -> "kiln.load";
            case STIR -> "kiln.stir-" + number;
            case RAISE -> "kiln.raise-" + number;
            case LOWER -> "kiln.lower-" + number;
            case CURE -> "kiln.cure";
            case OFF -> "kiln.off";
            case DEROOT -> "finish.deroot";
            case ROAST -> number == 0 ? "oven.roast" : "oven.roast-" + number;
        };
    }
}
