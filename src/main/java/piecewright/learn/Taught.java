package piecewright.learn;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import piecewright.belief.Belief;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.grain.GrainLot;
import piecewright.grain.LotTraits;
import piecewright.house.Heater;
import piecewright.house.House;
import piecewright.house.InsulatedBox;
import piecewright.house.Kit;
import piecewright.house.KitTraits;
import piecewright.plan.PlanRequest;

/**
 * Lots and houses with the most probable values of what batches taught in place of what their files state. How sure each
 * is goes with the wish; what no batch told stays as it is stated.
 */
public final class Taught {
    private Taught() {}

    /** The wish with its lot and its house as batches taught them, and how sure that is. */
    public static PlanRequest wish(PlanRequest stated, Lessons.Known known) {
        return wish(stated, known.lot().told().overriddenBy(known.house().told()));
    }

    /** The wish as a batch has taught it so far: its lot and its kit as what was read of them together tells. */
    public static PlanRequest soFar(PlanRequest stated, Lessons.Outcome.Taught taught) {
        PlanRequest wish = wish(stated, taught.known());
        Belief together = taught.estimate().posterior().only(wish.learned().unknowns()::contains);
        return wish(stated, wish.learned().overriddenBy(together));
    }

    /** The wish where its lot and its house are as is believed. */
    public static PlanRequest wish(PlanRequest stated, Belief told) {
        return stated.withLot(lot(stated.lot(), told))
                .withHouse(house(stated.house(), told))
                .withLearned(told);
    }

    /** The lot as batches taught it; the same lot when none did. */
    static GrainLot lot(GrainLot lot, Belief told) {
        LotTraits stated = lot.learned();
        return lot.withLearned(new LotTraits(
                value(told, new Unknown(Trait.STEEP_RATE, lot.name()), stated.steepRateRatio()),
                value(told, new Unknown(Trait.SATURATION, lot.name()), stated.saturationRatio()),
                value(told, new Unknown(Trait.BURST, lot.name()), stated.burstRatio()),
                value(told, new Unknown(Trait.GROWTH_RATE, lot.name()), stated.growthRateRatio()),
                value(told, new Unknown(Trait.RESPIRATION, lot.name()), stated.respirationRatio()),
                value(told, new Unknown(Trait.KERNEL_RATE, lot.name()), stated.kernelRatio())));
    }

    private static OptionalDouble value(Belief told, Unknown unknown, OptionalDouble stated) {
        return told.unknowns().contains(unknown) ? OptionalDouble.of(told.value(unknown)) : stated;
    }

    /** The house as batches taught it; only what a batch told is changed. */
    static House house(House house, Belief told) {
        if (told.unknowns().isEmpty()) return house;
        Kit kit = house.kit();
        List<Heater> heaters =
                kit.heaters().stream().map(heater -> heater(heater, told)).toList();
        List<InsulatedBox> boxes =
                kit.boxes().stream().map(box -> box(box, told)).toList();
        KitTraits traits = new KitTraits(
                of(Trait.DIAL_OFFSET, told),
                of(Trait.COLOUR_RATE, told),
                of(Trait.FLOOR_DRYING, told),
                of(Trait.COUCH_HEAT, told));
        return house.withKit(new Kit(kit.vessels(), kit.trays(), boxes, heaters, kit.scale(), traits));
    }

    private static Heater heater(Heater heater, Belief told) {
        Unknown flow = new Unknown(Trait.AIR_FLOW, heater.name());
        return told.unknowns().contains(flow) ? heater.withAirFlowM3PerHour(told.value(flow)) : heater;
    }

    private static InsulatedBox box(InsulatedBox box, Belief told) {
        OptionalDouble loss = value(told, new Unknown(Trait.BOX_LOSS, box.name()), box.lossWPerK());
        return new InsulatedBox(box.name(), box.place(), box.volumeL(), loss);
    }

    private static Map<String, Double> of(Trait trait, Belief told) {
        Map<String, Double> values = new HashMap<>();
        for (Unknown unknown : told.unknowns()) {
            if (unknown.trait() == trait) values.put(unknown.item(), told.value(unknown));
        }
        return values;
    }
}
