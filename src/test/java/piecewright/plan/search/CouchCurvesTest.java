package piecewright.plan.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.Place;
import piecewright.plan.Availability;
import piecewright.plan.Couched;
import piecewright.plan.Couching;
import piecewright.plan.Households;
import piecewright.plan.ModelParameters;
import piecewright.plan.PlanRequest;
import piecewright.plan.Rooms;
import piecewright.plan.Setup;
import piecewright.plan.SetupMaker;
import piecewright.process.PieceState;
import piecewright.process.couch.CouchModel;
import piecewright.process.couch.HotCouch;
import piecewright.quantity.Moisture;

/** The heating curves the search plans by. */
class CouchCurvesTest {
    private static final LocalDate DAY = LocalDate.of(2031, 3, 3);

    /** 4.5 kg of barley as the reference counts it (12 % moisture), every corn alive, in a hall of that temperature. */
    private record Bench(Setup setup, TimeGrid grid, CouchCurves curves) {
        static Bench of(double hallC) {
            House like = Couched.withBox(Households.garage(9, 13), hallC, false);
            House house = new House(
                    like.name(),
                    like.zone(),
                    like.places().stream()
                            .map(place -> place.name().equals("hall")
                                    ? new Place("hall", new AirTemperature.Constant(hallC), 0.5)
                                    : place)
                            .toList(),
                    like.steepWaterC(),
                    like.people(),
                    like.nights(),
                    like.kit());
            PlanRequest request = new PlanRequest(
                    Couched.wet(),
                    Households.barley(),
                    house,
                    new PlanRequest.Amount.RawGrain(5),
                    new PlanRequest.When.StartOn(DAY));
            Instant origin = DAY.atStartOfDay(house.zone()).toInstant();
            Instant until = origin.plusSeconds(9 * 86_400L);
            double dryKg = 4.5 * CouchModel.RAW_DRY_FRACTION;
            Rooms rooms = new Rooms(house, origin, until);
            Setup like5 = new SetupMaker(ModelParameters.defaults())
                    .of(request, rooms, 5, new ArrayList<>())
                    .orElseThrow();
            Setup setup = new Setup(
                    like5.style(), like5.lot(), like5.models(), like5.outfit(), like5.air(), like5.heaps(), dryKg);
            TimeGrid grid = TimeGrid.of(Availability.of(house, origin, until), house.zone(), origin, until, 120, 15);
            return new Bench(setup, grid, new CouchCurves(setup, grid));
        }

        Grain packed(double moistureFraction, double pileC) {
            double dry = CouchModel.DRY_LEFT_FRACTION;
            double water = dry * moistureFraction / (1 - moistureFraction);
            return new Grain(water, water, water, 20, 2, 1, dry, pileC);
        }
    }

    /**
     * Couch page, hours to 45 °C of 4.5 kg at 40 % by room and by packing temperature, and its peak of 50.5 to 52.7;
     * the reference holds water and dry matter and lets every corn live, hence the slack.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # hallC, packedC, hours to 45
            19, 22, 14.74
            19, 21, 15.9
            17, 21, 18.5
            21, 21, 14.0
            23, 21, 12.5
            19, 24, 12.4
            """)
    void aWetPileHeatsWhenTheReferenceSays(double hallC, double packedC, double expectedHours) {
        Bench bench = Bench.of(hallC);
        int at = bench.grid().nextCoarse(10);
        CouchCurves.Curve curve = bench.curves().of(at, bench.packed(0.40, packedC));
        int start = bench.grid().minute(at);
        int minute = start;
        while (curve.grainAt(bench.packed(0.40, packedC), minute).grainC() < 45) minute += 5;
        assertEquals(expectedHours, (minute - start) / 60.0, 0.1 * expectedHours);
        double peakC = curve.hottestC(curve.lastMinute());
        assertTrue(peakC > 50.5 && peakC < 52.7, "peak " + peakC);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.34, 0.38, 0.42, 0.45})
    void theCurveKeepsToTheReferenceStage(double moisture) {
        Bench bench = Bench.of(18);
        int at = bench.grid().nextCoarse(12);
        Couching couching = bench.setup().couching().orElseThrow();
        double atHours = bench.grid().minute(at) / 60.0;
        double dry = CouchModel.DRY_LEFT_FRACTION;
        PieceState packed = CouchModel.packed(4.5, Moisture.ofWetBasisPercent(100 * moisture), 20);
        Grain grain = bench.packed(moisture, 20);
        CouchCurves.Curve curve = bench.curves().of(at, grain);
        HotCouch reference = new HotCouch(couching.model(), couching.air());
        for (double hours = 6; hours <= 30; hours += 6) {
            PieceState later = reference.run(packed, atHours, atHours + hours);
            int minute = bench.grid().minute(at) + (int) (60 * hours);
            Grain quick = curve.grainAt(grain, minute);
            assertEquals(later.couch().indexHours(), curve.indexHours(minute), 0.5, "index after " + hours);
            assertEquals(later.grainC(), quick.grainC(), 1.5, "pile after " + hours);
            assertEquals(later.mass().dryMatterKg() / later.mass().initialDryMatterKg(), quick.dryFraction(), 0.002);
            assertEquals(later.mass().moisture().wetBasisFraction(), quick.moistureFraction(), 0.002);
            assertTrue(quick.dryFraction() < dry);
        }
    }
}
