package piecewright.plan.search;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import piecewright.plan.Couching;
import piecewright.plan.Setup;
import piecewright.plan.search.UnderWay.Standing;
import piecewright.process.CouchState;
import piecewright.process.Metabolism;
import piecewright.process.PieceState;
import piecewright.process.RungeKutta;
import piecewright.process.Surroundings;
import piecewright.process.couch.CouchModel;

/**
 * Heating curves of the hot couch by packing instant, moisture and temperature, each walked once in quarter hours from
 * rounded figures, so that it does not matter which label asks first. Scratch space of one search, used by one thread.
 */
final class CouchCurves {
    private static final int STEP_MINUTES = 15;
    /** Judgement: packing moisture is rounded to this, wet basis; moves the time to 45 °C by a few tenths of an hour. */
    private static final double MOISTURE_STEP_FRACTION = 0.002;
    /** Judgement: packing temperature is rounded to this. */
    private static final double TEMPERATURE_STEP_K = 0.5;
    /** Judgement: dry matter left is rounded to this share. */
    private static final double DRY_STEP_FRACTION = 0.01;

    private static final int PILE_C = 0;
    private static final int CAPACITY = 1;
    private static final int RESPIRED_KG = 2;
    private static final int EVAPORATED_KG = 3;
    private static final int INDEX_HOURS = 4;

    private final Setup setup;
    private final Couching couching;
    private final TimeGrid grid;
    private final double mostIndexHours;
    private final Map<Key, Curve> known = new HashMap<>();
    private final Optional<Curve> running;

    private record Key(int at, long moisture, long temperature, long dry) {}

    CouchCurves(Setup setup, TimeGrid grid) {
        this(setup, grid, Optional.empty());
    }

    /** @param heating the piece if its couch is heating already: no other is packed then */
    CouchCurves(Setup setup, TimeGrid grid, Optional<Standing> heating) {
        this.setup = setup;
        this.couching = setup.couching().orElseThrow();
        this.grid = grid;
        this.mostIndexHours = couching.schedule().acceptableIndex().highHours();
        this.running = heating.map(this::goingOn);
    }

    private Curve goingOn(Standing heating) {
        PieceState state = heating.state();
        double[] pile = {
            state.grainC(),
            state.mass().moisture().wetBasisFraction(),
            state.mass().dryMatterKg() / state.mass().initialDryMatterKg()
        };
        return walk(pile, state.couch(), couching.air(), grid.minuteOf(heating.at()));
    }

    /** The curve of that grain packed at that candidate; ends where the style's index is passed or its hours are over. */
    Curve of(int at, Grain packed) {
        if (running.isPresent()) return running.get();
        Key key = new Key(
                at,
                Math.round(packed.moistureFraction() / MOISTURE_STEP_FRACTION),
                Math.round(packed.grainC() / TEMPERATURE_STEP_K),
                Math.round(packed.dryFraction() / DRY_STEP_FRACTION));
        return known.computeIfAbsent(key, this::walk);
    }

    private Curve walk(Key key) {
        double[] pile = {
            key.temperature * TEMPERATURE_STEP_K, key.moisture * MOISTURE_STEP_FRACTION, key.dry * DRY_STEP_FRACTION
        };
        return walk(pile, couching.air(), grid.minute(key.at));
    }

    /** Fewest hours after which any piece packed that warm at most has the least index of the style. */
    double quickestHours(double warmestPackedC, double warmestAirC) {
        double leastIndexHours = couching.schedule().acceptableIndex().lowHours();
        if (running.isPresent()) return SAFE_HOURS_RATIO * running.get().hoursTo(leastIndexHours);
        Surroundings air = Surroundings.constant(grid.origin(), warmestAirC, 0.5);
        var packing = couching.schedule().packing();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= QUICKEST_STEPS; i++) {
            double moisture =
                    packing.lowFraction() + (packing.highFraction() - packing.lowFraction()) * i / QUICKEST_STEPS;
            Curve curve = walk(new double[] {warmestPackedC, moisture, 1}, air, 0);
            least = Math.min(least, curve.hoursTo(leastIndexHours));
        }
        return SAFE_HOURS_RATIO * least;
    }

    private static final int QUICKEST_STEPS = 6;
    /** Judgement: covers rounding and the moistures between those tried. */
    private static final double SAFE_HOURS_RATIO = 0.9;

    /** pile: temperature, moisture, dry matter as a share of what was steeped. */
    private Curve walk(double[] pile, Surroundings air, int startMinute) {
        return walk(pile, CouchState.none(), air, startMinute);
    }

    private Curve walk(double[] pile, CouchState couch, Surroundings air, int startMinute) {
        double dryKg = setup.dryMatterKg() * pile[2];
        double waterKg = dryKg * pile[1] / (1 - pile[1]);
        double lossWPerK = couching.model().lossWPerK(setup.dryMatterKg() / CouchModel.RAW_DRY_FRACTION);
        int steps = (int) (couching.schedule().longestHours() * 60 / STEP_MINUTES) + 1;
        double[][] states = new double[steps][];
        states[0] = new double[] {pile[0], couch.capacityRatio(), 0, 0, couch.indexHours()};
        int reached = 0;
        while (reached + 1 < steps && states[reached][INDEX_HOURS] <= mostIndexHours) {
            double atHours = (startMinute + reached * STEP_MINUTES) / 60.0;
            states[reached + 1] = RungeKutta.step(
                    states[reached],
                    atHours,
                    STEP_MINUTES / 60.0,
                    (hours, now, slope) -> slope(dryKg, waterKg, lossWPerK, air.airC(hours), now, slope));
            reached++;
        }
        return new Curve(startMinute, java.util.Arrays.copyOf(states, reached + 1), dryKg);
    }

    private void slope(double dryKg, double waterKg, double lossWPerK, double airC, double[] now, double[] slope) {
        CouchModel model = couching.model();
        double dry = dryKg - now[RESPIRED_KG];
        double water = waterKg + Metabolism.WATER_FORMED_RATIO * now[RESPIRED_KG] - now[EVAPORATED_KG];
        double moisture = water / (water + dry);
        double heatW = model.heatWPerKgDry(now[PILE_C], moisture, now[CAPACITY]);
        double evaporationW = model.evaporationW(now[PILE_C]);
        double netW = dry * heatW - lossWPerK * (now[PILE_C] - airC) - evaporationW;
        slope[PILE_C] = 3.6 * netW / model.capacityKJPerK(dry, water);
        slope[CAPACITY] = -now[CAPACITY] * model.decayPerHour(now[PILE_C]);
        slope[RESPIRED_KG] = dry * Metabolism.respiredPerHour(heatW);
        slope[EVAPORATED_KG] = evaporationW * 3.6 / CouchModel.LATENT_KJ_PER_KG;
        slope[INDEX_HOURS] = CouchModel.indexPerHour(now[PILE_C], moisture);
    }

    /** One heating curve. */
    static final class Curve {
        private final int startMinute;
        private final double[][] states;
        private final double dryKg;

        private Curve(int startMinute, double[][] states, double dryKg) {
            this.startMinute = startMinute;
            this.states = states;
            this.dryKg = dryKg;
        }

        /** The last minute the curve knows. */
        int lastMinute() {
            return startMinute + (states.length - 1) * STEP_MINUTES;
        }

        double indexHours(int minute) {
            return at(INDEX_HOURS, minute);
        }

        /** The hottest the pile has been up to a minute, °C. */
        double hottestC(int minute) {
            double hottest = at(PILE_C, minute);
            for (int i = 0; startMinute + i * STEP_MINUTES < minute; i++)
                hottest = Math.max(hottest, states[i][PILE_C]);
            return hottest;
        }

        /** Hours until that index; infinite when the curve never comes to it. */
        double hoursTo(double indexHours) {
            for (int i = 0; i < states.length; i++) {
                if (states[i][INDEX_HOURS] >= indexHours) return i * STEP_MINUTES / 60.0;
            }
            return Double.POSITIVE_INFINITY;
        }

        /** The grain that was packed, at a later minute. */
        Grain grainAt(Grain packed, int minute) {
            double respired = at(RESPIRED_KG, minute) / dryKg * packed.dryFraction();
            double evaporated = at(EVAPORATED_KG, minute) / dryKg * packed.dryFraction();
            double water = Math.max(0, packed.waterRatio() + Metabolism.WATER_FORMED_RATIO * respired - evaporated);
            return new Grain(
                    water,
                    packed.coreRatio(),
                    water,
                    packed.soakHours(),
                    packed.chitRatio(),
                    packed.growthRatio(),
                    packed.dryFraction() - respired,
                    at(PILE_C, minute));
        }

        private double at(int what, int minute) {
            double position = (minute - startMinute) / (double) STEP_MINUTES;
            int below = Math.max(0, Math.min(states.length - 2, (int) position));
            if (states.length == 1) return states[0][what];
            double share = Math.min(1, position - below);
            return states[below][what] + share * (states[below + 1][what] - states[below][what]);
        }
    }
}
