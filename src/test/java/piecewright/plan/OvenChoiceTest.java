package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import piecewright.house.AirTemperature;
import piecewright.house.Heater;
import piecewright.house.House;
import piecewright.house.LocalHours;
import piecewright.quantity.TemperatureRange;
import piecewright.style.MaltStyle;
import piecewright.style.OvenSchedule;
import piecewright.style.RoastSchedule;
import piecewright.style.RoastSchedule.HeatStep;
import piecewright.style.StewSchedule;

/** Worked by hand: 530 kg/m³ of malt, 480 kg/m³ of green malt, 44 % at steep-out. */
class OvenChoiceTest {
    private static final RoastSchedule AMBER =
            new RoastSchedule(1.2, List.of(new HeatStep(100, 45, 45), new HeatStep(150, 40, 55)), 0.04);

    private static Heater oven(double highC, double areaM2, double errorK, double offsetK) {
        return new Heater(
                "oven",
                "garage",
                new Heater.HotAir(new TemperatureRange(50, highC), 10, false, 2500, 4),
                areaM2,
                new Heater.HeatControl(true, false, true, errorK, offsetK));
    }

    private static MaltStyle style(Optional<StewSchedule> stew, RoastSchedule roast) {
        return Households.pale().withOven(new OvenSchedule(stew, Optional.of(roast)));
    }

    private static House house(Heater oven) {
        return Households.house("h", new AirTemperature.Daily(10, 14), Households.officeWeek(), oven);
    }

    private static List<Obstacle> obstacles(MaltStyle style, Heater oven, double dryKg) {
        List<Obstacle> obstacles = new ArrayList<>();
        new OvenChoice(house(oven), style, ModelParameters.defaults(), KitUsed.none())
                .choose(Arrangement.Places.any(), dryKg, obstacles);
        return obstacles;
    }

    /** 0.4 m² × 1.2 cm × 530 kg/m³ = 2.544 kg in one load. */
    @Test
    void loadsFollowFromTheTrays() {
        List<Obstacle> none = new ArrayList<>();
        var choice = new OvenChoice(
                house(oven(240, 0.4, 5, 0)),
                style(Optional.empty(), AMBER),
                ModelParameters.defaults(),
                KitUsed.none());
        assertEquals(
                1,
                choice.choose(Arrangement.Places.any(), 2.54, none)
                        .orElseThrow()
                        .roasting()
                        .orElseThrow()
                        .loads());
        assertEquals(
                2,
                choice.choose(Arrangement.Places.any(), 2.55, none)
                        .orElseThrow()
                        .roasting()
                        .orElseThrow()
                        .loads());
        assertEquals(List.of(), none);
    }

    @Test
    void moreLoadsThanAnybodyFillsAreRefused() {
        var refused = (Obstacle.TooManyLoads) obstacles(style(Optional.empty(), AMBER), oven(240, 0.1, 5, 0), 3)
                .get(0);
        assertEquals(5, refused.loads());
        assertEquals(0.636, refused.loadKg(), 1e-9);
    }

    /** An oven that may be 20 K off could pass 220 °C at 205; one that is 10 K colder than its dial needs 160 for 150. */
    @Test
    void anUnsureOvenMayNotComeNearTheCeiling() {
        RoastSchedule dark = new RoastSchedule(1.2, List.of(new HeatStep(205, 40, 40)), 0.04);
        assertEquals(
                List.of(new Obstacle.OvenUnsure(205, 20, 220)),
                obstacles(style(Optional.empty(), dark), oven(240, 0.4, 20, 0), 2));
        assertEquals(List.of(), obstacles(style(Optional.empty(), dark), oven(240, 0.4, 15, 0), 2));
        assertEquals(
                List.of(new Obstacle.NoOven(150, 145)),
                obstacles(style(Optional.empty(), AMBER), oven(155, 0.4, 5, -10), 2));
    }

    /** 3 kg dry at 44 % is 5.357 kg green; on 0.2 m² 5.6 cm deep. */
    @Test
    void aStewLiesNoDeeperThanItMay() {
        var stew = Optional.of(new StewSchedule(70, 90, 240, 5));
        var refused = (Obstacle.StewTooDeep)
                obstacles(style(stew, AMBER), oven(240, 0.2, 5, 0), 3).get(0);
        assertEquals(5.58, refused.depthCm(), 0.01);
        assertTrue(obstacles(style(stew, AMBER), oven(240, 0.25, 5, 0), 3).isEmpty());
    }

    @Test
    void nobodyWithSoLongAnAfternoonIsSaid() {
        Map<DayOfWeek, List<LocalHours>> week = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            week.put(
                    day,
                    List.of(
                            new LocalHours(LocalTime.of(6, 0), LocalTime.of(8, 0)),
                            new LocalHours(LocalTime.of(12, 0), LocalTime.of(14, 0)),
                            new LocalHours(LocalTime.of(18, 0), LocalTime.of(20, 0)),
                            new LocalHours(LocalTime.of(21, 0), LocalTime.of(23, 0))));
        }
        House house = Households.house("h", new AirTemperature.Daily(10, 14), week, oven(240, 0.4, 5, 0));
        PlanRequest request = new PlanRequest(
                style(Optional.empty(), AMBER),
                Households.barley(),
                house,
                new PlanRequest.Amount.RawGrain(2),
                new PlanRequest.When.StartOn(LocalDate.of(2030, 4, 5)));
        var not = (PlanResult.NotPossible) new Planner(ModelParameters.defaults()).plan(request);
        assertEquals(
                List.of(new Obstacle.BlockTooLong("oven.roast", Duration.ofMinutes(135), Duration.ofHours(2))),
                not.obstacles());
    }
}
