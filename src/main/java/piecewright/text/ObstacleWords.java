package piecewright.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.StringJoiner;
import piecewright.plan.Obstacle;
import piecewright.plan.Obstacle.CouchTooSmall.Remedies;
import piecewright.quantity.Moisture;

/** What stands in the way, by how much, and what would help. */
final class ObstacleWords {
    private final QuantityFormat quantities;
    private final MomentFormat moments;

    ObstacleWords(QuantityFormat quantities, MomentFormat moments) {
        this.quantities = quantities;
        this.moments = moments;
    }

    String sentence(Obstacle obstacle) {
        if (obstacle instanceof Obstacle.NobodyThere o) {
            return Phrases.say(
                    "obstacle.nobody-there",
                    ActNames.byId(o.actId()),
                    moments.moment(o.earliest()),
                    moments.moment(o.latest()));
        }
        if (obstacle instanceof Obstacle.TooSoon o) {
            return Phrases.say("obstacle.too-soon", moments.moment(o.readyBy()), quantities.time(o.shortBy()));
        }
        if (obstacle instanceof Obstacle.BedTooWarm o) {
            return Phrases.say(
                    "obstacle.bed-too-warm",
                    o.place(),
                    quantities.temperature(o.expectedC()),
                    quantities.temperature(o.warmestC()),
                    moments.moment(o.from()));
        }
        if (obstacle instanceof Obstacle.WouldFreeze o) {
            return Phrases.say(
                    "obstacle.would-freeze", o.place(), quantities.temperature(o.grainC()), moments.moment(o.from()));
        }
        if (obstacle instanceof Obstacle.NothingFits o) {
            return Phrases.say("obstacle.nothing-fits", ActNames.byId(o.actId()), moments.moment(o.reached()));
        }
        if (obstacle instanceof Obstacle.NotAllTried o) {
            return Phrases.say("obstacle.not-all-tried", Integer.toString(o.kits()));
        }
        if (obstacle instanceof Obstacle.HeldByOthers o) {
            return Phrases.say("obstacle.held-by-others", String.join("”, “", o.batches()));
        }
        if (obstacle instanceof Obstacle.LongAfterPlan o) {
            return Phrases.say("obstacle.long-after-plan", moments.dated(o.last()));
        }
        if (obstacle instanceof Obstacle.TreatedSeed o) return Phrases.say("obstacle.treated-seed", o.lot());
        if (obstacle instanceof Obstacle.TooFewGrow o) {
            return Phrases.say(
                    "obstacle.too-few-grow",
                    o.lot(),
                    quantities.percent(o.energyFraction()),
                    quantities.percent(o.neededFraction()));
        }
        if (obstacle instanceof Obstacle.GrainNotForStyle o) {
            return Phrases.say(
                    "obstacle.grain-not-for-style", o.style(), o.grain().key());
        }
        return ofTheKit(obstacle);
    }

    private String ofTheKit(Obstacle obstacle) {
        if (obstacle instanceof Obstacle.VesselTooSmall o) {
            return Phrases.say(
                    "obstacle.vessel-too-small", quantities.volume(o.neededL()), quantities.volume(o.largestL()));
        }
        if (obstacle instanceof Obstacle.BedTooDeep o) {
            return Phrases.say(
                    "obstacle.bed-too-deep",
                    quantities.length(o.depthCm()),
                    quantities.length(o.deepestCm()),
                    quantities.area(o.areaM2()));
        }
        if (obstacle instanceof Obstacle.ColourOutOfReach o) {
            String others = o.reaching().isEmpty()
                    ? Phrases.say("obstacle.colour-out-of-reach.none")
                    : Phrases.say("obstacle.colour-out-of-reach.others", String.join(", ", o.reaching()));
            return Phrases.say(
                    "obstacle.colour-out-of-reach",
                    o.style(),
                    quantities.colour(o.wantedEbc()),
                    quantities.colour(o.nearestEbc()),
                    others);
        }
        if (obstacle instanceof Obstacle.NoHeater o) {
            return Phrases.say(
                    "obstacle.no-heater", quantities.temperature(o.neededC()), quantities.temperature(o.hottestC()));
        }
        if (obstacle instanceof Obstacle.HeaterTooSmall o) {
            return Phrases.say(
                    "obstacle.heater-too-small", quantities.area(o.neededM2()), quantities.area(o.largestM2()));
        }
        if (obstacle instanceof Obstacle.NeverDry o) {
            return Phrases.say(
                    "obstacle.never-dry",
                    quantities.temperature(o.airOnC()),
                    quantities.moisture(new Moisture(o.reachedFraction())));
        }
        return ofTheOven(obstacle);
    }

    private String ofTheOven(Obstacle obstacle) {
        if (obstacle instanceof Obstacle.NoOven o) {
            return Phrases.say(
                    "obstacle.no-oven", quantities.temperature(o.neededC()), quantities.temperature(o.hottestC()));
        }
        if (obstacle instanceof Obstacle.RoastTooHot o) {
            return Phrases.say(
                    "obstacle.roast-too-hot",
                    o.style(),
                    quantities.temperature(o.neededC()),
                    quantities.temperature(o.ceilingC()));
        }
        if (obstacle instanceof Obstacle.OvenUnsure o) {
            return Phrases.say(
                    "obstacle.oven-unsure",
                    quantities.temperature(o.neededC()),
                    quantities.temperatureStep(o.errorK()),
                    quantities.temperature(o.ceilingC()));
        }
        if (obstacle instanceof Obstacle.StewTooDeep o) {
            return Phrases.say(
                    "obstacle.stew-too-deep",
                    quantities.length(o.depthCm()),
                    quantities.length(o.deepestCm()),
                    quantities.area(o.areaM2()));
        }
        if (obstacle instanceof Obstacle.TooManyLoads o) {
            return Phrases.say(
                    "obstacle.too-many-loads",
                    Integer.toString(o.loads()),
                    Integer.toString(o.most()),
                    quantities.roughMass(o.loadKg()));
        }
        if (obstacle instanceof Obstacle.BlockTooLong o) {
            return Phrases.say(
                    "obstacle.block-too-long",
                    ActNames.byId(o.actId()),
                    quantities.time(o.needed()),
                    quantities.time(o.longest()));
        }
        return ofTheCouch(obstacle);
    }

    private String ofTheCouch(Obstacle obstacle) {
        if (obstacle instanceof Obstacle.NoBox) return Phrases.say("obstacle.no-box");
        if (obstacle instanceof Obstacle.BoxTooSmall o) {
            return Phrases.say(
                    "obstacle.box-too-small", quantities.volume(o.neededL()), quantities.volume(o.largestL()));
        }
        if (obstacle instanceof Obstacle.CouchTooSmall o) return tooSmall(o);
        throw new IllegalArgumentException("no words for " + obstacle.getClass().getSimpleName());
    }

    /** The pile as it is, and what alone would make it heat; remedies out of reach are left out. */
    private String tooSmall(Obstacle.CouchTooSmall obstacle) {
        Remedies remedies = obstacle.remedies();
        StringJoiner words = new StringJoiner(" ");
        words.add(Phrases.say(
                "obstacle.couch-too-small",
                quantities.mass(obstacle.grainKg()),
                quantities.temperature(obstacle.airC()),
                quantities.mass(remedies.grainKg())));
        if (!Double.isNaN(remedies.airC())) {
            words.add(Phrases.say("obstacle.couch-too-small.warmer", quantities.temperature(remedies.airC())));
        }
        if (!Double.isNaN(remedies.tightWPerK())) {
            words.add(Phrases.say(
                    "obstacle.couch-too-small.box", loss(remedies.tightWPerK()), loss(remedies.boxWPerK())));
        }
        return words.toString();
    }

    /** Loss of a box: watts per kelvin are the same in every system of units. */
    private static String loss(double wattsPerKelvin) {
        return BigDecimal.valueOf(wattsPerKelvin).setScale(2, RoundingMode.HALF_UP) + " W/K";
    }
}
