package piecewright.learn;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import piecewright.belief.Unknown;
import piecewright.history.Keeping;
import piecewright.house.Heater;
import piecewright.house.Heater.HotAir;
import piecewright.journal.Sign;
import piecewright.learn.Stretch.Condition;
import piecewright.learn.Stretch.Deed;
import piecewright.learn.Stretch.Dial;
import piecewright.learn.Stretch.Passing;
import piecewright.learn.Stretch.Span;
import piecewright.learn.Stretch.Water;
import piecewright.plan.ActKind;
import piecewright.plan.Outfit;
import piecewright.plan.Setup;
import piecewright.plan.Simulation;
import piecewright.process.Surroundings;
import piecewright.process.germination.FloorActs;

/** Lays acts end to end as stretches, the heater's dial and vents followed. Working memory of one journal. */
final class Doings {
    private static final Deed NOTHING = before -> before;
    private static final Passing STILL = values -> (start, atHours, stepHours) -> start;
    /** Judgement: shut vents still leak. */
    private static final double LEAKING_FRACTION = 0.05;

    private final FittedStages stages;
    private final Setup setup;
    private final Instant origin;
    private final List<Stretch> stretches = new ArrayList<>();
    private @Nullable Open open;
    private @Nullable Heating heating;
    private Keeping keeping = Keeping.STEEPING;
    private int soaks;
    private int raises;

    /** The stretch that goes on. */
    private record Open(Instant from, Condition condition, Deed deed, Passing passing, Set<Unknown> moves) {}

    /** A heater with its dial and vents. */
    private record Heating(Heater heater, double dialC, HotAir air) {}

    Doings(FittedStages stages, Instant origin) {
        this.stages = stages;
        this.setup = stages.setup();
        this.origin = origin;
    }

    boolean begun() {
        return open != null;
    }

    Keeping keeping() {
        return keeping;
    }

    Rerun.Raw raw() {
        Instant first = stretches.get(0).span().from();
        return stages.raw(setup.air().steep().airC(hours(first)));
    }

    /** Whether an act that changes the weight at once was done at that instant: what is read then was read after it. */
    boolean actsAt(Instant at) {
        return open != null && open.from.equals(at) && open.deed != NOTHING;
    }

    /** All stretches until an instant; empty when nothing was soaked. */
    Optional<List<Stretch>> finished(Instant until) {
        if (open == null) return Optional.empty();
        close(until);
        return Optional.of(List.copyOf(stretches));
    }

    void act(ActKind kind, Instant at, OptionalDouble waterL) {
        if (open == null && kind != ActKind.SOAK) return;
        switch (kind) {
            case SOAK -> {
                int number = ++soaks;
                begin(at, Water.GIVEN, NOTHING, values -> stages.immersion(values, number), stages.immersionMoves());
            }
            case DRAIN -> begin(at, Water.NONE, NOTHING, stages::rest, stages.restMoves());
            case HEAP ->
                setup.heaping()
                        .ifPresent(heaping -> begin(
                                at, Water.NONE, NOTHING, values -> stages.heap(values, heaping), stages.restMoves()));
            case FLOOR -> {
                keeping = Keeping.GROWING;
                begin(at, Water.NONE, turned(at, 0), stages::floor, stages.floorMoves());
            }
            case WITHER -> begin(at, Water.NONE, turned(at, 0), stages::wither, stages.floorMoves());
            case PACK -> stages.couch().ifPresent(couch -> pack(couch, at));
            case BREAK -> {
                keeping = Keeping.GROWING;
                begin(at, Water.NONE, turned(at, 0), stages::cooling, stages.floorMoves());
            }
            case TURN, SPRINKLE -> interrupted(at, turned(at, waterL.orElse(0)), waterL.isPresent());
            case LOAD -> heat(at, setup.outfit().drying().dryer(), setup.dryingC(0));
            case RAISE -> {
                int last = setup.style().kiln().ladder().size() - 1;
                raises = Math.min(raises + 1, last);
                dialled(setup.dryingC(raises), at);
            }
            case CURE -> cure(at);
            case OFF -> {
                keeping = Keeping.DONE;
                heating = null;
                rest(at, before -> before.withGrainC(setup.air().curer().airC(hours(at))));
            }
            case DEROOT ->
                rest(
                        at,
                        before -> FloorActs.handled(
                                FloorActs.derooted(
                                        before, setup.grain(), setup.lot().energyFraction()),
                                Simulation.HANDLING_FRACTION));
            default -> {}
        }
    }

    /** The dial was set; means nothing while nothing heats. */
    void dialled(double dialC, Instant at) {
        if (heating != null) heat(at, new Heating(heating.heater, dialC, heating.air));
    }

    /** The vents were set, 0 shut to 1 open. */
    void vented(double openFraction, Instant at) {
        if (heating == null) return;
        HotAir stated = heating.heater.air();
        double share = Math.max(LEAKING_FRACTION, openFraction);
        HotAir air = stated.withAirFlowM3PerHour(stated.airFlowM3PerHour() * share);
        heat(at, new Heating(heating.heater, heating.dialC, air));
    }

    /** A power cut leaves the bed as it is until the power is back. */
    void sign(Sign sign, Instant at) {
        if (heating == null) return;
        if (sign == Sign.POWER_OUT) rest(at, NOTHING);
        if (sign == Sign.POWER_BACK) heat(at, heating);
    }

    private void pack(FittedCouch couch, Instant at) {
        Surroundings room = setup.couching().orElseThrow().air();
        keeping = Keeping.COUCHED;
        begin(at, Water.NONE, NOTHING, values -> couch.stage(values, room), couch.moves());
    }

    private void cure(Instant at) {
        Outfit.Drying drying = setup.outfit().drying();
        heat(at, new Heating(drying.curer(), drying.cureC(), drying.curingAir()));
    }

    private void heat(Instant at, Heater heater, double dialC) {
        heat(at, new Heating(heater, dialC, heater.air()));
    }

    private void heat(Instant at, Heating now) {
        keeping = Keeping.HEATED;
        heating = now;
        close(at);
        Condition condition = new Condition(Water.NONE, Optional.of(new Dial(now.heater.name(), now.dialC)));
        Passing passing = values -> stages.kiln(values, now.heater, now.dialC, now.air);
        open = new Open(at, condition, NOTHING, passing, stages.kilnMoves(now.heater));
    }

    private void begin(Instant at, Water water, Deed deed, Passing passing, Set<Unknown> moves) {
        close(at);
        open = new Open(at, new Condition(water, Optional.empty()), deed, passing, moves);
    }

    private void rest(Instant at, Deed deed) {
        begin(at, Water.NONE, deed, STILL, Set.of());
    }

    /** The phase that was going on goes on after an act. */
    private void interrupted(Instant at, Deed deed, boolean watered) {
        Open before = open;
        if (before == null) return;
        begin(at, watered ? Water.GIVEN : Water.NONE, deed, before.passing, before.moves);
    }

    private Deed turned(Instant at, double waterKg) {
        double airC = setup.air().floor().airC(hours(at));
        return before -> FloorActs.sprinkled(FloorActs.turned(before, airC), waterKg);
    }

    private void close(Instant at) {
        Open ending = open;
        if (ending == null) return;
        Instant until = at.isBefore(ending.from) ? ending.from : at;
        stretches.add(
                new Stretch(new Span(ending.from, until), ending.condition, ending.deed, ending.passing, ending.moves));
    }

    private double hours(Instant at) {
        return Duration.between(origin, at).toMillis() / 3_600_000.0;
    }
}
