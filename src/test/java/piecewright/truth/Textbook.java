package piecewright.truth;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.style.MaltStyle;

/**
 * A fixed timetable for a pale malt, whatever the hour, the weather and the lot: 8 h wet, 8 h dry, twice, a dip of 4 h,
 * cast after 12 h, five days on the floor turned every 12 h, 14 h at 50 °C, 5 at 60, 3 at 70, 3.5 of cure (common
 * practice, no source). Kit, place and amount as the plan of the same household.
 */
final class Textbook {
    private static final double[] STEEP_HOURS = {8, 8, 8, 8, 4, 12};
    private static final int TURNS = 9;

    private final Plan plan;
    private final World world;
    private Instant now;
    private double steepOut;

    private Textbook(PlanRequest request, Plan plan, long seed) {
        this.plan = plan;
        this.now = plan.startsAt();
        this.world = new World(request, plan.outcome().rawGrainKg(), now, new SplittableRandom(seed).split());
    }

    /** How the batch comes out that the household would have planned. */
    static Result malts(PlanRequest request, Plan plan, long seed) {
        return new Textbook(request, plan, seed).follows(request.style());
    }

    private Result follows(MaltStyle style) {
        for (int i = 0; i < STEEP_HOURS.length; i++) {
            does(i % 2 == 0 ? ActKind.SOAK : ActKind.DRAIN, OptionalDouble.empty());
            if (i % 2 == 1) steepOut = world.moisture();
            passes(STEEP_HOURS[i]);
        }
        double chitted = world.corns.chitted();
        does(ActKind.FLOOR, OptionalDouble.empty());
        for (int i = 0; i < TURNS; i++) {
            passes(12);
            does(ActKind.TURN, OptionalDouble.empty());
        }
        passes(12);
        double acrospire = world.corns.acrospire();
        does(ActKind.LOAD, OptionalDouble.of(50));
        for (double setC : new double[] {60, 70}) {
            passes(setC == 60 ? 14 : 5);
            does(ActKind.LOAD, ActKind.RAISE, OptionalDouble.of(setC));
        }
        passes(3);
        does(ActKind.CURE, OptionalDouble.empty());
        passes(3.5);
        does(ActKind.OFF, OptionalDouble.empty());
        double days = Duration.between(plan.startsAt(), now).toHours() / 24.0;
        return new Result(style, steepOut, chitted, acrospire, world.endMoisture(), 0, world.ebc(), 0, 0, days, TURNS);
    }

    private void passes(double hours) {
        now = now.plus(Duration.ofMinutes(Math.round(60 * hours)));
        world.until(now);
    }

    private void does(ActKind kind, OptionalDouble setC) {
        does(kind, kind, setC);
    }

    private void does(ActKind like, ActKind kind, OptionalDouble setC) {
        Optional<Act> planned =
                plan.acts().stream().filter(act -> act.kind() == like).findFirst();
        Act act = planned.orElse(plan.acts().get(0));
        var setting = setC.isPresent() ? act.setting().withSetC(setC.getAsDouble()) : act.setting();
        world.acted(new Act(kind.key(), kind, now, act.work(), act.window(), setting, act.expect(), List.of()));
    }
}
