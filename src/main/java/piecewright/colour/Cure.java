package piecewright.colour;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import piecewright.house.Heater.HotAir;
import piecewright.process.CouchState;
import piecewright.process.KilnState;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.Surroundings;
import piecewright.process.kiln.EnzymeSurvival;
import piecewright.process.kiln.KilnParameters;
import piecewright.process.kiln.KilnStage;
import piecewright.process.kiln.StewCourse;
import piecewright.quantity.Moisture;
import piecewright.quantity.TemperatureRange;
import piecewright.style.HotCouchSchedule;
import piecewright.style.KilnSchedule.Rung;
import piecewright.style.MaltStyle;

/**
 * Colour and enzymes of a kilned style by air-on and hours of its cure, after its hot couch, broken at the index it
 * prefers, or its stew, if it has one, and its usual drying: the ladder in 10 m³/h of
 * air per kg of dry matter, rung by rung on moisture, then half the air for the cure. A room of 20 °C and 50 %.
 */
public final class Cure {
    /** Judgement: air of a home kiln, m³/h per kg of dry matter. */
    private static final double AIR_M3_PER_HOUR_KG = 10;
    /** Judgement: vents are half shut for curing. */
    private static final double CURE_FLOW_RATIO = 0.5;
    /** Judgement: no rung lasts longer. */
    private static final double RUNG_LONGEST_HOURS = 72;
    /** Judgement: a heated room. */
    private static final double ROOM_C = 20;
    /** Judgement: a heated room. */
    private static final double ROOM_HUMIDITY_FRACTION = 0.5;

    private static final Surroundings ROOM = Surroundings.constant(Instant.EPOCH, ROOM_C, ROOM_HUMIDITY_FRACTION);

    private final MaltStyle style;
    private final KilnParameters parameters;
    private final Optional<Couch> couch;
    private final PieceState dried;

    public Cure(MaltStyle style, KilnParameters parameters) {
        this.style = style;
        this.parameters = parameters;
        EnzymeSurvival enzymes = new EnzymeSurvival(parameters.enzymes());
        this.couch = style.couches().hot().map(hot -> new Couch(hot.indexHours(), UsualCouch.of(hot, enzymes)));
        this.dried = dried((style.kiln().cureC().lowC() + style.kiln().cureC().highC()) / 2);
    }

    public MaltStyle style() {
        return style;
    }

    /**
     * The malt off the kiln.
     *
     * @param couch its hot couch; empty for a style without one
     * @param diastaticFraction share of the green malt's diastatic power that survives; {@link EnzymeBand} says how sure
     */
    public record Cured(
            Optional<Couch> couch,
            double cureC,
            double cureHours,
            double colourEbc,
            double diastaticFraction,
            double endMoistureFraction) {
        public Cured {
            Objects.requireNonNull(couch);
        }
    }

    /** A hot couch broken at an index, hours; and how that goes in a usual box. */
    public record Couch(double indexHours, UsualCouch usual) {
        public Couch {
            Objects.requireNonNull(usual);
        }
    }

    /**
     * @param cureC air-on, °C, [0, 150]
     * @param cureHours 0 or more
     */
    public Cured at(double cureC, double cureHours) {
        PieceState malt = malt(cureC, cureHours);
        return new Cured(
                couch,
                cureC,
                cureHours,
                malt.kiln().colourEbc(),
                malt.kiln().diastaticFraction(),
                malt.mass().moisture().wetBasisFraction());
    }

    /** The malt as it leaves the kiln after such a cure. */
    PieceState malt(double cureC, double cureHours) {
        double airM3PerHour = CURE_FLOW_RATIO * AIR_M3_PER_HOUR_KG;
        return stage(cureC, airM3PerHour).run(dried, 0, cureHours);
    }

    /** The piece when its cure begins: as dry as the first rung that is as warm as the middle of the cure asks. */
    private PieceState dried(double cureC) {
        Optional<HotCouchSchedule> hotCouch = style.couches().hot();
        double greenFraction = hotCouch.map(HotCouchSchedule::packingFraction)
                .orElse(style.steep().targetFraction());
        PieceState packed = PieceState.rawGrain(
                        1 / (1 - greenFraction),
                        new Moisture(greenFraction),
                        1,
                        style.kiln().colourBase().startEbc(),
                        ROOM_C)
                .withCouch(
                        hotCouch.map(hot -> new CouchState(1, hot.indexHours())).orElse(CouchState.none()));
        double couched = couch.map(one -> one.usual().diastaticFraction()).orElse(1.0);
        PieceState green = packed.withKiln(
                new KilnState(packed.kiln().colourEbc(), couched, packed.kiln().smmFraction()));
        PieceState now = style.oven()
                .stew()
                .map(stew -> StewCourse.of(parameters, style, stew, StewCourse.USUAL_DEPTH_CM)
                        .stewed(green))
                .orElse(green);
        List<Rung> ladder = style.kiln().ladder();
        for (int i = 0; i + 1 < ladder.size() && ladder.get(i).airOnC() < cureC; i++) {
            KilnStage stage = stage(ladder.get(i).airOnC(), AIR_M3_PER_HOUR_KG);
            double untilFraction = ladder.get(i + 1).belowMoistureFraction();
            for (double hours = 0; hours < RUNG_LONGEST_HOURS; hours += Stage.STEP_HOURS) {
                if (now.mass().moisture().wetBasisFraction() <= untilFraction) break;
                now = stage.step(now, hours, Stage.STEP_HOURS);
            }
        }
        return now;
    }

    private KilnStage stage(double airOnC, double airM3PerHour) {
        HotAir air = new HotAir(new TemperatureRange(0, 150), airM3PerHour, false, 1e6, 0);
        double substrate = style.kiln().colourBase().substrateRatio();
        return new KilnStage(parameters, airOnC, air, ROOM, substrate);
    }
}
