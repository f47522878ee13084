package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import piecewright.process.GrainMass;
import piecewright.process.Ledgers;
import piecewright.process.PieceState;

/** What must hold of every plan, over 500 households drawn from seeds. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PlanInvariantsTest {
    private static final int HOUSEHOLDS = Integer.getInteger("piecewright.households", 500);

    private List<Case> cases = List.of();

    private record Case(long seed, PlanRequest request, PlanResult result) {
        Plan plan() {
            return ((PlanResult.Planned) result).plan();
        }
    }

    @BeforeAll
    void planAll() {
        Planner planner = new Planner(ModelParameters.defaults());
        cases = LongStream.range(0, HOUSEHOLDS)
                .parallel()
                .mapToObj(seed -> {
                    PlanRequest request = Seeded.request(seed);
                    return new Case(seed, request, planner.plan(request));
                })
                .toList();
    }

    private List<Case> planned() {
        return cases.stream()
                .filter(one -> one.result() instanceof PlanResult.Planned)
                .toList();
    }

    @Test
    void mostHouseholdsGetAPlan() {
        assertTrue(planned().size() >= cases.size() * 0.75, planned().size() + " of " + cases.size());
    }

    @Test
    void everyActFitsInSomebodysHoursOrAnAllowedNight() {
        for (Case one : planned()) {
            Plan plan = one.plan();
            Availability availability = Availability.of(
                    one.request().house(),
                    plan.startsAt().minus(Duration.ofDays(2)),
                    plan.subject().readyAt());
            int nights = 0;
            for (Act act : plan.acts()) {
                Instant until = availability.workableUntil(act.startsAt()).orElse(Instant.MIN);
                boolean byDay = !until.isBefore(act.endsAt());
                if (!byDay) nights++;
                boolean byNight = !availability
                        .nightUntil(act.startsAt())
                        .orElse(Instant.MIN)
                        .isBefore(act.endsAt());
                assertTrue(byDay || byNight, one.seed() + " " + act.id());
            }
            assertTrue(nights <= one.request().house().nights().most(), "nights, seed " + one.seed());
        }
    }

    @Test
    void noActStandsPastItsHardLimit() {
        List<String> late = new ArrayList<>();
        for (Case one : planned()) {
            for (Act act : one.plan().acts()) {
                boolean inside = !act.startsAt().isAfter(act.window().hardLatest())
                        && !act.startsAt().isBefore(act.window().earliest());
                if (!inside) late.add(one.seed() + " " + act.id());
            }
        }
        assertEquals(List.of(), late);
    }

    @Test
    void actsComeInOrderAndNeverOverlap() {
        for (Case one : planned()) {
            List<Act> acts = one.plan().acts();
            for (int i = 1; i < acts.size(); i++) {
                assertTrue(
                        acts.get(i).startsAt().isAfter(acts.get(i - 1).startsAt()),
                        one.seed() + " " + acts.get(i).id());
            }
        }
    }

    /** Binding rule of the trade, common practice, no source: no heat over its rung while the malt is too wet. */
    @Test
    void heatIsRaisedOnlyWhenTheMaltIsDryEnough() {
        for (Case one : planned()) {
            for (Act act : one.plan().acts()) {
                double gate = act.setting().gateFraction().orElse(1);
                double expected = act.expect().moisture().wetBasisFraction();
                assertTrue(expected <= gate, one.seed() + " " + act.id() + " " + expected);
            }
        }
    }

    @Test
    void hotHeatIsAttendedUnlessTheHeaterIsSafe() {
        for (Case one : planned()) {
            if (one.request().house().kit().heaters().get(0).control().safeUnattended()) continue;
            Plan plan = one.plan();
            Availability availability = Availability.of(
                    one.request().house(), plan.startsAt(), plan.startsAt().plus(Duration.ofDays(40)));
            Instant off = first(plan, ActKind.OFF).startsAt();
            for (Act act : plan.acts()) {
                boolean heats = act.kind() == ActKind.RAISE || act.kind() == ActKind.CURE;
                if (!heats || act.setting().setC().orElse(0) <= 60) continue;
                Instant attended = availability.attendedUntil(act.startsAt()).orElse(Instant.MIN);
                Instant ends = next(plan, act).startsAt();
                assertTrue(!attended.isBefore(ends), one.seed() + " " + act.id() + " until " + off);
            }
        }
    }

    @Test
    void readyByIsKeptWithTheWholeRest() {
        for (Case one : planned()) {
            if (!(one.request().when() instanceof PlanRequest.When.ReadyBy wish)) continue;
            Instant day = wish.day().atStartOfDay(one.request().house().zone()).toInstant();
            assertTrue(!one.plan().subject().readyAt().isAfter(day), "seed " + one.seed());
        }
    }

    @Test
    void startDayIsKept() {
        for (Case one : planned()) {
            if (!(one.request().when() instanceof PlanRequest.When.StartOn wish)) continue;
            assertEquals(
                    wish.day(),
                    one.plan().startsAt().atZone(one.request().house().zone()).toLocalDate());
        }
    }

    /** Conservation of mass; stoichiometry of respiration: 1 + 1.07 O2 = 1.47 CO2 + 0.60 H2O. */
    @Test
    void waterDryMatterAndGasCloseToAGram() {
        for (Case one : planned()) {
            PieceState end = one.plan().outcome().finished();
            GrainMass mass = end.mass();
            Ledgers.Water water = end.ledgers().water();
            Ledgers.DryMatter dry = end.ledgers().dryMatter();
            Ledgers.Gas gas = end.ledgers().gas();
            double startWaterKg = mass.initialDryMatterKg()
                    * one.request().lot().moisture().moisture().dryBasisRatio();
            double waterIn = startWaterKg + water.absorbedKg() + water.sprinkledKg() + water.formedKg();
            double waterOut = water.evaporatedKg() + water.removedKg() + mass.waterKg();
            assertEquals(waterIn, waterOut, 0.001, "water, seed " + one.seed());
            double dryOut = dry.leachedKg() + dry.respiredKg() + dry.rootletsKg() + dry.handlingKg();
            assertEquals(mass.initialDryMatterKg(), mass.dryMatterKg() + dryOut, 0.001, "dry, seed " + one.seed());
            assertEquals(
                    dry.respiredKg() + gas.oxygenInKg(),
                    gas.carbonDioxideOutKg() + water.formedKg(),
                    0.001,
                    "gas, seed " + one.seed());
        }
    }

    @Test
    void steepOutAndGrowthLieWhereTheStyleAllows() {
        for (Case one : planned()) {
            var style = one.request().style();
            double grown =
                    first(one.plan(), ActKind.LOAD).expect().acrospireFraction().orElse(0);
            assertEquals(style.growth().acrospireFraction(), grown, 0.17, "growth, seed " + one.seed());
            double out = one.plan().acts().stream()
                    .filter(act -> act.kind() == ActKind.DRAIN)
                    .reduce((a, b) -> b)
                    .orElseThrow()
                    .expect()
                    .moisture()
                    .wetBasisFraction();
            assertEquals(style.steep().targetFraction(), out, 0.03, "steep-out, seed " + one.seed());
        }
    }

    @Test
    void theSameWishGivesTheSamePlan() {
        Planner planner = new Planner(ModelParameters.defaults());
        for (Case one : cases.subList(0, Math.min(10, cases.size()))) {
            assertEquals(one.result(), planner.plan(Seeded.request(one.seed())));
        }
    }

    private static Act first(Plan plan, ActKind kind) {
        return plan.acts().stream()
                .filter(act -> act.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    private static Act next(Plan plan, Act act) {
        return plan.acts().get(plan.acts().indexOf(act) + 1);
    }
}
