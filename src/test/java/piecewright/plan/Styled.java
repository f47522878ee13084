package piecewright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import piecewright.grain.GrainKind;
import piecewright.grain.GrainLot;
import piecewright.house.AirTemperature;
import piecewright.house.Heater;
import piecewright.house.House;
import piecewright.house.InsulatedBox;
import piecewright.house.Kit;
import piecewright.house.Place;
import piecewright.house.Vessel;
import piecewright.quantity.TemperatureRange;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;
import piecewright.style.OvenSchedule;
import piecewright.style.SteepSchedule;

/** The seeded households wishing for every style of schedules/ by turns, its grain and the kit it wants in the house. */
public final class Styled {
    /** What a style is made by beside steep, floor and kiln. */
    public enum Family {
        /** Nothing else. */
        FLOOR,
        /** Nothing else, but soaked as seldom as the style lets, in a cold shed, with a box in the hall: a wet couch helps. */
        HEAPED,
        /** A hot couch. */
        COUCHED,
        /** Stewed and roasted. */
        STEWED,
        /** Roasted. */
        ROASTED
    }

    /** Twenty seeds in a row hold every family: half of them the floor's, a tenth the couch's, which is slow to plan. */
    private static final List<Family> TURNS = turns();

    private static final List<MaltStyle> STYLES = styles();

    private final Family family;
    private final MaltStyle style;
    private final PlanRequest like;
    private final Random random;

    private Styled(long seed) {
        this.family = family(seed);
        List<MaltStyle> styles = styles(family);
        MaltStyle drawn = styles.get((int) (turn(seed) % styles.size()));
        this.style = family == Family.HEAPED ? soakedSeldom(drawn) : drawn;
        this.like = Seeded.request(seed);
        this.random = new Random(seed * 31 + 11);
    }

    private Styled(MaltStyle style, long seed) {
        this.family = familyOf(style);
        this.style = style;
        this.like = Seeded.request(seed);
        this.random = new Random(seed * 31 + 11);
    }

    /** A wish of one made-up household for some style. */
    public static PlanRequest request(long seed) {
        return new Styled(seed).request();
    }

    /** A wish of one made-up household for this style, with the kit it wants in the house. */
    public static PlanRequest requestFor(MaltStyle style, long seed) {
        return new Styled(style, seed).request();
    }

    public static Family family(long seed) {
        return TURNS.get((int) (seed % TURNS.size()));
    }

    /** The styles that are planned at all, in order of their keys. */
    public static List<MaltStyle> styles(Family family) {
        return STYLES.stream()
                .filter(style -> familyOf(style) == (family == Family.HEAPED ? Family.FLOOR : family))
                .toList();
    }

    private static Family familyOf(MaltStyle style) {
        if (style.oven().stew().isPresent()) return Family.STEWED;
        if (style.oven().roast().isPresent()) return Family.ROASTED;
        return style.couches().hot().isPresent() ? Family.COUCHED : Family.FLOOR;
    }

    /** How many of its family came before it. */
    private static long turn(long seed) {
        Family family = family(seed);
        int place = (int) (seed % TURNS.size());
        long each = TURNS.stream().filter(family::equals).count();
        return seed / TURNS.size() * each
                + TURNS.subList(0, place).stream().filter(family::equals).count();
    }

    private static List<Family> turns() {
        List<Family> turns = new ArrayList<>();
        List<Family> others = List.of(Family.HEAPED, Family.STEWED, Family.ROASTED);
        for (int i = 0; i < 20; i++) {
            if (i % 10 == 9) turns.add(Family.COUCHED);
            else turns.add(i % 2 == 0 ? Family.FLOOR : others.get(i / 2 % 3));
        }
        return List.copyOf(turns);
    }

    /** All but black, which no kitchen may roast. */
    private static List<MaltStyle> styles() {
        try {
            return StyleLibrary.builtIn().all().stream()
                    .filter(style -> !style.key().equals("black"))
                    .toList();
        } catch (StoreException broken) {
            throw new AssertionError(broken);
        }
    }

    private PlanRequest request() {
        return new PlanRequest(style, lot(), house(), amount(), like.when());
    }

    private PlanRequest.Amount amount() {
        double leastKg = family == Family.HEAPED ? 4.5 : family == Family.COUCHED ? 4 : 2;
        double rawKg = leastKg + 3.5 * random.nextDouble();
        return random.nextInt(4) == 0
                ? new PlanRequest.Amount.FinishedMalt(0.78 * rawKg)
                : new PlanRequest.Amount.RawGrain(rawKg);
    }

    /** With no more immersions than it must have, grain leaves the tub before it has chitted. */
    private static MaltStyle soakedSeldom(MaltStyle style) {
        SteepSchedule steep = style.steep();
        int fewest = steep.fewestImmersions();
        return style.withSteep(
                new SteepSchedule(steep.targetFraction(), steep.acceptable(), fewest, fewest, steep.soaks()));
    }

    private GrainLot lot() {
        GrainLot old = like.lot();
        GrainKind kind = style.grains().get(0);
        double smaller = kind == GrainKind.RYE || kind == GrainKind.OATS ? 0.8 : 1;
        OptionalDouble cornG =
                OptionalDouble.of(smaller * old.size().thousandCornG().orElseThrow());
        return new GrainLot(
                old.name(),
                kind,
                old.moisture(),
                old.dishes(),
                new GrainLot.LotSize(
                        cornG, old.size().floatersFraction(), old.size().harvested()),
                old.treatment(),
                old.learned());
    }

    private House house() {
        House house = like.house();
        House heated = house.withKit(withHeaters(house.kit()));
        return switch (family) {
            case HEAPED -> cold(heated);
            case COUCHED -> Couched.withBox(heated, between(14, 22), random.nextBoolean());
            case FLOOR, STEWED, ROASTED -> heated;
        };
    }

    /** A tub that holds more, a kiln as hot as the style cures, and an oven where it stews or roasts. */
    private Kit withHeaters(Kit kit) {
        Heater old = kit.heaters().get(0);
        TemperatureRange range =
                new TemperatureRange(30, Math.max(95, style.kiln().cureC().highC() + 5));
        Heater.HotAir air = new Heater.HotAir(
                range,
                old.air().airFlowM3PerHour(),
                old.air().flowMeasured(),
                Math.max(old.air().powerW(), 12 * range.highC()),
                old.air().lossWPerK());
        List<Heater> heaters = new ArrayList<>();
        heaters.add(new Heater(old.name(), old.place(), air, old.trayAreaM2(), old.control()));
        if (!style.oven().equals(OvenSchedule.none())) heaters.add(oven(old.place()));
        return new Kit(List.of(new Vessel("tub", "shed", 45)), kit.trays(), kit.boxes(), heaters, kit.scale());
    }

    private Heater oven(String place) {
        return new Heater(
                "oven",
                place,
                new Heater.HotAir(new TemperatureRange(50, 240), between(4, 8), false, 2500, 6),
                between(0.36, 0.6),
                new Heater.HeatControl(true, false, random.nextBoolean(), between(2, 8), between(-8, 8)));
    }

    private House cold(House house) {
        double lowC = between(3, 7);
        List<Place> places = new ArrayList<>();
        for (Place one : house.places()) {
            places.add(new Place(
                    one.name(), new AirTemperature.Daily(lowC, lowC + between(0, 5)), one.humidityFraction()));
        }
        places.add(new Place("hall", new AirTemperature.Daily(between(12, 15), 16), 0.5));
        Kit kit = house.kit();
        List<InsulatedBox> boxes = List.of(new InsulatedBox("cooler", "hall", 48, OptionalDouble.empty()));
        return new House(
                house.name(),
                house.zone(),
                places,
                house.steepWaterC(),
                house.people(),
                house.nights(),
                new Kit(kit.vessels(), kit.trays(), boxes, kit.heaters(), kit.scale()));
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
