package piecewright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.assess.LotJudge;
import piecewright.belief.Belief;
import piecewright.belief.SlowKiln;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.grain.GrainLot;
import piecewright.plan.Outfit.Growing;
import piecewright.process.GrainMass;
import piecewright.process.Metabolism;
import piecewright.process.steep.SteepModel;
import piecewright.style.HotCouchSchedule;

/** Chooses the kit of a piece and fits the models to its lot. */
public final class SetupMaker {
    /** Judgement: floaters and screenings of malting-grade grain where not weighed, share of the weight. */
    public static final double USUAL_FLOATERS_FRACTION = 0.02;

    /** Judgement: dry matter left as the steep ends, share of what was steeped. */
    private static final double DRY_CAST_FRACTION = 0.99;

    private final ModelParameters parameters;

    public SetupMaker(ModelParameters parameters) {
        this.parameters = parameters;
    }

    /** The setup of a piece that nobody began. */
    public Optional<Setup> of(PlanRequest request, Rooms rooms, double grainKg, List<Obstacle> obstacles) {
        return of(request, rooms, grainKg, KitUsed.none(), obstacles);
    }

    /** The setup for so much grain, kg, in the kit it lies in already; empty with the reasons added to the obstacles when no kit holds it. */
    Optional<Setup> of(PlanRequest request, Rooms rooms, double grainKg, KitUsed used, List<Obstacle> obstacles) {
        SetupMaker ofGrain = new SetupMaker(parameters.forGrain(request.lot().kind()));
        if (request.besides().isEmpty()) return ofGrain.fitted(request, rooms, grainKg, used, obstacles);
        Sharing sharing = Sharing.sparing(request, used);
        while (true) {
            List<Obstacle> why = new ArrayList<>();
            Optional<Setup> setup = ofGrain.fitted(request.withHouse(sharing.house()), rooms, grainKg, used, why);
            Optional<Sharing> wider = setup.isPresent() ? Optional.empty() : sharing.widened(why);
            if (wider.isEmpty()) {
                obstacles.addAll(why);
                Closures closures = setup.map(sharing::closures).orElse(Closures.none());
                return setup.map(chosen -> chosen.withClosures(closures));
            }
            sharing = wider.get();
        }
    }

    private Optional<Setup> fitted(
            PlanRequest request, Rooms rooms, double grainKg, KitUsed used, List<Obstacle> obstacles) {
        GrainLot lot = request.lot();
        double floaters = lot.size().floatersFraction().orElse(USUAL_FLOATERS_FRACTION);
        double dryKg = grainKg * (1 - floaters) * (1 - lot.moisture().moisture().wetBasisFraction());
        Optional<Outfit> outfit =
                new Outfitting(request, rooms, parameters, used).choose(lot.kind(), grainKg, dryKg, obstacles);
        Optional<CouchFitting> fitting = request.style().couches().hot().map(hot -> fitting(request, rooms, hot, used));
        Optional<Couching> couching =
                fitting.flatMap(one -> one.choose(request.arrangement().places(), dryKg, obstacles));
        if (outfit.isEmpty() || fitting.isPresent() && couching.isEmpty()) return Optional.empty();
        Outfit chosen = outfit.get();
        Growing withering =
                fitting.map(one -> one.withering(chosen.growing(), dryKg)).orElse(chosen.withering());
        return Optional.of(setup(request, rooms, chosen.withWithering(withering), couching, dryKg));
    }

    private CouchFitting fitting(PlanRequest request, Rooms rooms, HotCouchSchedule hot, KitUsed used) {
        return new CouchFitting(
                request.house(), rooms, parameters, hot, Metabolism.germinatingFraction(request.lot()), used);
    }

    private static Setup.SlowKilns gates(PlanRequest request, Outfit.Drying drying) {
        Belief belief = request.belief();
        Unknown kernels = new Unknown(Trait.KERNEL_RATE, request.lot().name());
        return new Setup.SlowKilns(
                SlowKiln.of(belief, new Unknown(Trait.AIR_FLOW, drying.dryer().name()), kernels),
                SlowKiln.of(belief, new Unknown(Trait.AIR_FLOW, drying.curer().name()), kernels));
    }

    private Setup setup(PlanRequest request, Rooms rooms, Outfit chosen, Optional<Couching> couching, double dryKg) {
        GrainLot lot = request.lot();
        Setup.Lot assumed = new Setup.Lot(
                lot.kind(),
                lot.moisture().moisture().dryBasisRatio(),
                Metabolism.germinatingFraction(lot),
                lot.waterSensitivityFraction().orElse(0),
                new Setup.Water(
                        request.house().steepWaterC(),
                        request.arrangement().fillC().orElse(request.house().steepWaterC())));
        ModelParameters taught =
                parameters.taughtBy(lot.learned(), request.house().kit().learned(), chosen);
        Setup.Models models = new Setup.Models(
                SteepModel.of(lot, taught.steepIn(chosen.soaking().vessels())),
                Metabolism.of(lot, taught.metabolism()),
                taught.growth(),
                taught.kiln(),
                gates(request, chosen.drying()));
        Setup.Air air = new Setup.Air(
                rooms.at(chosen.soaking().place()),
                rooms.at(chosen.growing().place()),
                rooms.at(chosen.withering().place()),
                rooms.at(chosen.drying().dryer().place()),
                rooms.at(chosen.drying().curer().place()));
        Optional<Heaping> heaping = request.style().couches().wet().map(wet -> {
            double wetKg = dryKg * DRY_CAST_FRACTION;
            double aim = request.style().steep().targetFraction();
            GrainMass cast = new GrainMass(dryKg, wetKg, wetKg * aim / (1 - aim));
            return new HeapFitting(request.house(), rooms, taught.growth(), models.metabolism(), cast)
                    .choose(wet.coolerByK(LotJudge.effects(lot).coolerK()), chosen.growing(), parameters);
        });
        return new Setup(request.style(), assumed, models, chosen, air, new Setup.Heaps(couching, heaping), dryKg);
    }
}
