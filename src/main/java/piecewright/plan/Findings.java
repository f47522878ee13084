package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import piecewright.assess.LotJudge;
import piecewright.assess.LotJudgement.MouldRisk;
import piecewright.assess.LotJudgement.PlanEffects;
import piecewright.assess.Reason;
import piecewright.grain.GrainLot;
import piecewright.grain.LotTraits;
import piecewright.grain.Treatment;
import piecewright.plan.Finding.Quantity;
import piecewright.plan.Simulation.Course;
import piecewright.plan.Simulation.Station;
import piecewright.process.Surroundings;
import piecewright.process.germination.Heap;
import piecewright.process.steep.SteepModel;
import piecewright.process.steep.SteepParameters;
import piecewright.quantity.EbcRange;

/** What a person should know beside the plan. One method per finding. */
final class Findings {
    /** Judgement: a point of steep-out moisture is worth a word. */
    private static final double OFF_TARGET_FRACTION = 0.01;

    /** Judgement: a tenth of a point of colour nobody measures twice alike. */
    private static final double UNSEEN_EBC = 0.1;
    /** Judgement: nobody can tell a quarter of an hour. */
    private static final Duration WORTH_A_WORD = Duration.ofMinutes(15);

    private final PlanRequest request;
    private final Setup setup;
    private final PlanEffects effects;

    Findings(PlanRequest request, Setup setup) {
        this.request = request;
        this.setup = setup;
        this.effects = LotJudge.effects(request.lot());
    }

    List<Finding> of(Course course, List<Act> acts) {
        List<Finding> findings = new ArrayList<>();
        treatmentUnknown(findings);
        germination(findings);
        waterSensitive(findings);
        judged(course, findings);
        mouldLikely(findings);
        moistureGuessed(findings);
        learned(findings);
        wetCouch(course, findings);
        findings.addAll(new SteepFindings(setup).of(course));
        openFlame(findings);
        water(findings);
        floor(course, findings);
        pastFreeWindow(acts, findings);
        offStyle(course, findings);
        double germinating = setup.models().metabolism().germinatingFraction();
        setup.couching().ifPresent(couching -> findings.addAll(new CouchFindings(couching, germinating).of(course)));
        attendedHeat(acts, findings);
        rampsItself(acts, findings);
        ovenDoubt(course, findings);
        airRepeats(acts, findings);
        return findings;
    }

    private void treatmentUnknown(List<Finding> findings) {
        if (request.lot().treatment() == Treatment.UNKNOWN) findings.add(new Finding.TreatmentUnknown("lot"));
    }

    private void wetCouch(Course course, List<Finding> findings) {
        double meanC = course.hottestC(ActKind.HEAP, ActKind.FLOOR);
        if (setup.heaping().isEmpty() || meanC == 0) return;
        Heaping heaping = setup.heaping().get();
        double coreC = meanC + Heap.CORE_OVER_MEAN_K;
        double limitC = heaping.schedule().warmestCoreC();
        double riseK = coreC - heaping.expected().airC();
        findings.add(new Finding.WetCouchForecast("wetcouch.heap", coreC, riseK, limitC));
    }

    private void germination(List<Finding> findings) {
        OptionalDouble tested = request.lot().germinativeEnergyFraction();
        if (tested.isEmpty() || tested.getAsDouble() < LotJudge.GOOD_FRACTION) {
            double energy = tested.orElse(setup.lot().energyFraction());
            findings.add(new Finding.Germination("lot", tested.isPresent(), energy));
        }
    }

    private void waterSensitive(List<Finding> findings) {
        double lost = setup.lot().waterSensitiveFraction();
        if (lost >= Setup.SENSITIVE_FRACTION) findings.add(new Finding.WaterSensitive("lot", lost));
    }

    private void mouldLikely(List<Finding> findings) {
        if (effects.mould() == MouldRisk.LOW) return;
        findings.add(new Finding.MouldLikely("floor.spread", effects.mould(), effects.deadFraction()));
        if (setup.couching().isPresent()) {
            findings.add(new Finding.CouchMayMould("couch.pack", effects.mould(), effects.deadFraction()));
        }
    }

    /** What the judge of lots says that no finding of the plan's own does. */
    private void judged(Course course, List<Finding> findings) {
        Instant starts = course.stations().get(0).visit().at();
        LocalDate day = LocalDate.ofInstant(starts, request.house().zone());
        for (Reason reason : LotJudge.judge(request.lot(), day).reasons()) {
            boolean told = reason instanceof Reason.TreatmentUnknown
                    || reason instanceof Reason.Untested
                    || reason instanceof Reason.Growing
                    || reason instanceof Reason.WaterSensitive;
            if (!told) findings.add(new Finding.LotDoubt("lot", reason));
        }
    }

    private void moistureGuessed(List<Finding> findings) {
        var moisture = request.lot().moisture();
        if (!moisture.measured()) {
            findings.add(new Finding.MoistureGuessed("lot", moisture.moisture(), moisture.sdFraction()));
        }
    }

    private void learned(List<Finding> findings) {
        GrainLot lot = request.lot();
        if (!lot.learned().equals(LotTraits.unknown())) {
            double usual = SteepModel.of(lot.withLearned(LotTraits.unknown()), SteepParameters.defaults())
                    .rateRatio();
            double rate = setup.models().steep().rateRatio() / usual;
            findings.add(new Finding.LotLearned(
                    "lot", rate, setup.models().metabolism().growthRateRatio()));
        }
        Map<String, Double> offsetsK = request.house().kit().learned().dialOffsetsK();
        Stream.of(setup.outfit().drying().dryer(), setup.outfit().drying().curer())
                .distinct()
                .filter(heater -> offsetsK.containsKey(heater.name()))
                .forEach(heater -> findings.add(new Finding.HeaterLearned(
                        "house",
                        heater.name(),
                        heater.air().airFlowM3PerHour(),
                        offsetsK.getOrDefault(heater.name(), 0.0))));
    }

    private void water(List<Finding> findings) {
        Setup.Water water = setup.lot().water();
        if (water.tempered()) findings.add(new Finding.WaterTempered("steep-1.soak", water.sourceC(), water.fillC()));
    }

    private void floor(Course course, List<Finding> findings) {
        if (!course.has(ActKind.FLOOR)) return;
        Instant from = course.first(ActKind.FLOOR).visit().at();
        Instant until = course.stations().stream()
                .filter(station ->
                        Simulation.GROWTH_ENDS.contains(station.visit().kind()))
                .findFirst()
                .orElseThrow()
                .visit()
                .at();
        double warmestC = course.samples().stream()
                .filter(sample -> !sample.at().isBefore(from) && sample.at().isBefore(until))
                .mapToDouble(sample -> sample.state().grainC())
                .max()
                .orElse(0);
        double limitC = setup.style().growth().warmestGrainC() - effects.coolerK();
        if (warmestC > limitC) findings.add(new Finding.WarmFloor("floor.spread", warmestC, limitC));
        double depthCm = setup.outfit().growing().depthCm();
        double hours = Practice.turning(depthCm).hardHours(warmestC);
        findings.add(new Finding.BedDepth("floor.spread", depthCm, Duration.ofMinutes(Math.round(60 * hours))));
    }

    private static void pastFreeWindow(List<Act> acts, List<Finding> findings) {
        Set<String> told = findings.stream()
                .filter(finding -> finding instanceof Finding.LongSoak)
                .map(Finding::about)
                .collect(Collectors.toSet());
        for (Act act : acts) {
            Duration by = Duration.between(act.window().latest(), act.startsAt());
            if (by.compareTo(WORTH_A_WORD) >= 0 && !told.contains(act.id()))
                findings.add(new Finding.PastFreeWindow(act.id(), by));
        }
    }

    private void offStyle(Course course, List<Finding> findings) {
        EbcRange colour = setup.style().finish().colour();
        double ebc = course.finished().kiln().colourEbc();
        if (ebc < colour.lowEbc() - UNSEEN_EBC || ebc > colour.highEbc() + UNSEEN_EBC) {
            findings.add(new Finding.OffStyle("style", Quantity.COLOUR_EBC, ebc, colour.lowEbc(), colour.highEbc()));
        }
        double out = steepOut(course).before().mass().moisture().wetBasisFraction();
        double target = setup.style().steep().targetFraction();
        if (Math.abs(out - target) > OFF_TARGET_FRACTION) {
            findings.add(new Finding.OffStyle(
                    steepOut(course).visit().id(),
                    Quantity.STEEP_OUT_MOISTURE,
                    out,
                    target - OFF_TARGET_FRACTION,
                    target + OFF_TARGET_FRACTION));
        }
        endMoisture(course, findings);
    }

    private void endMoisture(Course course, List<Finding> findings) {
        setup.style().oven().roast().filter(any -> roasts(course)).ifPresent(roast -> {
            double roasted = course.finished().mass().moisture().wetBasisFraction();
            double most = roast.endMoistureFraction();
            if (roasted > most) {
                String about = course.first(ActKind.ROAST).visit().id();
                findings.add(new Finding.OffStyle(about, Quantity.END_MOISTURE, roasted, 0, most));
            }
        });
        double end = course.first(ActKind.OFF).before().mass().moisture().wetBasisFraction();
        double most = setup.style().kiln().endMoistureFraction();
        if (end > most) findings.add(new Finding.OffStyle("kiln.off", Quantity.END_MOISTURE, end, 0, most));
    }

    private static boolean roasts(Course course) {
        return course.stations().stream().anyMatch(station -> station.visit().kind() == ActKind.ROAST);
    }

    /** The last drain. */
    private static Station steepOut(Course course) {
        return course.stations().stream()
                .filter(station -> station.visit().kind() == ActKind.DRAIN)
                .reduce((first, second) -> second)
                .orElseThrow();
    }

    private void rampsItself(List<Act> acts, List<Finding> findings) {
        Outfit.Drying drying = setup.outfit().drying();
        for (Act act : acts) {
            boolean raises = act.kind() == ActKind.RAISE || act.kind() == ActKind.CURE && drying.sameHeater();
            if (!raises || !drying.dryer().control().rampsItself()) continue;
            act.setting()
                    .setC()
                    .ifPresent(setC -> findings.add(
                            new Finding.RampsItself(act.id(), drying.dryer().name(), setC, act.startsAt())));
        }
    }

    private void openFlame(List<Finding> findings) {
        Outfit.Drying drying = setup.outfit().drying();
        Stream.of(drying.dryer(), drying.curer())
                .distinct()
                .filter(heater -> heater.air().openFlame())
                .forEach(heater -> findings.add(new Finding.OpenFlame("kiln.load", heater.name())));
    }

    private void attendedHeat(List<Act> acts, List<Finding> findings) {
        Instant off = null;
        Instant from = null;
        double hottestC = 0;
        String cure = "kiln.cure";
        for (Act act : acts) {
            double setC = act.setting().setC().orElse(0);
            boolean heats = act.kind() == ActKind.RAISE || act.kind() == ActKind.CURE;
            if (heats && needsSomebody(act, setC)) {
                if (from == null) from = act.startsAt();
                hottestC = Math.max(hottestC, setC);
            }
            if (act.kind() == ActKind.CURE) cure = act.id();
            if (act.kind() == ActKind.OFF) off = act.startsAt();
        }
        if (from != null && off != null) findings.add(new Finding.AttendedHeat(cure, from, off, hottestC));
    }

    private void ovenDoubt(Course course, List<Finding> findings) {
        if (!roasts(course)) return;
        RoastBlock.of(setup).ifPresent(block -> {
            Station first = course.first(ActKind.ROAST);
            EbcRange colours = block.byTheClock(first.before());
            double errorK = block.oven().control().thermostatErrorK();
            findings.add(new Finding.OvenDoubt(first.visit().id(), errorK, colours.lowEbc(), colours.highEbc()));
        });
    }

    private boolean needsSomebody(Act act, double setC) {
        var drying = setup.outfit().drying();
        var heater = act.kind() == ActKind.CURE ? drying.curer() : drying.dryer();
        return Rules.needsSomebody(heater.control(), setC);
    }

    private void airRepeats(List<Act> acts, List<Finding> findings) {
        Instant last = acts.get(acts.size() - 1).startsAt();
        noteRepeat(setup.outfit().growing().place(), setup.air().floor(), last, findings);
    }

    private static void noteRepeat(String place, Surroundings air, Instant last, List<Finding> findings) {
        air.repeatsAfter()
                .filter(after -> after.isBefore(last))
                .ifPresent(after -> findings.add(new Finding.AirRepeats("house", place, after)));
    }
}
