package piecewright.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import piecewright.house.House;
import piecewright.house.InsulatedBox;
import piecewright.house.Trays;
import piecewright.plan.Outfit.Growing;
import piecewright.process.Psychrometrics;
import piecewright.process.couch.CouchModel;
import piecewright.process.couch.CouchParameters;
import piecewright.process.couch.Ignition;
import piecewright.style.HotCouchSchedule;

/** Chooses the box a piece heats itself in and the place it withers in before, or says why it would stay cold. */
final class CouchFitting {
    /** Judgement: a pile is packed about this much warmer than the room it withered in. */
    private static final double PACKED_RISE_K = 3;
    /** Judgement: withering beds are spread thin, cm; the depth its rate was observed at. */
    private static final double WITHER_BED_CM = 2.5;
    /** Judgement: moisture at which beds are laid, wet basis. */
    private static final double LAID_FRACTION = 0.46;
    /** Judgement: warmer than this nothing alive is left to wither. */
    private static final double WARMEST_WITHER_C = 24;
    /** Judgement: no home is warmer; beyond it warmth is no advice. */
    private static final double WARMEST_ROOM_C = 30;
    /** Judgement: no box at home holds heat better, W/K. */
    private static final double BEST_BOX_W_PER_K = 0.05;

    private final House house;
    private final Rooms rooms;
    private final ModelParameters parameters;
    private final HotCouchSchedule schedule;
    private final double energyFraction;
    private final KitUsed used;

    CouchFitting(
            House house,
            Rooms rooms,
            ModelParameters parameters,
            HotCouchSchedule schedule,
            double energyFraction,
            KitUsed used) {
        this.used = used;
        this.house = house;
        this.rooms = rooms;
        this.parameters = parameters;
        this.schedule = schedule;
        this.energyFraction = energyFraction;
    }

    /**
     * The box with its model, or every reason against. A piece that was begun goes into the box it was planned for, and
     * what is packed lies in it, whatever was learned of its heat since.
     */
    Optional<Couching> choose(Arrangement.Places places, double dryMatterKg, List<Obstacle> obstacles) {
        Optional<InsulatedBox> planned = used.of(ActKind.PACK, house.kit().boxes(), InsulatedBox::name).stream()
                .findFirst();
        if (used.did(ActKind.PACK) || used.begun() && planned.isPresent()) {
            Optional<Couching> lies = planned.or(this::largest).map(this::couching);
            if (lies.isPresent()) return lies;
        }
        return chosen(places, dryMatterKg, obstacles);
    }

    private Optional<InsulatedBox> largest() {
        return house.kit().boxes().stream().max(Comparator.comparingDouble(InsulatedBox::volumeL));
    }

    private Couching couching(InsulatedBox box) {
        return new Couching(schedule, box, model(box), rooms.at(box.place()));
    }

    private Optional<Couching> chosen(Arrangement.Places places, double dryMatterKg, List<Obstacle> obstacles) {
        List<InsulatedBox> boxes = house.kit().boxes();
        if (boxes.isEmpty()) {
            obstacles.add(new Obstacle.NoBox());
            return Optional.empty();
        }
        double greenKg = dryMatterKg * CouchModel.DRY_LEFT_FRACTION / (1 - schedule.packingFraction());
        double neededL = 1000 * greenKg / parameters.growth().bulkKgPerM3();
        double largestL =
                boxes.stream().mapToDouble(InsulatedBox::volumeL).max().orElse(0);
        double barleyKg = dryMatterKg / CouchModel.RAW_DRY_FRACTION;
        List<InsulatedBox> holding =
                boxes.stream().filter(box -> box.volumeL() >= neededL).toList();
        Optional<InsulatedBox> best = Arrangement.Places.asked(holding, InsulatedBox::name, places.box()).stream()
                .max(Comparator.comparingDouble(box -> barleyKg / criticalKg(model(box), airC(box))));
        if (best.isEmpty()) {
            obstacles.add(new Obstacle.BoxTooSmall(neededL, largestL));
            return Optional.empty();
        }
        InsulatedBox box = best.get();
        double criticalKg = criticalKg(model(box), airC(box));
        if (barleyKg < criticalKg) {
            obstacles.add(cold(box, barleyKg));
            return Optional.empty();
        }
        return Optional.of(couching(box));
    }

    private Obstacle cold(InsulatedBox box, double barleyKg) {
        CouchModel model = model(box);
        double reliableKg = Ignition.RELIABLE_RATIO * criticalKg(model, airC(box));
        double warmC =
                least(airC(box), WARMEST_ROOM_C, airC -> Ignition.RELIABLE_RATIO * criticalKg(model, airC) <= barleyKg);
        double usedWPerK = model.parameters().box().lossWPerK();
        double tightWPerK = -least(
                -usedWPerK,
                -BEST_BOX_W_PER_K,
                minusWPerK -> Ignition.RELIABLE_RATIO * criticalKg(losing(model, -minusWPerK), airC(box)) <= barleyKg);
        return new Obstacle.CouchTooSmall(
                barleyKg, airC(box), new Obstacle.CouchTooSmall.Remedies(reliableKg, warmC, usedWPerK, tightWPerK));
    }

    /** The least figure from low to high that holds; NaN when high does not. */
    private static double least(double low, double high, DoublePredicate holds) {
        if (!holds.test(high)) return Double.NaN;
        double no = low;
        double yes = high;
        while (yes - no > 1e-3) {
            double middle = (no + yes) / 2;
            if (holds.test(middle)) yes = middle;
            else no = middle;
        }
        return yes;
    }

    private CouchModel losing(CouchModel model, double lossWPerK) {
        CouchParameters like = model.parameters();
        return new CouchModel(like.withBox(like.box().withLossWPerK(lossWPerK)), energyFraction);
    }

    private CouchModel model(InsulatedBox box) {
        CouchParameters usual = parameters.couch();
        double learned = house.kit().learned().couchHeatRatios().getOrDefault(box.name(), 1.0);
        double heat = usual.heat().lotRatio() * learned;
        return CouchModel.of(box, usual.withHeat(usual.heat().withLotRatio(heat)), energyFraction);
    }

    private double airC(InsulatedBox box) {
        return rooms.meanC(box.place());
    }

    /** Least raw grain that heats itself at the moisture within the style's that suits it best, kg. */
    private double criticalKg(CouchModel model, double airC) {
        Ignition ignition = new Ignition(model);
        double startC = airC + PACKED_RISE_K;
        double[] moistures = {
            schedule.packing().lowFraction(),
            schedule.packingFraction(),
            schedule.packing().highFraction()
        };
        double least = Double.POSITIVE_INFINITY;
        for (double moisture : moistures) least = Math.min(least, ignition.criticalKg(moisture, airC, startC));
        return least;
    }

    /** Where and how thin the piece withers: where it dries fastest without getting too warm to live. */
    Growing withering(Growing growing, double dryMatterKg) {
        double greenKg = dryMatterKg / (1 - LAID_FRACTION);
        double thinM2 = greenKg / (parameters.growth().bulkKgPerM3() * WITHER_BED_CM / 100);
        List<Trays> planned = used.of(ActKind.WITHER, house.kit().trays(), Trays::place);
        List<Trays> open = planned.isEmpty() ? house.kit().trays() : planned;
        Growing best = planned.isEmpty() ? growing : bed(planned.get(0), greenKg, thinM2);
        for (Trays trays : open) {
            Growing other = bed(trays, greenKg, thinM2);
            boolean warm = rooms.meanC(trays.place()) > WARMEST_WITHER_C;
            if (!warm && drying(other) > drying(best)) best = other;
        }
        return best;
    }

    private Growing bed(Trays trays, double greenKg, double thinM2) {
        double allM2 = house.kit().trays().stream()
                .filter(other -> other.place().equals(trays.place()))
                .mapToDouble(Trays::totalAreaM2)
                .sum();
        double areaM2 = Math.min(allM2, thinM2);
        return new Growing(
                trays.place(), areaM2, 100 * greenKg / (parameters.growth().bulkKgPerM3() * areaM2));
    }

    private double drying(Growing bed) {
        double humidity = rooms.at(bed.place()).humidityFraction();
        return Psychrometrics.vapourPressureDeficitKPa(rooms.meanC(bed.place()), humidity) / bed.depthCm();
    }
}
