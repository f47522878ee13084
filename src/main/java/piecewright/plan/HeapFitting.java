package piecewright.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import piecewright.house.House;
import piecewright.house.InsulatedBox;
import piecewright.plan.Heaping.Expected;
import piecewright.plan.Heaping.Worth;
import piecewright.plan.Outfit.Growing;
import piecewright.process.GrainMass;
import piecewright.process.Metabolism;
import piecewright.process.couch.CouchModel;
import piecewright.process.germination.GrowthParameters;
import piecewright.process.germination.Heap;
import piecewright.style.WetCouchSchedule;

/** Chooses where a piece is heaped to chit: under cloths, or in a box that keeps it warmer. */
final class HeapFitting {
    /** Judgement: where the bed is warmer corns chit soon enough by themselves and a heap only gets too warm. */
    private static final double COOL_BED_C = 16;
    /** Judgement: less warmth of its own, or over the bed, is not worth a heap; practice, 3 kg and less do not warm usefully. */
    private static final double WORTH_RISE_K = 1.4;
    /** Judgement: growth as it chits: it breathes by then at half the floor's liveliest. */
    private static final double CHITTING_GROWTH_RATIO = 0.05;

    private final House house;
    private final Rooms rooms;
    private final GrowthParameters growth;
    private final Metabolism metabolism;
    private final GrainMass mass;

    HeapFitting(House house, Rooms rooms, GrowthParameters growth, Metabolism metabolism, GrainMass mass) {
        this.house = house;
        this.rooms = rooms;
        this.growth = growth;
        this.metabolism = metabolism;
        this.mass = mass;
    }

    /** The warmest heap that stays cool enough; the heap under cloths where none is of use. */
    Heaping choose(WetCouchSchedule schedule, Growing growing, ModelParameters parameters) {
        Heap wrapped = Heap.wrapped(growth, mass, schedule.depthCm() / 100);
        double bedC = rooms.meanC(growing.place());
        List<Heaping> all = new ArrayList<>();
        for (String place : places()) all.add(heaping(schedule, place, place, wrapped, bedC));
        double neededL = 1000 * mass.totalKg() / growth.bulkKgPerM3();
        double barleyKg = mass.initialDryMatterKg() / CouchModel.RAW_DRY_FRACTION;
        for (InsulatedBox box : house.kit().boxes()) {
            if (box.volumeL() < neededL) continue;
            CouchModel model = CouchModel.of(box, parameters.couch(), metabolism.germinatingFraction());
            Heap boxed = new Heap(wrapped.areaM2(), model.lossWPerK(barleyKg));
            all.add(heaping(schedule, box.name(), box.place(), boxed, bedC));
        }
        return all.stream()
                .filter(one -> one.expected().helps())
                .max(Comparator.comparingDouble(
                        one -> one.expected().airC() + one.expected().riseK()))
                .orElseGet(() -> heaping(schedule, growing.place(), growing.place(), wrapped, bedC));
    }

    /** Where trays or tubs stand that could hold a heap. */
    private Set<String> places() {
        Set<String> places = new TreeSet<>();
        house.kit().trays().forEach(trays -> places.add(trays.place()));
        house.kit().vessels().forEach(vessel -> places.add(vessel.place()));
        return places;
    }

    private static Worth worth(WetCouchSchedule schedule, double airC, double riseK, double bedC) {
        if (bedC > COOL_BED_C) return Worth.BED_IS_WARM;
        if (riseK < WORTH_RISE_K) return Worth.TOO_LITTLE_GRAIN;
        if (airC + riseK < bedC + WORTH_RISE_K) return Worth.PLACE_IS_COLD;
        return airC + riseK + Heap.CORE_OVER_MEAN_K > schedule.warmestCoreC() ? Worth.TOO_WARM : Worth.HELPS;
    }

    private Heaping heaping(WetCouchSchedule schedule, String where, String place, Heap heap, double bedC) {
        double airC = rooms.meanC(place);
        double moisture = mass.moisture().wetBasisFraction();
        double riseK = 0;
        for (int i = 0; i < 8; i++) {
            double heatW = metabolism.heatWPerKgDry(
                    Math.min(airC + riseK, schedule.warmestCoreC()), moisture, CHITTING_GROWTH_RATIO);
            riseK = heap.steadyRiseK(heatW, mass.dryMatterKg());
        }
        Expected expected = new Expected(airC, riseK, bedC, worth(schedule, airC, riseK, bedC));
        return new Heaping(schedule, where, heap, rooms.at(place), expected);
    }
}
