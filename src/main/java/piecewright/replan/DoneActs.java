package piecewright.replan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import piecewright.journal.Entry;
import piecewright.journal.Report.HeatSet;
import piecewright.plan.ActKind;
import piecewright.plan.Timetable;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.UnderWay;
import piecewright.style.KilnSchedule.Rung;
import piecewright.style.MaltStyle;

/** Finds for each act told of its name in the plan. Scratch space of one reading of a journal. */
final class DoneActs {
    /** Judgement: told twice within so long it is the same act: begun and done. */
    private static final Duration SAME = Duration.ofHours(2);
    /** Judgement: a turning so near a planned one is that one. */
    private static final Duration SAME_TURNING = Duration.ofHours(8);
    /** Judgement: a dial is set this near to a rung, K. */
    private static final double SAME_HEAT_K = 4;

    private static final int HEAPED = 98;
    private static final int COUCH_BROKEN = 103;
    private static final int LOADED = 110;
    private static final int CURES = 200;

    private final MaltStyle style;
    private final List<Visit> planned;
    private final List<Visit> visits = new ArrayList<>();
    private final Map<String, Integer> entryByAct = new HashMap<>();
    private final List<String> assumed = new ArrayList<>();
    private String lastId = "";

    DoneActs(MaltStyle style, List<Visit> planned) {
        this.style = style;
        this.planned = planned;
    }

    boolean isEmpty() {
        return visits.isEmpty();
    }

    /** Whether the piece lies in its hot couch. */
    boolean couched() {
        return visits.stream().anyMatch(visit -> visit.kind() == ActKind.PACK)
                && visits.stream().noneMatch(visit -> rank(visit) >= COUCH_BROKEN);
    }

    /** Name of the act told last. */
    String lastId() {
        return lastId;
    }

    List<Visit> visits() {
        return visits;
    }

    Map<String, Integer> entryByAct() {
        return entryByAct;
    }

    List<String> assumed() {
        return assumed;
    }

    /** Takes in an act; the later act that cannot have been before it, if there is one. */
    Optional<Visit> add(Entry entry, ActKind kind) {
        Visit visit = visit(entry, kind);
        lastId = visit.id();
        boolean again = visits.stream()
                .anyMatch(known -> known.id().equals(visit.id()) && Chronicle.close(known.at(), visit.at(), SAME));
        if (again) return Optional.empty();
        Optional<Visit> later =
                visits.stream().filter(known -> rank(known) >= tooLate(visit)).findFirst();
        if (later.isPresent()) return later;
        assumeBefore(visit);
        visits.add(visit);
        entryByAct.put(visit.id(), entry.number());
        return Optional.empty();
    }

    /** The act that setting this heat is, if it is one. */
    Optional<ActKind> actOf(HeatSet heat) {
        boolean loaded = visits.stream().anyMatch(visit -> visit.kind() == ActKind.LOAD);
        boolean cures = visits.stream().anyMatch(visit -> visit.kind() == ActKind.CURE);
        if (!loaded || cures) return Optional.empty();
        if (heat.airOnC() >= style.kiln().cureC().lowC() - SAME_HEAT_K) return Optional.of(ActKind.CURE);
        return rung(heat) > highest(ActKind.RAISE, visits) ? Optional.of(ActKind.RAISE) : Optional.empty();
    }

    private int rung(HeatSet heat) {
        List<Rung> ladder = style.kiln().ladder();
        int best = 0;
        for (int rung = 1; rung < ladder.size(); rung++) {
            if (Math.abs(ladder.get(rung).airOnC() - heat.airOnC()) <= SAME_HEAT_K) best = rung;
        }
        return best;
    }

    private Visit visit(Entry entry, ActKind told) {
        ActKind kind = told == ActKind.SPRINKLE ? ActKind.TURN : told;
        Optional<String> named = entry.actId().filter(id -> kindOf(id) == kind);
        if (named.isPresent()) {
            return new Visit(named.get(), kind, Timetable.numberIn(named.get()), entry.at());
        }
        int number = switch (kind) {
            case SOAK -> highest(ActKind.SOAK, visits) + (soaks() ? 0 : 1);
            case DRAIN -> soaks() ? highest(ActKind.SOAK, visits) : highest(ActKind.DRAIN, visits) + 1;
            case RAISE -> entry.report() instanceof HeatSet heat ? rung(heat) : nextRaise();
            case LOOK, TURN, STIR, CHECK -> inner(kind, entry.at());
            default -> 0;
        };
        return new Visit(id(kind, number), kind, number, entry.at());
    }

    private boolean soaks() {
        return highest(ActKind.SOAK, visits) > highest(ActKind.DRAIN, visits);
    }

    private int nextRaise() {
        int last = highest(ActKind.RAISE, visits);
        return planned.stream()
                .filter(visit -> visit.kind() == ActKind.RAISE && visit.number() > last)
                .mapToInt(Visit::number)
                .min()
                .orElse(last + 1);
    }

    /** The number of the planned turning nearest by and not told yet; else the next free one. */
    private int inner(ActKind kind, Instant at) {
        Set<Integer> told = new HashSet<>();
        visits.stream().filter(visit -> visit.kind() == kind).forEach(visit -> told.add(visit.number()));
        return planned.stream()
                .filter(visit -> visit.kind() == kind
                        && !told.contains(visit.number())
                        && Chronicle.close(visit.at(), at, SAME_TURNING))
                .min(Comparator.comparing(
                        visit -> Duration.between(visit.at(), at).abs()))
                .map(Visit::number)
                .orElseGet(() -> 1 + Math.max(highest(kind, planned), highest(kind, visits)));
    }

    /** Acts planned before this one that nobody told of were done as planned; those that may be left out only in time. */
    private void assumeBefore(Visit visit) {
        for (Visit plan : planned) {
            boolean known = visits.stream().anyMatch(one -> one.id().equals(plan.id()));
            boolean before = rank(plan) < rank(visit) || !bounds(visit) && !bounds(plan) && rank(plan) == rank(visit);
            Instant latest = visits.isEmpty()
                    ? Instant.MIN
                    : visits.get(visits.size() - 1).at();
            if (known
                    || !before
                    || plan.id().equals(visit.id())
                    || plan.at().isBefore(latest) && !mustBe(plan, visit)) {
                continue;
            }
            boolean inTime = plan.at().isBefore(visit.at());
            if (!inTime && !mustBe(plan, visit)) continue;
            Instant at = inTime ? plan.at() : visit.at().minus(Duration.ofMinutes(1));
            visits.add(new Visit(plan.id(), plan.kind(), plan.number(), at.isBefore(latest) ? latest : at));
            assumed.add(plan.id());
        }
        for (Visit missing : without(visit)) {
            visits.add(missing);
            assumed.add(missing.id());
        }
    }

    /** Whether the second act cannot have been without the first. */
    private boolean mustBe(Visit first, Visit second) {
        boolean soaked = visits.stream().anyMatch(one -> one.kind() == ActKind.SOAK && one.number() == first.number());
        return switch (first.kind()) {
            case SOAK -> second.kind() == ActKind.DRAIN ? first.number() == second.number() : first.number() == 1;
            case DRAIN -> soaked || first.number() == 1;
            case FLOOR, LOAD, CURE, OFF -> true;
            default -> false;
        };
    }

    /** The soak of a drain that stood in no plan. */
    private List<Visit> without(Visit visit) {
        boolean alone = visit.kind() == ActKind.DRAIN
                && visits.stream().noneMatch(one -> one.kind() == ActKind.SOAK && one.number() == visit.number());
        return alone
                ? List.of(new Visit(
                        id(ActKind.SOAK, visit.number()),
                        ActKind.SOAK,
                        visit.number(),
                        visit.at().minus(Duration.ofMinutes(1))))
                : List.of();
    }

    /** The rank from which on an act can have been only after this one. */
    private static int tooLate(Visit visit) {
        return switch (visit.kind()) {
            case TURN, SPRINKLE -> LOADED;
            case LOOK -> HEAPED + 1;
            case CHECK -> COUCH_BROKEN;
            case STIR -> CURES;
            default -> bounds(visit) ? rank(visit) : 0;
        };
    }

    private static boolean bounds(Visit visit) {
        return UnderWay.bounds(visit.kind());
    }

    /** Acts of a lower rank come first; turnings share the rank of the act that laid the bed. */
    private static int rank(Visit visit) {
        int number = visit.number();
        return switch (visit.kind()) {
            case SOAK -> 2 * number;
            case DRAIN -> 2 * number + 1;
            case HEAP, LOOK -> HEAPED;
            case FLOOR -> 100;
            case TURN, SPRINKLE -> 100;
            case WITHER -> 101;
            case PACK, CHECK -> 102;
            case BREAK -> COUCH_BROKEN;
            case STEW -> 104;
            case LOAD, STIR -> LOADED;
            case RAISE -> LOADED + number;
            case LOWER -> LOADED;
            case CURE -> CURES;
            case OFF -> CURES + 1;
            case DEROOT -> CURES + 2;
            case ROAST -> CURES + 3 + number;
        };
    }

    private static int highest(ActKind kind, List<Visit> visits) {
        return visits.stream()
                .filter(visit -> visit.kind() == kind)
                .mapToInt(Visit::number)
                .max()
                .orElse(0);
    }

    private static ActKind kindOf(String id) {
        String word = id.substring(id.indexOf('.') + 1).replaceAll("-[0-9]+$|-stewed$", "");
        return switch (word) {
            case "spread" -> ActKind.FLOOR;
            default -> ActKind.valueOf(word.toUpperCase(java.util.Locale.ROOT));
        };
    }

    /** As the plan calls it; by the usual name when it stands in no plan. */
    private String id(ActKind kind, int number) {
        return planned.stream()
                .filter(visit -> visit.kind() == kind && visit.number() == number)
                .map(Visit::id)
                .findFirst()
                .orElseGet(() -> usualId(kind, number));
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
