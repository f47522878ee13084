package piecewright.plan.search;

import java.util.function.Consumer;
import piecewright.plan.HeapRules;
import piecewright.plan.Rule;
import piecewright.plan.Rules;
import piecewright.plan.Setup;
import piecewright.process.GrainMass;
import piecewright.process.steep.Bath;
import piecewright.process.steep.Standing;
import piecewright.process.steep.Wetting;

/** What can follow a soak or a drain. */
final class SteepLegs {
    private final Space space;
    private final Setup setup;
    private final double ripeChitRatio;
    private final SteepRates rates;

    SteepLegs(Space space) {
        this.space = space;
        this.setup = space.setup();
        this.ripeChitRatio = ripeChitRatio(space);
        this.rates = space.forms().steep();
    }

    /** χ at which the piece is ripe to cast. */
    double ripeChitRatio() {
        return ripeChitRatio;
    }

    private static double ripeChitRatio(Space space) {
        double low = 0.1;
        double high = 5;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            boolean ripe =
                    space.rules().ripe(space.setup().models().metabolism().chittedFraction(middle));
            if (ripe) high = middle;
            else low = middle;
        }
        return high;
    }

    /** Every drain that can end the immersion begun at this label. */
    void fromSoak(Label from, Consumer<Label> sink) {
        TimeGrid grid = space.grid();
        int immersion = space.stops().number(from.stop());
        int drain = space.stops().drain(immersion);
        int start = grid.minute(from.at());
        SoakWalk walk = new SoakWalk(soaking(immersion, from.grain()), immersion, from.grain(), start);
        int end = grid.firstAtOrAfter(start + (int) (60 * Rules.longestImmersionHours(immersion)) + 1);
        for (int at = grid.nextCoarse(from.at() + 1); at < end; at = grid.nextCoarse(at + 1)) {
            if (!space.canBegin(drain, at)) continue;
            walk.to(grid.minute(at));
            Grain drained = walk.grain();
            double wets = immersion == 1 ? space.rules().firstSoakWetsEnough(drained.moistureFraction()) : 0;
            double cost = space.charged(
                            Rule.SOAK_LENGTH, space.rules().immersionEndsInTime(immersion, walk.hours(), walk.meanC()))
                    + space.charged(
                            Rule.CHITTED_UNDER_WATER,
                            space.rules().chittedGrainNeedsAir(walk.chittedHours(), walk.meanC()))
                    + space.charged(Rule.FIRST_SOAK_WETNESS, wets);
            space.arrive(from, drain, at, drained, cost, sink);
        }
    }

    /** Every next soak and every casting that can end the rest begun at this label. */
    void fromDrain(Label from, Consumer<Label> sink) {
        TimeGrid grid = space.grid();
        Stops stops = space.stops();
        int immersion = stops.number(from.stop());
        boolean another = immersion < stops.immersions();
        double outCost = immersion >= setup.style().steep().fewestImmersions()
                ? space.rules().steepOutMoisture(from.grain().moistureFraction())
                : Double.POSITIVE_INFINITY;
        int start = grid.minute(from.at());
        RestWalk walk = new RestWalk(resting(from.grain()), from.grain(), start, ripeChitRatio);
        int end = grid.firstAtOrAfter(start + (int) (60 * space.rules().longestLastRestHours()) + 1);
        for (int at = grid.nextCoarse(from.at() + 1); at < end; at = grid.nextCoarse(at + 1)) {
            boolean soaks = another && space.canBegin(stops.soak(immersion + 1), at);
            boolean ends = outCost < Double.POSITIVE_INFINITY;
            boolean casts = ends && space.canBegin(stops.floor(), at);
            boolean heaps = ends && heaps(grid.minute(at) - start) && space.canBegin(stops.heap(), at);
            if (!soaks && !casts && !heaps) continue;
            walk.to(grid.minute(at));
            if (soaks) {
                double cost =
                        space.charged(Rule.REST_LENGTH, space.rules().restLastsItsTime(walk.hours(), walk.meanC()));
                space.arrive(from, stops.soak(immersion + 1), at, walk.grain(), cost, sink);
            }
            if (casts) {
                double cost = space.charged(Rule.STEEP_OUT_MOISTURE, outCost) + castingCost(walk);
                space.arrive(from, stops.floor(), at, walk.grain(), cost, sink);
            }
            if (heaps && walk.chitRatio() < ripeChitRatio) {
                double cost = space.charged(Rule.STEEP_OUT_MOISTURE, outCost);
                space.arrive(from, stops.heap(), at, walk.grain(), cost, sink);
            }
        }
    }

    /** Whether grain drained so long ago can go into a wet couch that would do it good. */
    private boolean heaps(int restedMinutes) {
        return space.heapHelps()
                && restedMinutes >= 60 * Rules.LAST_REST_SHORTEST_HOURS
                && restedMinutes <= 60 * HeapRules.LATEST_HEAP_HOURS;
    }

    private double castingCost(RestWalk walk) {
        boolean early = walk.chitRatio() < ripeChitRatio || walk.hours() < Rules.LAST_REST_SHORTEST_HOURS;
        boolean late = walk.growthRatio() > Rules.CAST_GROWTH_RATIO;
        if (early || late) return Double.POSITIVE_INFINITY;
        return space.charged(Rule.CASTING, space.rules().castsSoonAfterRipe(walk.ripeHours(), walk.meanC()))
                + space.charged(Rule.REST_LENGTH, space.rules().lastRestLasts(walk.hours(), walk.meanC()));
    }

    private SoakWalk.Setting soaking(int immersion, Grain grain) {
        GrainMass mass = mass(grain);
        Bath bath = new Bath(setup.fillC(), setup.outfit().soaking().waterL(immersion));
        double startC = Wetting.mixedC(mass, grain.grainC(), bath);
        return setting(Standing.BUCKET, startC, bath.waterL() + Wetting.grainL(mass));
    }

    private SoakWalk.Setting resting(Grain grain) {
        return setting(setup.restStanding(), grain.grainC(), Wetting.grainL(mass(grain)));
    }

    private SoakWalk.Setting setting(Standing standing, double startC, double volumeL) {
        double relaxHours = setup.models().steep().parameters().warming().hours(standing, volumeL);
        return new SoakWalk.Setting(rates, startC, relaxHours);
    }

    private GrainMass mass(Grain grain) {
        double kg = setup.dryMatterKg();
        return new GrainMass(kg, kg * grain.dryFraction(), kg * grain.waterRatio());
    }
}
