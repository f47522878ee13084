package piecewright.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import piecewright.belief.SlowKiln;
import piecewright.grain.GrainKind;
import piecewright.process.Metabolism;
import piecewright.process.Surroundings;
import piecewright.process.germination.GrowthParameters;
import piecewright.process.kiln.KilnParameters;
import piecewright.process.steep.Standing;
import piecewright.process.steep.SteepModel;
import piecewright.style.KilnSchedule.Rung;
import piecewright.style.MaltStyle;

/**
 * Everything the physics of one piece needs.
 *
 * @param heaps the couches, for styles that have one
 * @param dryMatterKg dry matter steeped, after floaters, kg
 * @param closures when other batches use the kit chosen
 */
public record Setup(
        MaltStyle style,
        Lot lot,
        Models models,
        Outfit outfit,
        Air air,
        Heaps heaps,
        double dryMatterKg,
        Closures closures) {
    /** Judgement: class limit of water sensitivity as taught in malting practice, from memory; share of corns. */
    public static final double SENSITIVE_FRACTION = 0.10;

    public Setup {
        Objects.requireNonNull(style);
        Objects.requireNonNull(lot);
        Objects.requireNonNull(models);
        Objects.requireNonNull(outfit);
        Objects.requireNonNull(air);
        Objects.requireNonNull(heaps);
        Objects.requireNonNull(closures);
    }

    /** Kit that nobody else uses. */
    public Setup(MaltStyle style, Lot lot, Models models, Outfit outfit, Air air, Heaps heaps, double dryMatterKg) {
        this(style, lot, models, outfit, air, heaps, dryMatterKg, Closures.none());
    }

    Setup withClosures(Closures changed) {
        return new Setup(style, lot, models, outfit, air, heaps, dryMatterKg, changed);
    }

    public Setup withStyle(MaltStyle changed) {
        Optional<Couching> hot = couching()
                .map(old -> changed.couches().hot().map(old::withSchedule).orElse(old));
        return new Setup(changed, lot, models, outfit, air, new Heaps(hot, heaping()), dryMatterKg, closures);
    }

    /** The same with another kiln. */
    public Setup withKiln(KilnParameters changed) {
        Models other = new Models(models.steep(), models.metabolism(), models.growth(), changed, models.gates());
        return new Setup(style, lot, other, outfit, air, heaps, dryMatterKg, closures);
    }

    /** The hot couch, for styles that have one. */
    public Optional<Couching> couching() {
        return heaps.hot();
    }

    /** The wet couch, for styles that may lie in one; whether it is of use it says itself. */
    public Optional<Heaping> heaping() {
        return heaps.wet();
    }

    /** How drained grain stands in air rests: spread where corns drown easily. */
    public Standing restStanding() {
        return lot.waterSensitiveFraction() >= SENSITIVE_FRACTION ? Standing.SPREAD : Standing.BUCKET;
    }

    /** Kind of grain. */
    public GrainKind grain() {
        return lot.grain();
    }

    /** Water as it is poured, °C. */
    public double fillC() {
        return lot.water().fillC();
    }

    /** Air-on while drying at rung 0, 1, … of the style's ladder, no hotter than the dryer gets, °C. */
    public double dryingC(int rung) {
        double rungC = style.kiln().ladder().get(rung).airOnC();
        return Math.min(rungC, outfit.drying().hottestDryC());
    }

    /** Moisture at or below which curing may begin: the first rung as warm as the cure, else the last. */
    public double cureGateFraction() {
        List<Rung> ladder = style.kiln().ladder();
        return ladder.stream()
                .filter(rung -> rung.airOnC() >= outfit.drying().cureC())
                .findFirst()
                .orElse(ladder.get(ladder.size() - 1))
                .belowMoistureFraction();
    }

    /**
     * What the plan assumes of the lot.
     *
     * @param moistureRatio raw grain's water, kg per kg dry
     * @param energyFraction share of corns that grow
     * @param waterSensitiveFraction points lost in more water, 0 when unknown
     * @param water the steep water
     */
    public record Lot(
            GrainKind grain, double moistureRatio, double energyFraction, double waterSensitiveFraction, Water water) {}

    /** Steep water: as it comes, °C, and as poured, °C. */
    public record Water(double sourceC, double fillC) {
        /** Judgement: less is within a tap's own moods, K. */
        private static final double TEMPERED_K = 0.5;

        /** Whether somebody chills or warms it first. */
        public boolean tempered() {
            return Math.abs(fillC - sourceC) > TEMPERED_K;
        }
    }

    /** The couches: the hot one a style insists on, the wet one it may lie in. */
    public record Heaps(Optional<Couching> hot, Optional<Heaping> wet) {
        public Heaps {
            Objects.requireNonNull(hot);
            Objects.requireNonNull(wet);
        }
    }

    /**
     * The models, fitted to this lot.
     *
     * @param gates kilns so slow that nine in ten are drier
     */
    public record Models(
            SteepModel steep, Metabolism metabolism, GrowthParameters growth, KilnParameters kiln, SlowKilns gates) {}

    /** The slow kiln while drying and while curing; one and the same where one heater does both. */
    public record SlowKilns(SlowKiln drying, SlowKiln curing) {}

    /** The air where each stage happens. */
    public record Air(
            Surroundings steep, Surroundings floor, Surroundings wither, Surroundings dryer, Surroundings curer) {}
}
