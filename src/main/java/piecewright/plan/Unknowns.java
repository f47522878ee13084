package piecewright.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import piecewright.grain.GrainLot;
import piecewright.grain.LotMoisture;
import piecewright.house.Heater;
import piecewright.house.InsulatedBox;
import piecewright.plan.Check.Gain;
import piecewright.process.steep.TestSteep;

/** What nobody has measured yet of a lot and of the kit a plan uses, and the test that would tell. One method each. */
final class Unknowns {
    /** Judgement: an oven nobody held against a thermometer; the prior of the reference, K. */
    private static final double UNCHECKED_OVEN_SD = 8;
    /** Judgement: what a kitchen thermometer and the swing of a thermostat leave, K. */
    private static final double CHECKED_OVEN_SD = 3;
    /** Judgement: prior of the box's heat loss and what a water test leaves, natural logarithm. */
    private static final Gain BOX = new Gain(0.40, 0.10);
    /** Judgement: prior of the steep rate. */
    private static final double UNTESTED_STEEP_SD = 0.30;
    /** Judgement: one weighing of a sample of 40 steps of the scale or more leaves 1 to 1.5 points of 15 drunk. */
    private static final double TESTED_STEEP_SD = 0.10;
    /** Judgement: untested lots grow between all and four in five; 200 corns tell to 1.5 points near 95 %. */
    private static final Gain GERMINATION = new Gain(0.08, 0.015);

    /** Judgement: raw moisture guessed from label or bite; a sample dried through leaves 0.3 of a point. */
    private static final double GUESSED_MOISTURE_SD = 0.008;

    /** Judgement: the same. */
    private static final double DRIED_MOISTURE_SD = 0.003;
    /** Judgement: practice, 20 to 30 g of crushed corns. */
    private static final double DRIED_SAMPLE_G = 30;
    /** Judgement: practice, dried through at 100 to 105 °C. */
    private static final double DRIES_THROUGH_C = 100;

    private final PlanRequest request;
    private final Plan plan;

    Unknowns(PlanRequest request, Plan plan) {
        this.request = request;
        this.plan = plan;
    }

    /**
     * One test: a visit that begins it and, after some hours, one that ends it.
     *
     * @param key what its ids begin with
     * @param leastHours between the two visits; likewise mostHours
     */
    record Test(String key, CheckKind begin, Optional<CheckKind> end, String about, Hours hours, Gain gain) {
        record Hours(double leastHours, double mostHours) {}

        String id(CheckKind kind) {
            return key + "." + kind.key();
        }
    }

    /** Longest first. */
    List<Test> tests() {
        List<Test> tests = new ArrayList<>();
        germinationIsCounted(tests);
        aSampleIsDried(tests);
        theLotIsSteepedInANet(tests);
        boxesHoldWarmWater(tests);
        ovensAreHeldAgainstAThermometer(tests);
        return tests;
    }

    private void germinationIsCounted(List<Test> tests) {
        GrainLot lot = request.lot();
        if (lot.germinativeEnergyFraction().isPresent()) return;
        Test.Hours hours = new Test.Hours(68, 76); // read at 72 h, 4 h either way, as practice takes it
        tests.add(new Test(
                "check.count", CheckKind.LAY_OUT, Optional.of(CheckKind.COUNT), lot.name(), hours, GERMINATION));
    }

    /** A point of moisture guessed wrong is two thirds of a point at steep-out, which no weighing shows. */
    private void aSampleIsDried(List<Test> tests) {
        LotMoisture moisture = request.lot().moisture();
        boolean oven = request.house().kit().heaters().stream()
                .anyMatch(heater -> heater.air().range().highC() >= DRIES_THROUGH_C);
        if (!oven || moisture.measured() || moisture.sdFraction() < GUESSED_MOISTURE_SD) return;
        tests.add(new Test(
                "check.moisture",
                CheckKind.DRY_IN,
                Optional.of(CheckKind.DRY_OUT),
                request.lot().name(),
                new Test.Hours(3, 5), // practice, three hours dry crushed corns through; longer does no harm
                new Gain(moisture.sdFraction(), DRIED_MOISTURE_SD, DRIED_SAMPLE_G)));
    }

    private void theLotIsSteepedInANet(List<Test> tests) {
        GrainLot lot = request.lot();
        OptionalDouble sampleG = TestSteep.sampleG(request.house().kit().scale());
        if (lot.learned().steepRateRatio().isPresent() || sampleG.isEmpty()) return;
        Gain gain = new Gain(UNTESTED_STEEP_SD, TESTED_STEEP_SD, sampleG.getAsDouble());
        Test.Hours hours = new Test.Hours(6, 14); // long enough to tell, short of chitting under water
        tests.add(new Test(
                "check.steep", CheckKind.TEST_SOAK, Optional.of(CheckKind.TEST_WEIGH), lot.name(), hours, gain));
    }

    private void boxesHoldWarmWater(List<Test> tests) {
        Set<String> used = used();
        Test.Hours hours = new Test.Hours(5, 12); // cooled enough to tell, still well above the room
        for (InsulatedBox box : request.house().kit().boxes()) {
            if (!used.contains(box.name()) || box.lossWPerK().isPresent()) continue;
            tests.add(new Test(
                    "check.box-" + (1 + request.house().kit().boxes().indexOf(box)),
                    CheckKind.BOX_FILL,
                    Optional.of(CheckKind.BOX_READ),
                    box.name(),
                    hours,
                    BOX));
        }
    }

    private void ovensAreHeldAgainstAThermometer(List<Test> tests) {
        Set<String> used = used();
        for (Heater heater : request.house().kit().heaters()) {
            double sd = heater.control().thermostatErrorK();
            if (!used.contains(heater.name()) || sd < UNCHECKED_OVEN_SD) continue;
            tests.add(new Test(
                    "check.oven-" + (1 + request.house().kit().heaters().indexOf(heater)),
                    CheckKind.OVEN,
                    Optional.empty(),
                    heater.name(),
                    new Test.Hours(0, 0),
                    new Gain(sd, CHECKED_OVEN_SD)));
        }
    }

    /** Names of what the acts of the plan use. */
    private Set<String> used() {
        Set<String> used = new LinkedHashSet<>();
        for (Act act : plan.acts()) act.setting().place().ifPresent(used::add);
        return used;
    }
}
