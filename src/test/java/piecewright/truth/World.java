package piecewright.truth;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.SplittableRandom;
import piecewright.house.Heater;
import piecewright.house.Heater.HotAir;
import piecewright.house.House;
import piecewright.house.InsulatedBox;
import piecewright.plan.Act;
import piecewright.plan.PlanRequest;
import piecewright.process.Psychrometrics;
import piecewright.style.MaltStyle;

/** One batch as it really is, in time order: acts are done to it, time passes, it can be weighed, counted and read. */
final class World {
    private static final double STEP_HOURS = 0.1;
    private static final double HUSK_RATIO = 0.13;
    private static final double FILM_RATIO = 0.05;
    private static final double USUAL_FLOATERS = 0.02;
    private static final double LEACHED_BY_A_SOAK = 0.0035;
    private static final double DRIES_PER_HOUR_KPA = 0.030;
    private static final double UNDER_CLOTH = 0.12;
    private static final double STICKS = 0.9;

    /** Where the grain is. */
    enum Stage {
        DRY,
        SOAKING,
        DRAINED,
        FLOOR,
        WITHERING,
        COUCH,
        KILN,
        OUT
    }

    final Corns corns;
    private final House house;
    private final MaltStyle style;
    private final Hidden hidden;
    private final SplittableRandom random;
    private final Air air;
    private final Sphere sphere;
    private final double firstDryKg;
    private Instant now;
    private Stage stage = Stage.DRY;
    private String place = "";
    private double dryKg;
    private double waterKg;
    private double outer;
    private double grainC;
    private double bathL;
    private double depthCm = 25;
    private Optional<Pile> pile = Optional.empty();
    private Optional<KilnBed> bed = Optional.empty();
    private double setC;
    private boolean curing;
    private boolean alive = true;
    private double roastedKg;
    private double roastedEbc;
    private double roastedMoisture;

    World(PlanRequest request, double grainKg, Instant from, SplittableRandom random) {
        this.house = request.house();
        this.style = request.style();
        this.random = random;
        this.hidden = Hidden.drawn(random);
        this.air = new Air(house, from, hidden.weatherK(), random.split());
        var told = request.lot().moisture();
        double raw = Math.max(0.07, told.moisture().wetBasisFraction() + told.sdFraction() * hidden.rawMoistureSds());
        double floats = request.lot().size().floatersFraction().orElse(USUAL_FLOATERS) * hidden.floaters();
        this.firstDryKg = grainKg * (1 - Math.min(0.2, floats)) * (1 - raw);
        this.dryKg = firstDryKg;
        this.waterKg = dryKg * raw / (1 - raw);
        this.sphere = new Sphere(raw / (1 - raw), 1.15 * hidden.drinks());
        this.corns = new Corns(germinating(request), hidden, random.split());
        this.now = from;
        this.grainC = 15;
    }

    private static double germinating(PlanRequest request) {
        return request.lot().dishes().stream()
                .filter(dish -> dish.waterMl() < 6)
                .flatMap(dish -> dish.by72Hours().stream().boxed().map(grown -> (double) grown / dish.corns()))
                .findFirst()
                .orElse(0.95);
    }

    double moisture() {
        return waterKg / (waterKg + dryKg);
    }

    double grainC() {
        return grainC;
    }

    double couchPeakC() {
        return pile.map(Pile::hottestC).orElse(0.0);
    }

    double hottestCureC() {
        return bed.map(KilnBed::hottestC).orElse(0.0);
    }

    /** Colour of the malt as it is now, or of what came out of the oven. */
    double ebc() {
        return roastedKg > 0 ? roastedEbc / roastedKg : bed.map(KilnBed::ebc).orElse(0.0);
    }

    double endMoisture() {
        return roastedKg > 0 ? roastedMoisture / roastedKg : moisture();
    }

    /** What the scale shows, kg. */
    double weighed() {
        double step = house.kit().scale().stepG() / 1000;
        double shown = waterKg + dryKg + 2 * step * Hidden.normal(random);
        return Math.max(step, Math.round(shown / step) * step);
    }

    double readC() {
        return Math.round(10 * (grainC + 0.4 * Hidden.normal(random))) / 10.0;
    }

    void until(Instant instant) {
        while (now.isBefore(instant)) {
            double left = Duration.between(now, instant).toSeconds() / 3600.0;
            double hours = Math.min(STEP_HOURS, left);
            step(hours);
            now = hours == left ? instant : now.plusMillis(Math.round(hours * 3_600_000));
        }
    }

    private void step(double hours) {
        switch (stage) {
            case SOAKING -> soak(hours);
            case DRAINED -> rest(hours);
            case FLOOR -> grow(hours, UNDER_CLOTH);
            case WITHERING -> grow(hours, 1);
            case COUCH -> couch(hours);
            case KILN -> kiln(hours);
            case DRY, OUT -> {}
        }
    }

    private void live(boolean underWater, double hours) {
        if (alive) corns.live(grainC, moisture(), underWater, hours);
    }

    private void towardsAir(double litres, double hours) {
        double airC = air.at(place, now);
        grainC = airC + (grainC - airC) * Math.exp(-hours / (0.75 * litres));
    }

    private double wetL() {
        return (waterKg + dryKg) / 0.7;
    }

    private void soak(double hours) {
        towardsAir(bathL + wetL() * 0.6, hours);
        sphere.drinks(grainC, hours, 1);
        dryKg *= 1 - 0.0003 * hours;
        waterKg = firstDryKg * (sphere.mean() + outer);
        live(true, hours);
    }

    private void rest(double hours) {
        towardsAir(wetL() * 0.6, hours);
        double before = sphere.mean();
        double full = HUSK_RATIO * hidden.husk() + FILM_RATIO * hidden.film();
        sphere.drinks(grainC, hours, outer / full);
        outer = Math.max(0, outer - (sphere.mean() - before) - hidden.restDriesPerHour() * hours);
        dryKg *= 1 - 0.0002 * hours;
        waterKg = firstDryKg * (sphere.mean() + outer);
        live(false, hours);
    }

    private double heatWPerKg() {
        double grown = 0.4 + 0.6 * Math.min(1, corns.acrospire() / 0.5);
        double wet = Math.min(1.1, Math.max(0, (moisture() - 0.20) / 0.24));
        double warm = Math.pow(2.1, (grainC - 20) / 10);
        return alive ? corns.living() * 2.0 * hidden.respires() * warm * grown * wet : 0;
    }

    private void grow(double hours, double open) {
        double airC = air.at(place, now);
        double kgPerM2 = 480 * depthCm / 100 * (1 - moisture());
        double loss = hidden.bedLoss() / (1 / 20.0 + depthCm / 100 / 1.2);
        double capacity = kgPerM2 * (1.3 + 4.19 * waterKg / dryKg);
        double heat = heatWPerKg();
        double settles = airC + heat * kgPerM2 / loss;
        grainC = settles + (grainC - settles) * Math.exp(-hours * 3.6 * loss / capacity);
        double respired = heat * 3.6 / 15_600 * hours * dryKg;
        double deficit = deficitKPa(airC, air.place(place).humidityFraction());
        double thickness = Math.max(2.5, depthCm);
        double dries = DRIES_PER_HOUR_KPA * hidden.floorDries() * open * deficit * 2.5 / thickness;
        double above = Math.max(0, waterKg / dryKg - 0.13);
        dryKg -= respired;
        waterKg += 0.6 * respired - dryKg * above * -Math.expm1(-dries * hours);
        live(false, hours);
    }

    private static double deficitKPa(double airC, double humid) {
        return 0.61094 * Math.exp(17.625 * airC / (airC + 243.04)) * (1 - humid);
    }

    private void couch(double hours) {
        Pile heap = pile.orElseThrow();
        double respired = heap.heats(dryKg, waterKg / dryKg, air.at(place, now), hours);
        grainC = heap.meanC();
        dryKg -= respired;
        waterKg += 0.6 * respired - 0.002 * Math.max(0, grainC - 25) / 25 * hours;
        if (grainC < 40) live(false, hours);
    }

    private void kiln(double hours) {
        KilnBed malt = bed.orElseThrow();
        Heater heater = heater(place);
        HotAir hot = heater.air();
        double roomC = air.at(place, now);
        double humid = air.place(place).humidityFraction();
        double flow = hot.airFlowM3PerHour()
                * Math.pow(hidden.airFlow(), hot.flowMeasured() ? 0.10 : 0.30)
                * (curing ? 0.5 : 1);
        double ratio = Psychrometrics.humidityRatio(roomC, humid, Psychrometrics.STANDARD_PRESSURE_PA);
        double kg = flow / Psychrometrics.specificVolumeM3PerKg(roomC, ratio, Psychrometrics.STANDARD_PRESSURE_PA);
        double trueC = setC + heater.control().thermostatErrorK() * hidden.dryerSds();
        malt.blown(new KilnBed.Draught(Math.max(roomC, trueC), kg, ratio), hours);
        waterKg = dryKg * malt.waterRatio();
        grainC = malt.grainC();
        if (grainC < 40 && moisture() > 0.30) live(false, hours);
    }

    private Heater heater(String name) {
        return house.kit().heaters().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no heater " + name));
    }

    /** Somebody does an act now. */
    void acted(Act act) {
        switch (act.kind()) {
            case SOAK -> soaked(act);
            case DRAIN -> stage = Stage.DRAINED;
            case HEAP -> spread(Stage.FLOOR, act, 25);
            case FLOOR -> spread(Stage.FLOOR, act, 6);
            case WITHER -> spread(Stage.WITHERING, act, 3);
            case TURN, LOOK -> grainC += 0.5 * (air.at(place, now) - grainC);
            case SPRINKLE -> waterKg += STICKS * act.setting().waterL().orElse(0);
            case PACK -> packed(act);
            case CHECK -> {}
            case BREAK -> spread(Stage.FLOOR, act, 3);
            case STEW -> stewed(act);
            case LOAD -> loaded(act);
            case STIR -> bed.ifPresent(KilnBed::stirred);
            case RAISE, LOWER, CURE -> heated(act);
            case OFF -> stage = Stage.OUT;
            case DEROOT -> dryKg *= 0.965;
            case ROAST -> throw new AssertionError("roasts are told by themselves");
        }
    }

    private void soaked(Act act) {
        place = act.setting().place().orElseThrow();
        bathL = act.setting().waterL().orElse(2 * dryKg);
        double fillC = act.setting().setC().orElse(house.steepWaterC());
        if (stage == Stage.DRY) grainC = air.at(place, now);
        double grain = dryKg * 1.3 + 4.19 * waterKg;
        grainC = (grain * grainC + 4.19 * bathL * fillC) / (grain + 4.19 * bathL);
        outer = HUSK_RATIO * hidden.husk() + FILM_RATIO * hidden.film();
        dryKg *= 1 - LEACHED_BY_A_SOAK * hidden.leaches();
        waterKg = firstDryKg * (sphere.mean() + outer);
        stage = Stage.SOAKING;
    }

    private void spread(Stage where, Act act, double usualCm) {
        stage = where;
        place = act.setting().place().orElse(place);
        depthCm = act.setting().depthCm().orElse(usualCm);
        grainC += 0.5 * (air.at(place, now) - grainC);
    }

    private void packed(Act act) {
        stage = Stage.COUCH;
        place = act.setting().place().orElseThrow();
        InsulatedBox box = house.kit().boxes().stream()
                .filter(one -> one.name().equals(place))
                .findFirst()
                .orElseThrow();
        double told = box.lossWPerK().orElse(0.424);
        double sd = box.lossWPerK().isPresent() ? 0.10 : 0.35;
        double loss = told * Math.exp(sd * hidden.boxLossSds()) * (0.75 + 0.25 * dryKg / 0.832 / 4.5);
        pile = Optional.of(new Pile(grainC, loss, hidden.couchHeat()));
    }

    private void stewed(Act act) {
        alive = false;
        grainC = 68;
    }

    private void loaded(Act act) {
        var base = style.kiln().colourBase();
        double couched = Math.min(12, Math.exp(2.5 * pile.map(Pile::index).orElse(0.0) / 35));
        double colour = hidden.colour() * (pile.isPresent() ? hidden.couchColour() : 1);
        bed = Optional.of(new KilnBed(
                dryKg, waterKg / dryKg, grainC, base.startEbc() * Math.pow(hidden.colour(), 0.3), new double[] {
                    hidden.kernels(), base.substrateRatio() * couched, colour
                }));
        stage = Stage.KILN;
        heated(act);
        curing = false;
    }

    private void heated(Act act) {
        place = act.setting().place().orElse(place);
        setC = act.setting().setC().orElse(setC);
        curing = act.kind() == piecewright.plan.ActKind.CURE;
        bed.ifPresent(KilnBed::stirred);
    }

    /** One load through the oven, tasted and compared as its schedule says; how long it took. */
    Duration roasted(Act act) {
        Roasting roasting = new Roasting(act.inner().orElseThrow(), style, hidden, random);
        Duration took = roasting.done(bed.orElseThrow().ebc(), moisture());
        double kg = act.inner().orElseThrow().loadKg();
        roastedKg += kg;
        roastedEbc += kg * roasting.ebc();
        roastedMoisture += kg * roasting.moisture();
        return took;
    }
}
