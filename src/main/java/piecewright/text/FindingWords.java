package piecewright.text;

import java.time.Duration;
import java.time.Instant;
import piecewright.plan.Finding;
import piecewright.process.couch.Ignition;
import piecewright.quantity.Moisture;

/** One sentence or two for each finding. */
final class FindingWords {
    /** A dial this close needs no advice, K. */
    private static final double TRUE_DIAL_K = 1;
    /** Judgement: with this share of corns alive the piece goes on growing once it is spread. */
    private static final double GROWS_ON_FRACTION = 0.3;

    private final QuantityFormat quantities;
    private final MomentFormat moments;

    FindingWords(QuantityFormat quantities, MomentFormat moments) {
        this.quantities = quantities;
        this.moments = moments;
    }

    String sentence(Finding finding) {
        if (finding instanceof Finding.Chosen f) return new ChosenWords(quantities).sentence(f);
        if (finding instanceof Finding.WaterTempered f) {
            String key = f.fillC() > f.sourceC() ? "finding.water-warmed" : "finding.water-chilled";
            return Phrases.say(key, quantities.temperature(f.sourceC()), quantities.temperature(f.fillC()));
        }
        if (finding instanceof Finding.AirRepeats f) {
            return Phrases.say("finding.air-repeats", f.place(), moments.moment(f.after()));
        }
        if (finding instanceof Finding.Germination f) {
            return f.tested()
                    ? Phrases.say("finding.germination-tested", quantities.percent(f.energyFraction()))
                    : Phrases.say("finding.germination-untested");
        }
        if (finding instanceof Finding.LotDoubt f) {
            String reason = new JudgementPage(quantities).reason(f.reason());
            return Phrases.say("finding.lot-doubt." + Phrases.key(f.reason().verdict()), reason);
        }
        if (finding instanceof Finding.WaterSensitive f) {
            return Phrases.say("finding.water-sensitive", Long.toString(Math.round(f.lostFraction() * 100)));
        }
        if (finding instanceof Finding.MoistureGuessed f) {
            return Phrases.say(
                    "finding.moisture-guessed",
                    quantities.moisture(f.moisture()),
                    quantities.moisture(new Moisture(f.sdFraction())));
        }
        if (finding instanceof Finding.LotLearned f) {
            return Phrases.say(
                    "finding.lot-learned",
                    quantities.percent(f.steepRateRatio()),
                    quantities.percent(f.growthRateRatio()));
        }
        if (finding instanceof Finding.HeaterLearned f) return heaterLearned(f);
        if (finding instanceof Finding.TreatmentUnknown) return Phrases.say("finding.treatment-unknown");
        return onThePlan(finding);
    }

    private String onThePlan(Finding finding) {
        if (finding instanceof Finding.WarmFloor f) {
            return Phrases.say(
                    "finding.warm-floor", quantities.temperature(f.expectedC()), quantities.temperature(f.limitC()));
        }
        if (finding instanceof Finding.PastFreeWindow f) {
            return Phrases.say("finding.past-free-window", quantities.time(f.by()));
        }
        if (finding instanceof Finding.OffStyle f) return offStyle(f);
        if (finding instanceof Finding.ReadyLate f) {
            return Phrases.say("finding.ready-late", quantities.time(f.by()));
        }
        if (finding instanceof Finding.NotRoasted) return Phrases.say("finding.not-roasted");
        if (finding instanceof Finding.RampsItself f) {
            return Phrases.say(
                    "finding.ramps-itself", f.heater(), quantities.temperature(f.setC()), moments.moment(f.at()));
        }
        if (finding instanceof Finding.AttendedHeat f) {
            return Phrases.say(
                    "finding.attended-heat",
                    moments.moment(f.from()),
                    moments.moment(f.until()),
                    quantities.temperature(f.hottestC()));
        }
        if (finding instanceof Finding.MouldLikely f) {
            return Phrases.say("finding.mould-" + Phrases.key(f.risk()), quantities.percent(f.deadFraction()));
        }
        if (finding instanceof Finding.NoRoomToCheck f) {
            return Phrases.say("finding.no-room-to-check." + f.kind().key(), f.of());
        }
        if (finding instanceof Finding.BedDepth f) {
            return Phrases.say("finding.bed-depth", quantities.length(f.depthCm()), quantities.time(f.longestGap()));
        }
        if (finding instanceof Finding.OvenDoubt f) {
            return Phrases.say(
                    "finding.oven-doubt",
                    quantities.temperatureStep(f.errorK()),
                    quantities.colour(f.coolerEbc()),
                    quantities.colour(f.hotterEbc()));
        }
        return ofTheSteep(finding);
    }

    private String ofTheSteep(Finding finding) {
        if (finding instanceof Finding.LongSoak f) {
            return Phrases.say(
                    "finding.long-soak",
                    quantities.time(f.lasts()),
                    quantities.time(Duration.ofMinutes(Math.round(60 * f.longestUsualHours()))),
                    quantities.temperature(f.waterC()));
        }
        if (finding instanceof Finding.OverWet f) {
            return Phrases.say("finding.over-wet", quantities.moisture(f.moisture()));
        }
        if (finding instanceof Finding.NoWetCouch f) {
            return Phrases.say(
                    "finding.no-wet-couch." + Phrases.key(f.why()),
                    quantities.temperature(f.expected().bedC()),
                    quantities.temperature(f.expected().airC()),
                    quantities.temperatureStep(f.expected().riseK()),
                    quantities.temperature(f.expected().coreC()),
                    quantities.temperature(f.limitC()));
        }
        if (finding instanceof Finding.OpenFlame f) {
            return Phrases.say(
                    "finding.open-flame",
                    f.heater(),
                    Long.toString(Math.round(Finding.OpenFlame.NDMA_LEVEL_UG_PER_KG)));
        }
        return ofTheCouch(finding);
    }

    private String ofTheCouch(Finding finding) {
        if (finding instanceof Finding.WetCouchForecast f) {
            return Phrases.say(
                    "finding.wet-couch-forecast",
                    quantities.temperature(f.coreC()),
                    quantities.temperatureStep(f.riseK()),
                    quantities.temperature(f.limitC()));
        }
        if (finding instanceof Finding.CouchForecast f) {
            String peak = quantities.temperature(f.peakC());
            String index = Long.toString(Math.round(f.indexHours()));
            return f.catches().equals(Instant.MAX)
                    ? Phrases.say(quantities, "finding.couch-forecast-cool", moments.moment(f.peaks()), peak, index)
                    : Phrases.say(
                            quantities,
                            "finding.couch-forecast",
                            moments.moment(f.catches()),
                            moments.moment(f.peaks()),
                            peak,
                            index,
                            quantities.temperature(Ignition.CAUGHT_C));
        }
        if (finding instanceof Finding.CouchHeats f) {
            return Phrases.say(
                    "finding.couch-heats." + f.outlook().key(),
                    quantities.percent(f.sizeRatio()),
                    quantities.temperature(f.airC()));
        }
        if (finding instanceof Finding.CornsAlive f) {
            String which = f.aliveFraction() > GROWS_ON_FRACTION ? "many" : "few";
            return Phrases.say("finding.corns-alive." + which, quantities.percent(f.aliveFraction()));
        }
        if (finding instanceof Finding.CouchMayMould f) {
            return Phrases.say(
                    "finding.couch-may-mould",
                    quantities.percent(f.deadFraction()),
                    quantities.temperature(20),
                    quantities.temperature(40));
        }
        if (finding instanceof Finding.CouchMaySour f) {
            return Phrases.say(quantities, "finding.couch-may-sour", quantities.time(f.warm()));
        }
        throw new IllegalArgumentException("no words for " + finding.getClass().getSimpleName());
    }

    private String heaterLearned(Finding.HeaterLearned finding) {
        boolean close = Math.abs(finding.dialOffsetK()) < TRUE_DIAL_K;
        String which = close ? "true" : finding.dialOffsetK() > 0 ? "hot" : "cold";
        return Phrases.say(
                quantities,
                "finding.heater-learned." + which,
                finding.heater(),
                quantities.airFlow(finding.airFlowM3PerHour()),
                quantities.temperatureStep(Math.abs(finding.dialOffsetK())));
    }

    private String offStyle(Finding.OffStyle finding) {
        return Phrases.say(
                quantities,
                "finding.off-style." + Phrases.key(finding.quantity()),
                figure(finding.quantity(), finding.expected()),
                figure(finding.quantity(), finding.low()),
                figure(finding.quantity(), finding.high()));
    }

    private String figure(Finding.Quantity quantity, double figure) {
        return switch (quantity) {
            case COLOUR_EBC -> quantities.colour(figure);
            case ACROSPIRE -> quantities.percent(figure);
            case COUCH_INDEX_HOURS, CURE_HOURS -> quantities.time(Duration.ofMinutes(Math.round(60 * figure)));
            case STEEP_OUT_MOISTURE, PACKING_MOISTURE, END_MOISTURE -> quantities.moisture(new Moisture(figure));
        };
    }
}
