package piecewright.learn;

import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.belief.Belief;
import piecewright.belief.Priors;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import piecewright.grain.GrainLot;
import piecewright.grain.LotTraits;
import piecewright.house.Heater;
import piecewright.house.House;
import piecewright.house.InsulatedBox;
import piecewright.house.Kit;
import piecewright.house.KitTraits;

/** Lots and houses with the most probable values of what batches taught in place of what their files state. */
public final class Taught {
    private Taught() {}

    /** Everything a house may teach, as its file states it. */
    public static Belief stated(House house) {
        Belief belief = Belief.independent(List.of());
        for (String place : house.kit().trays().stream()
                .map(trays -> trays.place())
                .distinct()
                .toList()) {
            belief = belief.and(Priors.floor(place));
        }
        for (Heater heater : house.kit().heaters()) belief = belief.and(Priors.heater(heater));
        for (InsulatedBox box : house.kit().boxes()) belief = belief.and(Priors.box(box));
        return belief;
    }

    /** The lot as batches taught it; the same lot when none did. */
    public static GrainLot lot(GrainLot lot, Learned learned) {
        if (learned.chapters().isEmpty()) return lot;
        Belief belief = learned.believed(Priors.lot(lot));
        return lot.withLearned(new LotTraits(
                value(belief, Trait.STEEP_RATE, lot),
                value(belief, Trait.SATURATION, lot),
                value(belief, Trait.BURST, lot),
                value(belief, Trait.GROWTH_RATE, lot),
                value(belief, Trait.RESPIRATION, lot),
                value(belief, Trait.KERNEL_RATE, lot)));
    }

    private static OptionalDouble value(Belief belief, Trait trait, GrainLot lot) {
        return OptionalDouble.of(belief.value(new Unknown(trait, lot.name())));
    }

    /** The house as batches taught it; only what a batch has used is changed. */
    public static House house(House house, Learned learned) {
        if (learned.chapters().isEmpty()) return house;
        Belief stated = stated(house);
        List<Unknown> used = new ArrayList<>(
                learned.chapters().get(learned.chapters().size() - 1).belief().unknowns());
        used.retainAll(stated.unknowns());
        Belief belief = learned.believed(stated);
        Kit kit = house.kit();
        List<Heater> heaters = kit.heaters().stream()
                .map(heater -> heater(heater, belief, used))
                .toList();
        List<InsulatedBox> boxes =
                kit.boxes().stream().map(box -> box(box, belief, used)).toList();
        KitTraits traits = new KitTraits(
                of(Trait.DIAL_OFFSET, belief, used),
                of(Trait.COLOUR_RATE, belief, used),
                of(Trait.FLOOR_DRYING, belief, used),
                of(Trait.COUCH_HEAT, belief, used));
        return house.withKit(new Kit(kit.vessels(), kit.trays(), boxes, heaters, kit.scale(), traits));
    }

    private static Heater heater(Heater heater, Belief belief, List<Unknown> used) {
        Unknown flow = new Unknown(Trait.AIR_FLOW, heater.name());
        return used.contains(flow) ? heater.withMeasuredAirFlowM3PerHour(belief.value(flow)) : heater;
    }

    private static InsulatedBox box(InsulatedBox box, Belief belief, List<Unknown> used) {
        Unknown loss = new Unknown(Trait.BOX_LOSS, box.name());
        return used.contains(loss)
                ? new InsulatedBox(box.name(), box.place(), box.volumeL(), OptionalDouble.of(belief.value(loss)))
                : box;
    }

    private static Map<String, Double> of(Trait trait, Belief belief, List<Unknown> used) {
        Map<String, Double> values = new HashMap<>();
        for (Unknown unknown : used) {
            if (unknown.trait() == trait) values.put(unknown.item(), belief.value(unknown));
        }
        return values;
    }
}
