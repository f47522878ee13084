package piecewright.rival;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import piecewright.grain.GrainLot;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.LocalHours;
import piecewright.plan.Households;
import piecewright.plan.PlanRequest;
import piecewright.style.MaltStyle;
import piecewright.style.SteepSchedule;

/**
 * A made-up household warm enough to malt in little more than a week, whose kiln is safe to leave: only what is varied
 * limits it.
 */
record GrowthHousehold(double airC, double grainKg, LocalDate start) {
    static List<GrowthHousehold> all() {
        return IntStream.range(0, 6)
                .mapToObj(i -> new GrowthHousehold(15.5 + 0.5 * i, 2.5 + 0.4 * i, LocalDate.of(2030, 5, 6 + i)))
                .toList();
    }

    /** Its wish, with somebody at home from six to seven and in the evening until ten, and up to so many immersions. */
    PlanRequest request(int hoursADay, int immersions) {
        List<LocalHours> hours = List.of(
                new LocalHours(LocalTime.of(6, 0), LocalTime.of(7, 0)),
                new LocalHours(LocalTime.of(23 - hoursADay, 0), LocalTime.of(22, 0)));
        Map<DayOfWeek, List<LocalHours>> week =
                Arrays.stream(DayOfWeek.values()).collect(Collectors.toMap(Function.identity(), day -> hours));
        House house =
                Households.house("house", new AirTemperature.Daily(airC - 1, airC + 1), week, Households.boxKiln(true));
        GrainLot lot = Households.barley();
        return new PlanRequest(
                style(immersions),
                lot,
                house,
                new PlanRequest.Amount.RawGrain(grainKg),
                new PlanRequest.When.StartOn(start));
    }

    private static MaltStyle style(int immersions) {
        MaltStyle pale = Households.pale();
        SteepSchedule steep = pale.steep();
        return new MaltStyle(
                pale.key(),
                pale.title(),
                pale.grains(),
                new SteepSchedule(steep.targetFraction(), steep.acceptable(), 1, immersions),
                pale.growth(),
                pale.kiln(),
                pale.finish());
    }
}
