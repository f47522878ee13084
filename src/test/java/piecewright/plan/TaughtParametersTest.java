package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import piecewright.grain.GrainLot;
import piecewright.grain.LotTraits;
import piecewright.house.House;
import piecewright.house.Kit;
import piecewright.house.KitTraits;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;

/** What batches taught moves just the figures it is about. */
class TaughtParametersTest {
    private static final Instant ORIGIN = Instant.parse("2031-02-01T00:00:00Z");

    private static Setup setup(GrainLot lot, House house) {
        PlanRequest request = new PlanRequest(
                Households.pale(), lot, house, new Amount.RawGrain(5), new When.StartOn(LocalDate.of(2031, 2, 1)));
        return new SetupMaker(ModelParameters.defaults())
                .of(request, new Rooms(house, ORIGIN, ORIGIN.plusSeconds(864_000)), 5, new ArrayList<>())
                .orElseThrow();
    }

    private static House taught(KitTraits traits) {
        House house = Households.garage(11, 16);
        Kit kit = house.kit();
        return house.withKit(new Kit(kit.vessels(), kit.trays(), kit.boxes(), kit.heaters(), kit.scale(), traits));
    }

    @Test
    void theLotsBreathingAndDryingAreItsOwn() {
        OptionalDouble none = OptionalDouble.empty();
        GrainLot lot = Households.barley()
                .withLearned(new LotTraits(none, none, none, none, OptionalDouble.of(1.25), OptionalDouble.of(0.5)));
        Setup.Models usual =
                setup(Households.barley(), Households.garage(11, 16)).models();
        Setup.Models models = setup(lot, Households.garage(11, 16)).models();
        assertEquals(2.5, models.metabolism().parameters().heatAt20WPerKg(), 1e-12);
        assertEquals(0.5, models.kiln().drying().kernelRatio(), 1e-12);
        assertEquals(usual.growth(), models.growth());
        assertEquals(usual.kiln().colour(), models.kiln().colour());
        assertEquals(usual.steep().rateRatio(), models.steep().rateRatio());
    }

    @Test
    void theKitsFloorAndColourAreItsOwn() {
        House house = taught(new KitTraits(Map.of(), Map.of("box kiln", 1.2), Map.of("garage", 2.0), Map.of()));
        Setup.Models usual =
                setup(Households.barley(), Households.garage(11, 16)).models();
        Setup.Models models = setup(Households.barley(), house).models();
        assertEquals(2 * usual.growth().witherPerHourKPa(), models.growth().witherPerHourKPa(), 1e-12);
        assertEquals(1.2, models.kiln().colour().rateRatio(), 1e-12);
        assertEquals(usual.kiln().drying(), models.kiln().drying());
        assertEquals(usual.metabolism().parameters(), models.metabolism().parameters());
    }

    @Test
    void otherKitsTraitsChangeNothing() {
        House house = taught(new KitTraits(Map.of(), Map.of("oven", 1.2), Map.of("cellar", 2.0), Map.of()));
        Setup.Models usual =
                setup(Households.barley(), Households.garage(11, 16)).models();
        Setup.Models models = setup(Households.barley(), house).models();
        assertEquals(usual.growth(), models.growth());
        assertEquals(usual.kiln(), models.kiln());
        assertTrue(usual.kiln().equals(ModelParameters.defaults().kiln()));
    }
}
