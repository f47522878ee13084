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
import piecewright.plan.HeatLeft;
import piecewright.plan.Outfit;
import piecewright.plan.Setup;
import piecewright.plan.Simulation;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.UnderWay;
import piecewright.process.PieceState;
import piecewright.process.Surroundings;
import piecewright.process.germination.FloorActs;

/** Lays the acts of an account end to end as stretches, the heater's dial and vents followed. Scratch space. */
final class StretchBuilder {
    private static final Deed NOTHING = (values, before) -> before;
    private static final Passing STILL = values -> (start, atHours, stepHours) -> start;
    /** Judgement: shut vents still leak. */
    private static final double LEAKING_FRACTION = 0.05;

    private final FittedStages stages;
    private final Setup setup;
    private final Instant origin;
    private final List<Stretch> stretches = new ArrayList<>();
    private @Nullable Open open;
    private @Nullable Heating heating;
    private final long roastedLoads;
    private boolean withering;
    private boolean cured;
    private boolean roasted;

    /** The stretch that goes on. */
    private record Open(Instant from, Condition condition, Deed deed, Passing passing, Set<Unknown> moves) {}

    /** What hands do at once, and the unknowns that change it. */
    private record AtOnce(Deed deed, Set<Unknown> moves) {}

    /** A heater with its dial and vents. */
    private record Heating(Heater heater, double dialC, HotAir air) {}

    /** @param done all acts of the account, in time order */
    StretchBuilder(FittedStages stages, Instant origin, List<Visit> done) {
        this.stages = stages;
        this.setup = stages.setup();
        this.origin = origin;
        this.roastedLoads =
                done.stream().filter(visit -> visit.kind() == ActKind.ROAST).count();
    }

    Rerun.Raw raw() {
        Instant first = stretches.get(0).span().from();
        return stages.raw(setup.air().steep().airC(hours(first)));
    }

    /** Whether an act changes weight or temperature at once. */
    static boolean changesAtOnce(ActKind kind) {
        return switch (kind) {
            case FLOOR, WITHER, BREAK, TURN, SPRINKLE, STEW, OFF, DEROOT, ROAST -> true;
            case SOAK, DRAIN, HEAP, LOOK, PACK, CHECK, LOAD, STIR, RAISE, LOWER, CURE -> false;
        };
    }

    /** All stretches until an instant; empty when nothing was soaked. */
    Optional<List<Stretch>> finished(Instant until) {
        if (open == null) return Optional.empty();
        close(until);
        return Optional.of(List.copyOf(stretches));
    }

    /** @param waterKg water sprinkled, kg; empty when nobody said */
    void act(Visit visit, OptionalDouble waterKg) {
        if (open == null && visit.kind() != ActKind.SOAK) return;
        if (withering && UnderWay.bounds(visit.kind())) withering = visit.kind() == ActKind.WITHER;
        Instant at = visit.at();
        switch (visit.kind()) {
            case SOAK -> soak(visit);
            case DRAIN -> begin(at, Water.NONE, NOTHING, stages::rest, stages.restMoves());
            case HEAP ->
                setup.heaping()
                        .ifPresent(heaping -> begin(
                                at, Water.NONE, NOTHING, values -> stages.heap(values, heaping), stages.restMoves()));
            case FLOOR -> begin(at, Water.NONE, turned(at, 0), stages::floor, stages.floorMoves());
            case WITHER -> {
                withering = true;
                begin(at, Water.NONE, turned(at, 0), stages::wither, stages.floorMoves());
            }
            case PACK -> stages.couch().ifPresent(couch -> pack(couch, at));
            case BREAK -> begin(at, Water.NONE, turned(at, 0), stages::cooling, stages.floorMoves());
            case TURN, SPRINKLE -> interrupted(at, turned(at, waterKg.orElse(0)), waterKg.isPresent());
            case STEW ->
                stages.stew().ifPresent(stew -> rest(at, new AtOnce(stew::stewed, stages.ovenMoves(stew.oven()))));
            case LOAD -> heat(at, setup.outfit().drying().dryer(), setup.dryingC(0));
            case RAISE -> {
                int last = setup.style().kiln().ladder().size() - 1;
                dialled(setup.dryingC(Math.min(visit.number(), last)), at);
            }
            case LOWER -> lowered(at);
            case CURE -> cure(at);
            case OFF -> {
                heating = null;
                rest(at, (values, before) -> before.withGrainC(roomC(at)));
            }
            case DEROOT -> rest(at, (values, before) -> derooted(before));
            case ROAST -> roast(at);
            case LOOK, STIR, CHECK -> {}
        }
    }

    private void soak(Visit visit) {
        begin(
                visit.at(),
                Water.GIVEN,
                NOTHING,
                values -> stages.immersion(values, visit.number()),
                stages.immersionMoves());
    }

    private PieceState derooted(PieceState before) {
        return FloorActs.handled(
                FloorActs.derooted(before, setup.grain(), setup.lot().energyFraction()), Simulation.HANDLING_FRACTION);
    }

    /** All loads that were roasted, at the first of them: what is read in between is read of roasted malt. */
    private void roast(Instant at) {
        if (roasted) return;
        roasted = true;
        heating = null;
        stages.roast()
                .ifPresent(roast -> rest(
                        at,
                        new AtOnce(
                                (values, before) -> roast.roasted(values, before, (int) roastedLoads, roomC(at)),
                                stages.ovenMoves(roast.oven()))));
    }

    private double roomC(Instant at) {
        return setup.air().curer().airC(hours(at));
    }

    /** Down to the heat that may be left on; off where there is none. */
    private void lowered(Instant at) {
        if (heating == null) return;
        Heating before = heating;
        OptionalDouble leftC = HeatLeft.leftOnC(setup, cured);
        if (leftC.isPresent()) heat(at, before.heater, leftC.getAsDouble());
        else rest(at, NOTHING);
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
        begin(at, Water.NONE, NOTHING, values -> couch.stage(values, room), couch.moves());
    }

    private void cure(Instant at) {
        cured = true;
        Outfit.Drying drying = setup.outfit().drying();
        heat(at, new Heating(drying.curer(), drying.cureC(), drying.curingAir()));
    }

    private void heat(Instant at, Heater heater, double dialC) {
        heat(at, new Heating(heater, dialC, heater.air()));
    }

    private void heat(Instant at, Heating now) {
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
        rest(at, new AtOnce(deed, Set.of()));
    }

    private void rest(Instant at, AtOnce atOnce) {
        begin(at, Water.NONE, atOnce.deed, STILL, atOnce.moves);
    }

    /** The phase that was going on goes on after an act. */
    private void interrupted(Instant at, Deed deed, boolean watered) {
        Open before = open;
        if (before == null) return;
        begin(at, watered ? Water.GIVEN : Water.NONE, deed, before.passing, before.moves);
    }

    private Deed turned(Instant at, double waterKg) {
        double airC = (withering ? setup.air().wither() : setup.air().floor()).airC(hours(at));
        return (values, before) -> FloorActs.sprinkled(FloorActs.turned(before, airC), waterKg);
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
