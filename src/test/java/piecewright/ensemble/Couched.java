package piecewright.ensemble;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.InsulatedBox;
import piecewright.house.Kit;
import piecewright.house.Place;
import piecewright.plan.PlanRequest;
import piecewright.plan.Seeded;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;

/** Seeded households with an insulated box in a heated room; every second one has tested it with warm water. */
final class Couched {
    private Couched() {}

    /** A wish of 4 to 6 kg of grain for the dark malt of the full couch. */
    static PlanRequest request(long seed) {
        PlanRequest pale = Seeded.request(seed);
        SplittableRandom random = new SplittableRandom(seed);
        House house = pale.house();
        double lowC = 15 + 5 * random.nextDouble();
        List<Place> places = new ArrayList<>(house.places());
        places.add(new Place("room", new AirTemperature.Daily(lowC, lowC + 2 * random.nextDouble()), 0.5));
        OptionalDouble loss =
                random.nextBoolean() ? OptionalDouble.of(0.3 + 0.2 * random.nextDouble()) : OptionalDouble.empty();
        Kit kit = house.kit();
        Kit boxed = new Kit(
                kit.vessels(),
                kit.trays(),
                List.of(new InsulatedBox("box", "room", 60, loss)),
                kit.heaters(),
                kit.scale());
        House warm = new House(
                house.name(), house.zone(), places, house.steepWaterC(), house.people(), house.nights(), boxed);
        try {
            return new PlanRequest(
                    StyleLibrary.builtIn().style("dark"),
                    pale.lot(),
                    warm,
                    new PlanRequest.Amount.RawGrain(4 + 2 * random.nextDouble()),
                    pale.when());
        } catch (StoreException unknown) {
            throw new AssertionError(unknown);
        }
    }
}
