package piecewright.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import piecewright.grain.GerminationCount;
import piecewright.grain.GrainKind;
import piecewright.grain.GrainLot;
import piecewright.grain.LotMoisture;
import piecewright.grain.LotTraits;
import piecewright.grain.Treatment;
import piecewright.house.AirTemperature;
import piecewright.house.Heater;
import piecewright.house.House;
import piecewright.house.Kit;
import piecewright.house.LocalHours;
import piecewright.house.NightActs;
import piecewright.house.Person;
import piecewright.house.Place;
import piecewright.house.Scale;
import piecewright.house.Trays;
import piecewright.house.Vessel;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.quantity.EbcRange;
import piecewright.quantity.FractionRange;
import piecewright.quantity.HoursRange;
import piecewright.quantity.Moisture;
import piecewright.quantity.TemperatureRange;
import piecewright.style.GrowthSchedule;
import piecewright.style.KilnSchedule;
import piecewright.style.KilnSchedule.Rung;
import piecewright.style.MaltStyle;
import piecewright.style.SteepSchedule;

/** Made-up households, lots and a pale style for tests of planning. */
public final class Households {
    private Households() {}

    public static MaltStyle pale() {
        return new MaltStyle(
                "pale",
                "Pale malt",
                List.of(GrainKind.BARLEY),
                new SteepSchedule(0.44, new FractionRange(0.42, 0.46), 2, 4),
                new GrowthSchedule(0.75, new FractionRange(0.6, 0.9), 0.42, 20, 12, new HoursRange(0, 48)),
                new KilnSchedule(
                        List.of(
                                new Rung(1, 50),
                                new Rung(0.23, 60),
                                new Rung(0.12, 65),
                                new Rung(0.08, 75),
                                new Rung(0.06, 85)),
                        new TemperatureRange(80, 85),
                        new HoursRange(3, 4),
                        0.055,
                        new KilnSchedule.ColourBase(2.0, 1)),
                new MaltStyle.FinishSchedule(21, 28, new EbcRange(2.5, 3.7)));
    }

    /** Five kilograms of raw barley for pale malt, ready by the first of May 2031. */
    public static PlanRequest wish(House house) {
        return new PlanRequest(
                pale(),
                barley(),
                house,
                new Amount.RawGrain(5),
                new When.ReadyBy(LocalDate.of(2031, 5, 1), LocalDate.of(2031, 1, 1)));
    }

    public static GrainLot barley() {
        OptionalInt none = OptionalInt.empty();
        return new GrainLot(
                "lot B",
                GrainKind.BARLEY,
                new LotMoisture(Moisture.ofWetBasisPercent(12.1), 0.003, true),
                List.of(
                        new GerminationCount(4, 100, none, OptionalInt.of(90), OptionalInt.of(97)),
                        new GerminationCount(8, 100, none, OptionalInt.of(88), OptionalInt.of(94))),
                new GrainLot.LotSize(OptionalDouble.of(43), OptionalDouble.of(0.015), Optional.empty()),
                Treatment.UNTREATED,
                LotTraits.unknown());
    }

    /** Weekdays before and after work, weekends all day. */
    public static Map<DayOfWeek, List<LocalHours>> officeWeek() {
        Map<DayOfWeek, List<LocalHours>> week = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            boolean weekend = day == DayOfWeek.SATURDAY || day == DayOfWeek.SUNDAY;
            week.put(
                    day,
                    weekend
                            ? List.of(new LocalHours(LocalTime.of(7, 30), LocalTime.of(22, 30)))
                            : List.of(
                                    new LocalHours(LocalTime.of(6, 0), LocalTime.of(7, 0)),
                                    new LocalHours(LocalTime.of(17, 45), LocalTime.of(22, 30))));
        }
        return week;
    }

    public static House garage(double lowC, double highC) {
        return house("garage house", new AirTemperature.Daily(lowC, highC), officeWeek(), boxKiln(false));
    }

    public static Heater boxKiln(boolean safeUnattended) {
        return new Heater(
                "box kiln",
                "garage",
                new Heater.HotAir(new TemperatureRange(30, 95), 14, false, 900, 2),
                0.36,
                new Heater.HeatControl(true, false, safeUnattended, 2));
    }

    public static House house(String name, AirTemperature air, Map<DayOfWeek, List<LocalHours>> week, Heater heater) {
        return new House(
                name,
                ZoneId.of("Europe/Berlin"),
                List.of(new Place("garage", air, 0.75)),
                12,
                List.of(new Person("the brewer", week, Map.of())),
                NightActs.none(),
                new Kit(
                        List.of(new Vessel("blue tub", "garage", 30)),
                        List.of(new Trays("screens", "garage", 2, 0.2)),
                        List.of(),
                        List.of(heater),
                        new Scale(5, 15)));
    }
}
