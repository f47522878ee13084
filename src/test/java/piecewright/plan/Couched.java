package piecewright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.InsulatedBox;
import piecewright.house.Kit;
import piecewright.house.Place;
import piecewright.house.Trays;
import piecewright.quantity.FractionRange;
import piecewright.quantity.HoursRange;
import piecewright.style.Couches;
import piecewright.style.GrowthSchedule;
import piecewright.style.HotCouchSchedule;
import piecewright.style.MaltStyle;
import piecewright.style.OvenSchedule;
import piecewright.style.SteepSchedule;

/** The seeded households with a dry hall, an insulated box in it, and a couched style: withered or wet by turns. */
public final class Couched {
    private Couched() {}

    /** Withered to about a third of water, then a short couch. */
    public static MaltStyle withered() {
        return couched(
                "withered-couch",
                new HotCouchSchedule(
                        0.35, new FractionRange(0.29, 0.41), 10, new HoursRange(6, 14), 72, new HoursRange(6, 14), 53));
    }

    /** Packed as wet as it grew, then a full couch. */
    public static MaltStyle wet() {
        return couched(
                "wet-couch",
                new HotCouchSchedule(
                        0.43,
                        new FractionRange(0.39, 0.46),
                        26,
                        new HoursRange(20, 33),
                        72,
                        new HoursRange(6, 14),
                        53));
    }

    private static MaltStyle couched(String key, HotCouchSchedule hot) {
        MaltStyle pale = Households.pale();
        return new MaltStyle(
                key,
                "Couched malt",
                pale.grains(),
                new SteepSchedule(0.45, new FractionRange(0.43, 0.47), 2, 5),
                new GrowthSchedule(0.85, new FractionRange(0.7, 1.0), 0.42, 24, 12, new HoursRange(0, 48)),
                pale.kiln(),
                pale.finish(),
                Couches.none().withHot(hot),
                OvenSchedule.none());
    }

    public static PlanRequest request(long seed) {
        Random random = new Random(seed * 31 + 7);
        PlanRequest like = Seeded.request(seed);
        double grainKg = 4 + 4 * random.nextDouble();
        return new PlanRequest(
                seed % 2 == 0 ? withered() : wet(),
                like.lot(),
                withBox(like.house(), 14 + 8 * random.nextDouble(), random.nextBoolean()),
                new PlanRequest.Amount.RawGrain(grainKg),
                like.when());
    }

    /** That house with a hall of such mean temperature, trays and a box in it. */
    public static House withBox(House house, double hallC, boolean tested) {
        List<Place> places = new ArrayList<>(house.places());
        places.add(new Place("hall", new AirTemperature.Daily(hallC - 1.5, hallC + 1.5), 0.5));
        Kit kit = house.kit();
        List<Trays> trays = new ArrayList<>(kit.trays());
        trays.add(new Trays("hall trays", "hall", 2, 0.3));
        OptionalDouble lossWPerK = tested ? OptionalDouble.of(0.4) : OptionalDouble.empty();
        return new House(
                house.name(),
                house.zone(),
                places,
                house.steepWaterC(),
                house.people(),
                house.nights(),
                new Kit(
                        kit.vessels(),
                        trays,
                        List.of(new InsulatedBox("cooler", "hall", 48, lossWPerK)),
                        kit.heaters(),
                        kit.scale()));
    }
}
