package piecewright.plan.search;

import java.util.Arrays;
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
        double[] state = {pile[0], couch.capacityRatio(), 0, 0, couch.indexHours()};
        Curve.Walked walked = new Curve.Walked(steps);
        walked.add(state);
        while (walked.size() < steps && state[INDEX_HOURS] <= mostIndexHours) {
            double atHours = (startMinute + (walked.size() - 1) * STEP_MINUTES) / 60.0;
            state = RungeKutta.step(
                    state,
                    atHours,
                    STEP_MINUTES / 60.0,
                    (hours, now, slope) -> slope(dryKg, waterKg, lossWPerK, air.airC(hours), now, slope));
            walked.add(state);
        }
        return new Curve(startMinute, walked, dryKg);
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

    /** One heating curve; kept as floats, since thousands are kept at a time. */
    static final class Curve {
        private static final int HOTTEST_C = CAPACITY;
        private static final int COLUMNS = 5;

        private final int startMinute;
        private final float[] kept;
        private final int size;
        private final double dryKg;

        private Curve(int startMinute, Walked walked, double dryKg) {
            this.startMinute = startMinute;
            this.kept = Arrays.copyOf(walked.kept, walked.size * COLUMNS);
            this.size = walked.size;
            this.dryKg = dryKg;
        }

        /** A curve as it is walked: what can be asked for later, the hottest so far instead of the capacity. */
        private static final class Walked {
            private final float[] kept;
            private int size;

            Walked(int most) {
                kept = new float[most * COLUMNS];
            }

            int size() {
                return size;
            }

            void add(double[] state) {
                double hottestC = size == 0 ? state[PILE_C] : kept[(size - 1) * COLUMNS + HOTTEST_C];
                for (int what = 0; what < COLUMNS; what++) kept[size * COLUMNS + what] = (float) state[what];
                kept[size * COLUMNS + HOTTEST_C] = (float) Math.max(hottestC, state[PILE_C]);
                size++;
            }
        }

        /** The last minute the curve knows. */
        int lastMinute() {
            return startMinute + (size - 1) * STEP_MINUTES;
        }

        double indexHours(int minute) {
            return at(INDEX_HOURS, minute);
        }

        /** The hottest the pile has been up to a minute, °C. */
        double hottestC(int minute) {
            int before = Math.max(0, Math.min(size - 1, (minute - startMinute) / STEP_MINUTES));
            return Math.max(step(before, HOTTEST_C), at(PILE_C, minute));
        }

        /** Hours until that index; infinite when the curve never comes to it. */
        double hoursTo(double indexHours) {
            for (int i = 0; i < size; i++) {
                if (step(i, INDEX_HOURS) >= indexHours) return i * STEP_MINUTES / 60.0;
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

        private double step(int at, int what) {
            return kept[at * COLUMNS + what];
        }

        private double at(int what, int minute) {
            if (size == 1) return step(0, what);
            double position = (minute - startMinute) / (double) STEP_MINUTES;
            int below = Math.max(0, Math.min(size - 2, (int) position));
            double share = Math.min(1, position - below);
            return step(below, what) + share * (step(below + 1, what) - step(below, what));
        }
    }
}
