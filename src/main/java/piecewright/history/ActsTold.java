package piecewright.history;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import piecewright.history.Account.Done;
import piecewright.history.Contradiction.NoSuchTime;
import piecewright.history.Contradiction.NotOfTheStyle;
import piecewright.history.Contradiction.OutOfOrder;
import piecewright.history.Contradiction.Time;
import piecewright.history.Contradiction.TooMuchWater;
import piecewright.journal.Entry;
import piecewright.journal.Report;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.HeatSet;
import piecewright.journal.Report.Started;
import piecewright.plan.ActKind;
import piecewright.plan.Timetable.Visit;
import piecewright.style.MaltStyle;

/** The acts a log tells of: first what was written down is named and put in order, then the rest is inferred. */
final class ActsTold {
    /** Judgement: told twice within so long it is the same act: begun and done. */
    private static final Duration SAME = Duration.ofHours(2);

    private final Followed plan;
    private final Times times;
    private final VisitNames names;
    private final RoastLoads loads;
    private final StewParts stew;
    private final Acts known = new Acts();
    private final Map<String, Integer> entryByAct = new HashMap<>();
    private final Map<String, Double> sprinkledKg = new HashMap<>();
    private final Set<String> saysWater = new HashSet<>();
    private final Map<String, Double> workedMinutes = new HashMap<>();
    private final Map<Integer, Fate> fates = new HashMap<>();
    private final List<Contradiction> contradictions = new ArrayList<>();
    private final List<Done> done = new ArrayList<>();
    private Optional<Begun> begun = Optional.empty();

    /** An act whose beginning was written down, and not yet its end. */
    private record Begun(Entry entry, Visit visit) {}

    ActsTold(Followed plan, Times times, List<Entry> entries) {
        this.plan = plan;
        this.times = times;
        this.names = new VisitNames(plan, known);
        this.loads = new RoastLoads(plan.planned(), entries);
        this.stew = new StewParts(plan.style(), plan.planned());
        entries.forEach(this::take);
        infer();
    }

    private void take(Entry entry) {
        Report report = entry.report();
        if (report instanceof Did did) {
            did(entry, did);
        } else if (report instanceof Started started) {
            Told told = told(entry, started.act());
            Optional<Visit> visit = act(told);
            begun = visit.map(one -> new Begun(entry, one));
            if (begun.isPresent() && told.kind() == ActKind.STEW) stew.began(entry.at());
        } else if (report instanceof HeatSet heat) {
            names.actOf(heat).ifPresent(kind -> act(told(entry, kind).withHeat(heat)));
        }
    }

    private void did(Entry entry, Did did) {
        Told told = told(entry, did.act());
        if (did.waterL().isPresent()) told = told.withWaterL(did.waterL().getAsDouble());
        Optional<Begun> before = begun;
        begun = Optional.empty();
        if (before.isPresent()
                && before.get().visit().kind() == told.kind()
                && told.waterL().isEmpty()) {
            double minutes =
                    Duration.between(before.get().entry().at(), entry.at()).toSeconds() / 60.0;
            workedMinutes.merge(before.get().visit().id(), minutes, Double::sum);
            if (told.kind() == ActKind.STEW) stew.ended(entry.at());
            fates.put(entry.number(), Fate.DONE);
            return;
        }
        Optional<Visit> visit = act(told);
        if (visit.isPresent() && told.kind() == ActKind.STEW) stew.said(entry.at());
    }

    private Told told(Entry entry, ActKind kind) {
        ActKind planned = kind == ActKind.SPRINKLE ? ActKind.TURN : kind;
        return new Told(entry, planned).withLoad(loads.of(entry));
    }

    /** Takes in an act; empty where something speaks against it. */
    private Optional<Visit> act(Told told) {
        Entry entry = told.entry();
        Optional<Contradiction> against = against(told);
        if (against.isPresent()) return contradicted(entry, against.get());
        Optional<Visit> named = names.visit(told);
        if (named.isEmpty()) {
            if (told.kind() != ActKind.RAISE) {
                return contradicted(entry, new NotOfTheStyle(entry.number(), entry.at(), told.kind()));
            }
            fates.put(entry.number(), Fate.DONE);
            return Optional.empty();
        }
        Visit visit = named.get();
        Optional<Visit> before = known.of(visit.id());
        boolean again = before.isPresent() && (VisitNames.close(before.get().at(), visit.at(), SAME) || goesOn(visit));
        if (!again) {
            Optional<Visit> later = known.firstFrom(tooLate(visit));
            if (later.isPresent() || before.isPresent()) {
                String after = later.or(() -> before).orElseThrow().id();
                return contradicted(entry, new OutOfOrder(entry.number(), entry.at(), told.kind(), after));
            }
            known.add(visit);
            entryByAct.put(visit.id(), entry.number());
            if (visit.kind() == ActKind.TURN) sprinkledKg.put(visit.id(), 0.0);
        }
        if (told.waterL().isPresent() && visit.kind() == ActKind.TURN) {
            sprinkledKg.merge(visit.id(), told.waterL().getAsDouble(), Double::sum);
            saysWater.add(visit.id());
        }
        fates.put(entry.number(), told.heat().isPresent() ? Fate.SET : Fate.DONE);
        return Optional.of(before.orElse(visit));
    }

    /** Heat that was turned down is turned up again, as often as that happens. */
    private int tooLate(Visit visit) {
        boolean up = visit.kind() == ActKind.RAISE || visit.kind() == ActKind.CURE;
        boolean down = known.last().filter(last -> last.kind() == ActKind.LOWER).isPresent();
        return up && down ? Order.tooLate(known.last().orElseThrow()) : Order.tooLate(visit);
    }

    /** A stew that was interrupted is taken up again until its malt is loaded. */
    private boolean goesOn(Visit visit) {
        return visit.kind() == ActKind.STEW && !known.has(ActKind.LOAD);
    }

    private Optional<Visit> contradicted(Entry entry, Contradiction why) {
        fates.put(entry.number(), Fate.CONTRADICTED);
        contradictions.add(why);
        return Optional.empty();
    }

    private Optional<Contradiction> against(Told told) {
        Entry entry = told.entry();
        if (!isOf(plan.style(), told.kind())) {
            return Optional.of(new NotOfTheStyle(entry.number(), entry.at(), told.kind()));
        }
        boolean canBe = known.isMalt() ? times.canBeWorked(entry.at()) : times.canBeGreen(entry.at());
        if (!canBe) {
            return Optional.of(new NoSuchTime(entry.number(), entry.at(), Time.AFTER_THE_BATCH));
        }
        double mostL = plan.dryKg() * Contradiction.NoSuchWeight.WETTEST_RATIO;
        boolean sprinkled = told.kind() == ActKind.TURN && told.waterL().orElse(0) > mostL;
        return sprinkled
                ? Optional.of(new TooMuchWater(
                        entry.number(), entry.at(), told.waterL().orElse(0), mostL))
                : Optional.empty();
    }

    private static boolean isOf(MaltStyle style, ActKind kind) {
        return switch (kind) {
            case HEAP, LOOK -> style.couches().wet().isPresent();
            case PACK, CHECK, BREAK -> style.couches().hot().isPresent();
            case STEW -> style.oven().stew().isPresent();
            case ROAST -> style.oven().roast().isPresent();
            default -> true;
        };
    }

    private void infer() {
        Inference inference = new Inference(plan, dated(known.visits()));
        for (Visit visit : inference.acts()) {
            boolean inferred = inference.inferred().contains(visit.id());
            Double water = saysWater.contains(visit.id()) ? sprinkledKg.get(visit.id()) : null;
            Double worked = workedMinutes.get(visit.id());
            done.add(new Done(
                    visit,
                    inferred ? Optional.empty() : Optional.ofNullable(entryByAct.get(visit.id())),
                    water == null ? OptionalDouble.empty() : OptionalDouble.of(water),
                    worked == null ? OptionalDouble.empty() : OptionalDouble.of(worked)));
        }
    }

    /** A stew that was interrupted, or told of when it was over, dated as one that was done in one go. */
    private List<Visit> dated(List<Visit> visits) {
        List<Visit> dated = new ArrayList<>(visits);
        for (int i = 0; i < visits.size(); i++) {
            Visit visit = visits.get(i);
            if (visit.kind() != ActKind.STEW) continue;
            boolean loaded = i + 1 < visits.size();
            Instant earliest = i > 0 ? visits.get(i - 1).at() : Instant.MIN;
            Instant latest = loaded ? visits.get(i + 1).at() : times.followed();
            Instant at = stew.inOneGo(visit.at(), earliest, latest, loaded);
            dated.set(i, new Visit(visit.id(), visit.kind(), visit.number(), at));
        }
        return dated;
    }

    List<Done> done() {
        return done;
    }

    /** Water sprinkled at every turning told of, kg; those inferred sprinkle what was planned. */
    Map<String, Double> sprinkledKg() {
        return sprinkledKg;
    }

    Map<Integer, Fate> fates() {
        return fates;
    }

    List<Contradiction> contradictions() {
        return contradictions;
    }
}
