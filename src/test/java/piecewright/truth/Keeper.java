package piecewright.truth;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.function.Consumer;
import piecewright.grain.GrainLot;
import piecewright.grain.LotMoisture;
import piecewright.journal.AcrospireCount;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import piecewright.journal.Spot;
import piecewright.learn.Learned;
import piecewright.learn.Lessons;
import piecewright.learn.Taught;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Continuation;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.Planner;
import piecewright.plan.Timetable;
import piecewright.quantity.Moisture;
import piecewright.replan.Batch;
import piecewright.replan.ReplanResult;
import piecewright.replan.ReplanResult.Replanned;
import piecewright.replan.Replanner;

/**
 * A diligent person who follows the program: does each act when it is told, weighs at every drain and turning and before
 * every heat, counts before spreading, withering, packing, stewing and loading and once a day on the floor, writes it
 * down, plans anew, and goes by the new plan.
 */
final class Keeper {
    private static final int MOST_ROUNDS = 160;
    private static final double SAMPLE_SD = 0.003;
    private static final Duration SAME_VISIT = Duration.ofMinutes(15);
    private static final Planner PLANNER = new Planner(ModelParameters.defaults());
    private static final Replanner REPLANNER = new Replanner(new Continuation(ModelParameters.defaults()));

    private static final Lessons LESSONS = new Lessons(ModelParameters.defaults());
    private static final Lessons.Known NOTHING_KNOWN = new Lessons.Known(Learned.nothing(), Learned.nothing());
    private static final UUID ID = new UUID(1, 1);

    private final World world;
    private final SplittableRandom random;
    private final Consumer<String> tale;
    private final Map<ActKind, String> places = new EnumMap<>(ActKind.class);
    private Batch batch;
    private Plan plan;
    private Instant now;
    private Instant counted = Instant.MIN;
    private int done;
    private double steepOut;
    private double chitted = -1;
    private double acrospire = -1;
    private double minutes;

    private Keeper(PlanRequest request, Plan plan, long seed, Consumer<String> tale) {
        this.random = new SplittableRandom(seed);
        this.tale = tale;
        this.plan = plan;
        this.now = plan.startsAt();
        this.world = new World(request, plan.outcome().rawGrainKg(), now, random.split());
        this.batch = new Batch(
                request, plan.outcome().rawGrainKg(), Timetable.of(plan).visits(), places(plan), 0, Journal.empty());
    }

    /** How the batch of a wish comes out; empty when it is refused as stated. */
    static Optional<Result> malts(PlanRequest stated, long seed, Consumer<String> tale) {
        PlanRequest request = sampled(stated, seed);
        return planned(request).map(plan -> new Keeper(request, plan, seed, tale).follows());
    }

    static Optional<Plan> planned(PlanRequest request) {
        return PLANNER.plan(request).match(made -> Optional.of(made.plan()), not -> Optional.empty());
    }

    /** The wish after a sample of the lot was crushed and dried through, as the program asks of a lot guessed at. */
    private static PlanRequest sampled(PlanRequest stated, long seed) {
        GrainLot lot = stated.lot();
        LotMoisture guess = lot.moisture();
        if (guess.sdFraction() <= SAMPLE_SD) return stated;
        double off = guess.sdFraction() * Hidden.normal(new SplittableRandom(seed + 31));
        double fraction = Math.max(0.08, guess.moisture().wetBasisFraction() + off);
        return stated.withLot(new GrainLot(
                lot.name(),
                lot.kind(),
                new LotMoisture(new Moisture(fraction), SAMPLE_SD, true),
                lot.dishes(),
                lot.size(),
                lot.treatment(),
                lot.learned()));
    }

    private Map<ActKind, String> places(Plan anew) {
        for (Act act : anew.acts()) act.setting().place().ifPresent(place -> places.put(act.kind(), place));
        return Map.copyOf(places);
    }

    private Result follows() {
        Instant began = now;
        for (int round = 0; round < MOST_ROUNDS && done < plan.acts().size(); round++) {
            Act next = plan.acts().get(done);
            if (next.startsAt().isAfter(now)) now = next.startsAt();
            world.until(now);
            if (looksBefore(next)) {
                replans();
                Act then = plan.acts().get(done);
                if (then.startsAt().isAfter(now.plus(SAME_VISIT)) || then.kind() != next.kind()) {
                    tale.accept(now + " looked at " + next.id() + ": waits, " + then.id() + " " + then.startsAt());
                    minutes += 5;
                    continue;
                }
                next = then;
            }
            does(next);
        }
        if (done < plan.acts().size()) throw new AssertionError("no end after " + MOST_ROUNDS + " rounds");
        return new Result(
                batch.request().style(),
                steepOut,
                chitted,
                acrospire,
                world.endMoisture(),
                world.couchPeakC(),
                world.ebc(),
                plan.outcome().finished().kiln().colourEbc(),
                minutes,
                Duration.between(began, now).toMinutes() / 1440.0,
                done);
    }

    /** Measures what decides the act; whether anything was measured. */
    private boolean looksBefore(Act act) {
        switch (act.kind()) {
            case FLOOR -> {
                tells(new Report.ChittedCounted(world.corns.chittedAmong(100, random), 100));
                weighs();
            }
            case WITHER, PACK, STEW -> countsAndWeighs();
            case LOAD -> {
                if (acrospire < 0) countsAndWeighs();
                else weighs();
            }
            case RAISE, CURE, OFF -> weighs();
            case BREAK, CHECK -> tells(new Report.TemperatureRead(world.readC(), Spot.CORE));
            default -> {
                return false;
            }
        }
        return true;
    }

    private void countsAndWeighs() {
        tells(new Report.AcrospiresCounted(new AcrospireCount(world.corns.sorted(50, random))));
        counted = now;
        weighs();
    }

    private void weighs() {
        tells(Report.Weighed.net(world.weighed()));
    }

    private void does(Act act) {
        notes(act);
        Duration took = act.work();
        if (act.kind() == ActKind.ROAST) took = world.roasted(act);
        else world.acted(act);
        if (act.kind() == ActKind.DRAIN) steepOut = world.moisture();
        if (act.kind() == ActKind.DRAIN || act.kind() == ActKind.TURN) weighs();
        boolean floor = act.kind() == ActKind.TURN || act.kind() == ActKind.SPRINKLE;
        if (floor
                && (counted.equals(Instant.MIN)
                        || Duration.between(counted, now).toHours() >= 20)) {
            tells(new Report.AcrospiresCounted(new AcrospireCount(world.corns.sorted(50, random))));
            tells(new Report.TemperatureRead(world.readC(), Spot.CORE));
            counted = now;
        }
        tells(
                act.kind() == ActKind.SPRINKLE
                        ? new Report.Did(ActKind.SPRINKLE, act.setting().waterL())
                        : Report.Did.of(act.kind()),
                Optional.of(act.id()));
        tale.accept(String.format(
                java.util.Locale.ROOT,
                "%s %s M %.1f (told %.1f) acro %.2f (told %.2f) chit %.2f %.1f °C",
                now,
                act.id(),
                100 * world.moisture(),
                100 * act.expect().moisture().wetBasisFraction(),
                world.corns.acrospire(),
                act.expect().acrospireFraction().orElse(0),
                world.corns.chitted(),
                world.grainC()));
        done++;
        minutes += act.work().toMinutes();
        now = now.plus(took.compareTo(Duration.ofMinutes(1)) < 0 ? Duration.ofMinutes(1) : took);
        world.until(now);
        if (done < plan.acts().size()) replans();
    }

    /** What the batch will be judged by. */
    private void notes(Act act) {
        if (act.kind() == ActKind.FLOOR) chitted = world.corns.chitted();
        boolean ends = act.kind() == ActKind.PACK || act.kind() == ActKind.STEW || act.kind() == ActKind.LOAD;
        if (ends && acrospire < 0) acrospire = world.corns.acrospire();
    }

    private void tells(Report report) {
        tells(report, Optional.empty());
    }

    private void tells(Report report, Optional<String> act) {
        Journal journal = batch.journal();
        batch = batch.withJournal(journal.with(new Entry(journal.nextNumber(), now, now, act, report)));
    }

    /** The wish with what the batch itself has taught of lot and kit so far, as the program takes it. */
    private PlanRequest learned() {
        Lessons.Batch told = new Lessons.Batch(ID, batch.request(), batch.grainKg(), batch.journal());
        Lessons.Outcome outcome = LESSONS.of(told, NOTHING_KNOWN, Instant.EPOCH);
        return outcome instanceof Lessons.Outcome.Taught taught
                ? Taught.soFar(batch.request(), taught)
                : batch.request();
    }

    private void replans() {
        ReplanResult result = REPLANNER.replan(batch.withRequest(learned()), List.of(), now);
        Replanned anew = result.match(one -> one, not -> {
            throw new AssertionError("no plan of the rest at " + now + ": " + not.obstacles());
        });
        plan = anew.plan();
        StringBuilder next = new StringBuilder("    now " + now + " next");
        for (Act act : plan.acts().subList(done, Math.min(plan.acts().size(), done + 3))) {
            next.append(' ').append(act.id()).append(' ').append(act.startsAt());
        }
        tale.accept(next.append(' ').append(anew.amends().lost()).toString());
        batch = new Batch(
                batch.request(),
                batch.grainKg(),
                Timetable.of(plan).visits(),
                places(plan),
                batch.journal().nextNumber() - 1,
                batch.journal());
    }
}
