package piecewright.purchase;

import java.time.Instant;
import java.util.List;
import piecewright.grain.GrainLot;
import piecewright.house.Heater.HotAir;
import piecewright.plan.ModelParameters;
import piecewright.plan.SetupMaker;
import piecewright.plan.Simulation;
import piecewright.process.Metabolism;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.Surroundings;
import piecewright.process.germination.Cover;
import piecewright.process.germination.FloorActs;
import piecewright.process.germination.FloorBed;
import piecewright.process.kiln.KilnStage;
import piecewright.process.kiln.RoastCourse;
import piecewright.process.kiln.StewCourse;
import piecewright.process.steep.AirRest;
import piecewright.process.steep.Bath;
import piecewright.process.steep.Immersion;
import piecewright.process.steep.Standing;
import piecewright.process.steep.SteepModel;
import piecewright.quantity.TemperatureRange;
import piecewright.style.KilnSchedule.Rung;
import piecewright.style.MaltStyle;

/**
 * A batch without a house: the plan's stages in a room of 15 °C and 75 % humidity. Soaks of at most 8 h and rests of
 * 12 h to the style's steep-out moisture, a 5 cm bed turned every 12 h until the style's acrospire, the style's ladder
 * in 10 m³/h of air per kg of dry matter, the middle of its cure, de-rooting, handling and roast as in a plan.
 */
public final class ReferenceCourse {
    /** Judgement: a cool room, the usual floor. */
    private static final double ROOM_C = 15;
    /** Judgement: an unheated room. */
    private static final double ROOM_HUMIDITY_FRACTION = 0.75;
    /** Judgement: usual longest soak at 15 °C. */
    private static final double SOAK_HOURS = 8;
    /** Judgement: usual rest. */
    private static final double REST_HOURS = 12;
    /** Judgement: usual gap of turnings of a thin bed. */
    private static final double TURN_HOURS = 12;
    /** Judgement: a dip of half an hour fills the husk again. */
    private static final double DIP_HOURS = 0.5;
    /** Judgement: litres of water per kg of grain. */
    private static final double WATER_L_PER_KG = 1.5;
    /** Judgement: loose green malt, 480 kg/m³, 5 cm deep. */
    private static final double BED_KG_PER_M2 = 24;
    /** Judgement: air of a home kiln, m³/h per kg of dry matter. */
    private static final double AIR_M3_PER_HOUR_KG = 10;
    /** Judgement: no phase of the kiln lasts longer. */
    private static final double KILN_LONGEST_HOURS = 72;
    /** Judgement: nor does the floor. */
    private static final double FLOOR_LONGEST_HOURS = 14 * 24;

    private static final Surroundings ROOM = Surroundings.constant(Instant.EPOCH, ROOM_C, ROOM_HUMIDITY_FRACTION);

    private final MaltStyle style;
    private final GrainLot lot;
    private final ModelParameters parameters;
    private final SteepModel steep;
    private final Metabolism metabolism;

    public ReferenceCourse(MaltStyle style, GrainLot lot, ModelParameters parameters) {
        this.style = style;
        this.lot = lot;
        this.parameters = parameters;
        this.steep = SteepModel.of(lot, parameters.steep());
        this.metabolism = Metabolism.of(lot, parameters.metabolism());
    }

    /** The finished piece of so much grain as bought, kg, more than 0. */
    public PieceState finished(double grainKg) {
        double floaters = lot.size().floatersFraction().orElse(SetupMaker.USUAL_FLOATERS_FRACTION);
        PieceState raw = PieceState.rawGrain(
                grainKg * (1 - floaters),
                lot.moisture().moisture(),
                steep.startChitRatio(),
                style.kiln().colourBase().startEbc(),
                ROOM_C);
        PieceState malt = kilned(stewed(grown(steeped(raw))));
        PieceState derooted = FloorActs.handled(
                FloorActs.derooted(malt, lot.kind(), metabolism.germinatingFraction()), Simulation.HANDLING_FRACTION);
        return style.oven()
                .roast()
                .map(roast -> RoastCourse.of(parameters.kiln(), style, roast).roasted(derooted))
                .map(roasted -> roasted.withGrainC(ROOM_C))
                .orElse(derooted);
    }

    private PieceState stewed(PieceState green) {
        return style.oven()
                .stew()
                .map(stew -> StewCourse.of(parameters.kiln(), style, stew, StewCourse.USUAL_DEPTH_CM)
                        .stewed(green))
                .orElse(green);
    }

    private PieceState steeped(PieceState raw) {
        var target = piecewright.quantity.Moisture.ofWetBasisPercent(
                100 * style.steep().targetFraction());
        PieceState now = raw;
        Bath bath = new Bath(ROOM_C, WATER_L_PER_KG * raw.mass().totalKg());
        Immersion soak = new Immersion(steep, metabolism, ROOM, Standing.BUCKET, bath);
        AirRest rest = new AirRest(steep, metabolism, ROOM, Standing.BUCKET);
        for (int number = 1; number <= style.steep().mostImmersions(); number++) {
            double neededHours = steep.soakHoursTo(target, now, ROOM_C);
            now = soak.run(now, 0, Math.max(DIP_HOURS, Math.min(SOAK_HOURS, neededHours)));
            if (number >= style.steep().fewestImmersions() && neededHours <= SOAK_HOURS) break;
            now = rest.run(now, 0, REST_HOURS);
        }
        return rest.run(now, 0, DIP_HOURS);
    }

    private PieceState grown(PieceState steeped) {
        double areaM2 = steeped.mass().totalKg() / BED_KG_PER_M2;
        FloorBed bed = new FloorBed(metabolism, parameters.growth(), ROOM, areaM2, Cover.DAMP_CLOTH);
        PieceState now = steeped;
        double sinceTurned = 0;
        for (double hours = 0; hours < FLOOR_LONGEST_HOURS; hours += Stage.STEP_HOURS) {
            if (now.growth().growthRatio() >= style.growth().acrospireFraction()) break;
            now = bed.step(now, hours, Stage.STEP_HOURS);
            sinceTurned += Stage.STEP_HOURS;
            if (sinceTurned < TURN_HOURS) continue;
            double keep = style.growth().keepMoistureFraction();
            now = FloorActs.turned(
                    FloorActs.sprinkled(now, FloorActs.sprinklingKg(now.mass(), keep / (1 - keep))), ROOM_C);
            sinceTurned = 0;
        }
        return now;
    }

    private PieceState kilned(PieceState green) {
        double cureC = (style.kiln().cureC().lowC() + style.kiln().cureC().highC()) / 2;
        double cureHours =
                (style.kiln().cureHours().lowHours() + style.kiln().cureHours().highHours()) / 2;
        double airM3PerHour = AIR_M3_PER_HOUR_KG * green.mass().dryMatterKg();
        HotAir open = new HotAir(new TemperatureRange(ROOM_C, 150), airM3PerHour, false, 1e6, 0);
        List<Rung> ladder = style.kiln().ladder();
        PieceState now = green;
        for (int i = 0; i + 1 < ladder.size() && ladder.get(i).airOnC() < cureC; i++) {
            double untilFraction = ladder.get(i + 1).belowMoistureFraction();
            KilnStage stage = kiln(ladder.get(i).airOnC(), open);
            for (double hours = 0; hours < KILN_LONGEST_HOURS; hours += Stage.STEP_HOURS) {
                if (now.mass().moisture().wetBasisFraction() <= untilFraction) break;
                now = stage.step(now, hours, Stage.STEP_HOURS);
            }
        }
        PieceState cured =
                kiln(cureC, piecewright.plan.Outfit.Drying.vented(open)).run(now, 0, cureHours);
        return cured.withGrainC(ROOM_C);
    }

    private KilnStage kiln(double airOnC, HotAir air) {
        double substrate = style.kiln().colourBase().substrateRatio();
        return new KilnStage(parameters.kiln(), airOnC, air, ROOM, substrate);
    }
}
