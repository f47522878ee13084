package piecewright.ensemble;

import java.util.List;
import java.util.Optional;
import piecewright.house.Heater;
import piecewright.house.Heater.HotAir;
import piecewright.plan.Blueprint;
import piecewright.plan.Couching;
import piecewright.plan.Outfit;
import piecewright.plan.Setup;
import piecewright.plan.SetupMaker;
import piecewright.process.Metabolism;
import piecewright.process.MetabolismParameters;
import piecewright.process.couch.CouchModel;
import piecewright.process.couch.CouchParameters;
import piecewright.process.germination.GrowthParameters;
import piecewright.process.kiln.ColourParameters;
import piecewright.process.kiln.DryingParameters;
import piecewright.process.kiln.KilnParameters;
import piecewright.process.steep.SteepModel;
import piecewright.process.steep.SteepParameters;
import piecewright.style.KilnSchedule;
import piecewright.style.KilnSchedule.ColourBase;
import piecewright.style.KilnSchedule.Rung;
import piecewright.style.MaltStyle;

/** The plan's setup as it really is in one member. */
final class ActualSetup {
    /** Judgement: whoever stews or roasts believes a thermometer in the oven, not the dial; it errs by so much. */
    private static final double HUNG_SD_K = 3;
    /** Source: water freezes; no steep is colder. */
    private static final double COLDEST_WATER_C = 0.5;

    private final Blueprint blueprint;
    private final Setup told;
    private final Member member;
    private final Weather weather;

    ActualSetup(Blueprint blueprint, Member member, Weather weather) {
        this.blueprint = blueprint;
        this.told = blueprint.setup();
        this.member = member;
        this.weather = weather;
    }

    Setup setup() {
        Outfit outfit = told.outfit();
        Setup.Air air = new Setup.Air(
                weather.of(told.air().steep(), member),
                weather.of(told.air().floor(), member),
                weather.of(told.air().wither(), member),
                weather.of(told.air().dryer(), member),
                weather.of(told.air().curer(), member));
        Setup.Models models = new Setup.Models(
                steep(told.models().steep()),
                metabolism(told.models().metabolism()),
                growth(told.models().growth()),
                kiln(told.models().kiln()),
                told.models().gates());
        Outfit actual = new Outfit(
                outfit.soaking(), outfit.growing(), outfit.withering(), drying(outfit.drying()), outfit.ovens());
        Setup.Heaps heaps = new Setup.Heaps(
                told.couching().map(this::couching),
                told.heaping().map(heaping -> heaping.in(weather.of(heaping.air(), member))));
        return new Setup(style(), lot(), models, actual, air, heaps, dryMatterKg(), told.closures());
    }

    private double ratio(Doubt doubt) {
        return member.ratio(doubt);
    }

    private double rawFraction() {
        double told = blueprint.request().lot().moisture().moisture().wetBasisFraction();
        return Math.min(0.3, told * ratio(Doubt.RAW_MOISTURE));
    }

    private double dryMatterKg() {
        double floaters =
                blueprint.request().lot().size().floatersFraction().orElse(SetupMaker.USUAL_FLOATERS_FRACTION);
        double left = 1 - Math.min(0.5, floaters * ratio(Doubt.FLOATERS));
        return blueprint.plan().outcome().rawGrainKg() * left * (1 - rawFraction());
    }

    private Setup.Lot lot() {
        Setup.Lot lot = told.lot();
        return new Setup.Lot(
                lot.grain(),
                rawFraction() / (1 - rawFraction()),
                Math.min(1, lot.energyFraction() * ratio(Doubt.GERMINATION)),
                lot.waterSensitiveFraction(),
                new Setup.Water(
                        lot.water().sourceC(),
                        Math.max(COLDEST_WATER_C, lot.water().fillC() + member.waterK())));
    }

    private SteepModel steep(SteepModel model) {
        SteepParameters.Uptake uptake = model.parameters().uptake();
        SteepParameters.Leaching leaching = model.parameters().leaching();
        SteepParameters actual = new SteepParameters(
                new SteepParameters.Uptake(
                        uptake.saturationRatio() * ratio(Doubt.SATURATION),
                        uptake.burstRatio() * ratio(Doubt.BURST),
                        uptake.filmRatio() * ratio(Doubt.FILM),
                        uptake.ratePerHour(),
                        uptake.activationJPerMol(),
                        uptake.chitGainRatio(),
                        uptake.evaporationPerHour()),
                new SteepParameters.Leaching(
                        Math.min(0.1, leaching.soakFraction() * ratio(Doubt.LEACHING)),
                        leaching.soakHours(),
                        leaching.changeFraction()),
                model.parameters().warming());
        return new SteepModel(model.rateRatio() * ratio(Doubt.STEEP_RATE), model.startChitRatio(), actual);
    }

    private Metabolism metabolism(Metabolism metabolism) {
        MetabolismParameters told = metabolism.parameters();
        return metabolism.with(
                Math.min(1, metabolism.germinatingFraction() * ratio(Doubt.GERMINATION)),
                new MetabolismParameters(
                        told.chitSumKelvinHours() / ratio(Doubt.CHIT),
                        told.chitSpreadRatio(),
                        told.growthSumKelvinDays() / ratio(Doubt.GROWTH),
                        told.heatAt20WPerKg() * ratio(Doubt.RESPIRATION),
                        told.heatQ10Ratio(),
                        told.steepShareRatio(),
                        told.rootletQ10Ratio()));
    }

    private Couching couching(Couching couching) {
        CouchParameters told = couching.model().parameters();
        CouchParameters.Heat heat = told.heat();
        CouchParameters.Decay decay = told.decay();
        CouchParameters actual = new CouchParameters(
                heat.withLotRatio(heat.lotRatio() * ratio(Doubt.COUCH_HEAT))
                        .withCutC(heat.cutC() * ratio(Doubt.COUCH_CUT)),
                new CouchParameters.Decay(decay.at50PerHour() * ratio(Doubt.COUCH_DECAY), decay.decadeK()),
                told.box().withLossWPerK(told.box().lossWPerK() * ratio(Doubt.BOX_LOSS)));
        return new Couching(
                couching.schedule(),
                couching.box(),
                new CouchModel(actual, lot().energyFraction()),
                weather.of(couching.air(), member));
    }

    private GrowthParameters growth(GrowthParameters told) {
        return new GrowthParameters(
                told.bulkKgPerM3(),
                told.surfaceWPerM2K() * ratio(Doubt.BED_LOSS),
                told.bedWPerMK() * ratio(Doubt.BED_LOSS),
                told.witherPerHourKPa() * ratio(Doubt.FLOOR_DRYING),
                told.restWaterRatio(),
                told.clothRatio(),
                told.uncoveredRatio());
    }

    private KilnParameters kiln(KilnParameters told) {
        DryingParameters drying = told.drying();
        ColourParameters colour = told.colour();
        return told.withDrying(drying.withKernelRatio(drying.kernelRatio() * ratio(Doubt.KERNEL)))
                .withColour(colour.withRateRatio(colour.rateRatio() * ratio(Doubt.COLOUR)))
                .withEnzymes(told.enzymes().withLossRatio(ratio(Doubt.ENZYMES)));
    }

    private Outfit.Drying drying(Outfit.Drying drying) {
        return new Outfit.Drying(
                blown(drying.dryer()),
                blown(drying.curer()),
                drying.hottestDryC() + dryerK(),
                drying.cureC() + curerK());
    }

    private Heater blown(Heater heater) {
        HotAir air = heater.air();
        double flow = air.airFlowM3PerHour() * ratio(Doubt.AIR_FLOW);
        return new Heater(
                heater.name(), heater.place(), air.withAirFlowM3PerHour(flow), heater.trayAreaM2(), heater.control());
    }

    private double dryerK() {
        return member.dryer() * told.outfit().drying().dryer().control().thermostatErrorK();
    }

    private double curerK() {
        Outfit.Drying drying = told.outfit().drying();
        double error = drying.curer().control().thermostatErrorK();
        return error * (drying.sameHeater() ? member.dryer() : member.curer());
    }

    /** The ovens of stew and roast, each as far off its dial as the heater it is. */
    Ovens ovens(Setup actual) {
        Outfit.Ovens chosen = told.outfit().ovens();
        return new Ovens(
                actual,
                chosen.stewing()
                        .map(stewing -> offK(stewing.oven(), member.stewer()))
                        .orElse(0.0),
                chosen.roasting()
                        .map(roasting -> offK(roasting.oven(), member.roaster()))
                        .orElse(0.0));
    }

    private double offK(Heater oven, double ownDeviations) {
        Outfit.Drying drying = told.outfit().drying();
        Optional<Heater> stewer = told.outfit().ovens().stewing().map(Outfit.Stewing::oven);
        double deviations = oven.equals(drying.dryer())
                ? member.dryer()
                : oven.equals(drying.curer())
                        ? member.curer()
                        : stewer.filter(oven::equals).isPresent() ? member.stewer() : ownDeviations;
        return Math.min(HUNG_SD_K, oven.control().thermostatErrorK()) * deviations;
    }

    /** The style's heat as the dial's error makes it; colour before heat errs as all colour does. */
    private MaltStyle style() {
        MaltStyle style = told.style();
        KilnSchedule kiln = style.kiln();
        double dryerK = dryerK();
        List<Rung> ladder = kiln.ladder().stream()
                .map(rung -> new Rung(rung.belowMoistureFraction(), rung.airOnC() + dryerK))
                .toList();
        ColourBase base = kiln.colourBase();
        return style.withKiln(new KilnSchedule(
                ladder,
                kiln.cureC(),
                kiln.cureHours(),
                kiln.endMoistureFraction(),
                new ColourBase(base.startEbc() * ratio(Doubt.COLOUR), base.substrateRatio())));
    }
}
