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
import java.util.Random;
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
import piecewright.quantity.Moisture;
import piecewright.quantity.TemperatureRange;

/** Households drawn from a seed: weather, water, hours, lot and kit vary as homes do. */
public final class Seeded {
    private static final List<String> ZONES =
            List.of("Europe/Berlin", "America/New_York", "Australia/Lord_Howe", "Asia/Kathmandu");

    private final Random random;

    private Seeded(long seed) {
        this.random = new Random(seed);
    }

    /** A wish of one made-up household. */
    public static PlanRequest request(long seed) {
        return new Seeded(seed).request();
    }

    private PlanRequest request() {
        PlanRequest.When when = random.nextBoolean()
                ? new PlanRequest.When.ReadyBy(day(), LocalDate.of(2030, 1, 1))
                : new PlanRequest.When.StartOn(day());
        return new PlanRequest(Households.pale(), lot(), house(), new PlanRequest.Amount.RawGrain(between(2, 6)), when);
    }

    private LocalDate day() {
        return LocalDate.of(2030, 3, 1).plusDays(random.nextInt(300));
    }

    private GrainLot lot() {
        int grown = 93 + random.nextInt(7);
        int grownWet = grown - random.nextInt(25);
        return new GrainLot(
                "lot " + grown,
                GrainKind.BARLEY,
                new LotMoisture(Moisture.ofWetBasisPercent(between(10.5, 14)), 0.01, random.nextBoolean()),
                List.of(dish(4, grown), dish(8, grownWet)),
                new GrainLot.LotSize(OptionalDouble.of(between(36, 48)), OptionalDouble.empty(), Optional.empty()),
                random.nextInt(4) == 0 ? Treatment.UNKNOWN : Treatment.UNTREATED,
                LotTraits.unknown());
    }

    private static GerminationCount dish(double waterMl, int grown) {
        return new GerminationCount(waterMl, 100, OptionalInt.empty(), OptionalInt.empty(), OptionalInt.of(grown));
    }

    private House house() {
        double lowC = between(6, 17);
        Map<DayOfWeek, List<LocalHours>> week = week();
        boolean safe = random.nextBoolean();
        Heater kiln = new Heater(
                "kiln",
                "shed",
                new Heater.HotAir(
                        new TemperatureRange(30, 95), between(10, 30), random.nextBoolean(), between(700, 1500), 1.5),
                0.36,
                new Heater.HeatControl(true, false, safe, 2));
        Kit kit = new Kit(
                List.of(new Vessel("tub", "shed", 30)),
                List.of(new Trays("screens", "shed", 3, 0.16)),
                List.of(),
                List.of(kiln),
                new Scale(5, 15));
        NightActs nights =
                random.nextInt(4) == 0 ? new NightActs(1, LocalTime.of(22, 30), LocalTime.of(6, 0)) : NightActs.none();
        return new House(
                "house",
                ZoneId.of(ZONES.get(random.nextInt(ZONES.size()))),
                List.of(new Place("shed", new AirTemperature.Daily(lowC, lowC + between(0, 6)), between(0.5, 0.85))),
                between(8, 15),
                List.of(new Person("one", week, Map.of()), new Person("two", evenings(), Map.of())),
                nights,
                kit);
    }

    private Map<DayOfWeek, List<LocalHours>> week() {
        int wake = 5 + random.nextInt(3);
        int home = 16 + random.nextInt(3);
        Map<DayOfWeek, List<LocalHours>> week = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            boolean weekend = day == DayOfWeek.SATURDAY || day == DayOfWeek.SUNDAY;
            week.put(day, weekend ? List.of(hours(7, 22)) : List.of(hours(wake, wake + 1), hours(home, 22)));
        }
        return week;
    }

    private Map<DayOfWeek, List<LocalHours>> evenings() {
        Map<DayOfWeek, List<LocalHours>> week = new EnumMap<>(DayOfWeek.class);
        if (random.nextBoolean()) week.put(DayOfWeek.WEDNESDAY, List.of(hours(12, 20)));
        return week;
    }

    private static LocalHours hours(int from, int until) {
        return new LocalHours(LocalTime.of(from, 0), LocalTime.of(until, 30));
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
