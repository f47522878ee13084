package piecewright.reading;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import piecewright.journal.Remark;
import piecewright.journal.Report;
import piecewright.journal.Report.AcrospiresCounted;
import piecewright.journal.Report.ChittedCounted;
import piecewright.journal.Report.ColourMeasured;
import piecewright.journal.Report.Corrected;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.HeatSet;
import piecewright.journal.Report.Noted;
import piecewright.journal.Report.Observed;
import piecewright.journal.Report.Remarked;
import piecewright.journal.Report.SampleDried;
import piecewright.journal.Report.Started;
import piecewright.journal.Report.TemperatureRead;
import piecewright.journal.Report.VentsSet;
import piecewright.journal.Report.VesselWeighed;
import piecewright.journal.Report.Weighed;
import piecewright.journal.Sign;
import piecewright.journal.Spot;
import piecewright.plan.ActKind;
import piecewright.quantity.Units;

/** Writes a reading as the line that can be read in no other way. */
final class LineWriter {
    private final Lexicon lexicon;
    private final ZoneId zone;
    private final boolean metric;
    private final boolean wholeDay;

    LineWriter(Scene scene) {
        this.lexicon = Lexicon.of(scene.units().locale());
        this.zone = scene.zone();
        this.metric = scene.metric();
        this.wholeDay = ClockWords.wholeDay(scene.units().locale());
    }

    /** @param sure whether whoever types it is sure, though it was asked about */
    String line(List<Saying> sayings, boolean sure) {
        if (sayings.size() == 1
                && sayings.get(0).report() instanceof Corrected corrected
                && corrected.instead().isPresent()) {
            Report instead = corrected.instead().get();
            String when =
                    words(instead) ? lexicon.say("note") : moment(sayings.get(0).at());
            String correct = lexicon.say("fix.correct") + " " + corrected.entry() + " " + when + " " + said(instead);
            return (sure ? lexicon.say("really") + " " : "") + correct;
        }
        if (sayings.stream().allMatch(saying -> saying.report() instanceof Corrected)) {
            return lexicon.say("fix.void")
                    + sayings.stream()
                            .map(saying -> " " + ((Corrected) saying.report()).entry())
                            .collect(Collectors.joining());
        }
        Map<Instant, List<String>> byTime = new LinkedHashMap<>();
        List<String> notes = new ArrayList<>();
        for (Saying saying : sayings) {
            if (words(saying.report())) notes.add(said(saying.report()));
            else byTime.computeIfAbsent(saying.at(), at -> new ArrayList<>()).add(said(saying.report()));
        }
        List<String> groups = new ArrayList<>();
        byTime.forEach((at, facts) -> groups.add(moment(at) + " " + String.join(", ", facts)));
        if (!notes.isEmpty()) groups.add(lexicon.say("note") + " " + String.join(", ", notes));
        return (sure ? lexicon.say("really") + " " : "") + String.join("; ", groups);
    }

    /** What the line says once it is typed: words of our own where it has no other. */
    Saying typed(Saying saying, Instant now) {
        Report report = saying.report();
        if (report instanceof Noted) return new Saying(now, report, false);
        if (words(report)) return new Saying(now, new Noted(said(report)), false);
        if (report instanceof Observed seen) return saying.with(new Observed(seen.sign(), said(report)));
        if (report instanceof Remarked remarked) return saying.with(new Remarked(said(report), remarked.remark()));
        return saying;
    }

    private static boolean words(Report report) {
        return report instanceof Noted || report instanceof Observed seen && seen.sign() == Sign.OTHER;
    }

    String moment(Instant at) {
        LocalDateTime local = LocalDateTime.ofInstant(at, zone);
        boolean twice = zone.getRules().getValidOffsets(local).size() != 1;
        String clock =
                local.toLocalDate() + " " + local.toLocalTime().withSecond(0).withNano(0);
        boolean either = !wholeDay && local.getHour() >= 10 && local.getHour() <= 12;
        if (either && !twice) {
            String half = lexicon.say(local.getHour() < 12 ? "am" : "pm");
            return clock + " " + half;
        }
        return clock + (twice ? " " + zone.getRules().getOffset(at) : "");
    }

    String said(Report report) {
        if (report instanceof Did did)
            return lexicon.say("act." + did.act().key() + ".did")
                    + (did.waterL().isPresent() ? " " + figure(did.waterL().getAsDouble()) + " l" : "");
        if (report instanceof Started started) return lexicon.say("started") + " " + name(started.act());
        if (report instanceof Weighed weighed)
            return lexicon.say("topic.weight") + " " + mass(weighed.grossKg())
                    + weighed.tare().map(tare -> " in the " + tare.vessel()).orElse("");
        if (report instanceof TemperatureRead read) return spot(read.spot()) + " " + temperature(read.readC());
        if (report instanceof HeatSet heat) return lexicon.say("topic.kiln") + " " + temperature(heat.airOnC());
        if (report instanceof VentsSet vents) return lexicon.say("topic.vents") + " " + percent(vents.openFraction());
        if (report instanceof SampleDried sample)
            return lexicon.say("topic.moisture") + " "
                    + percent(sample.moisture().wetBasisFraction());
        if (report instanceof ColourMeasured colour)
            return lexicon.say("topic.colour") + " " + figure(colour.colourEbc()) + " EBC";
        if (report instanceof ChittedCounted counted)
            return lexicon.say("chit") + " " + counted.chitted() + " of " + counted.of();
        if (report instanceof AcrospiresCounted counted) {
            return lexicon.say("topic.acrospire") + " "
                    + counted.count().corns().stream().map(String::valueOf).collect(Collectors.joining(" "));
        }
        if (report instanceof VesselWeighed vessel)
            return lexicon.say("vessel.empty") + " " + vessel.tare().vessel() + " "
                    + mass(vessel.tare().tareKg());
        if (report instanceof Observed seen)
            return seen.sign() == Sign.OTHER
                    ? seen.words()
                    : lexicon.say("sign." + seen.sign().key());
        if (report instanceof Noted noted) return noted.words();
        if (report instanceof Remarked remarked) return remark(remarked.remark());
        Corrected corrected = (Corrected) report;
        return corrected
                .instead()
                .map(instead -> lexicon.say("fix.correct") + " " + corrected.entry() + " " + said(instead))
                .orElseGet(() -> lexicon.say("fix.void") + " " + corrected.entry());
    }

    private String remark(Remark remark) {
        if (remark instanceof Remark.Skipped skipped)
            return "skipped " + lexicon.say("act." + skipped.act().key() + ".did");
        if (remark instanceof Remark.NotYet yet)
            return "not " + lexicon.say("act." + yet.act().key() + ".did") + " yet";
        if (remark instanceof Remark.Absent absent)
            return lexicon.say("neg.no") + " "
                    + lexicon.say("sign." + absent.sign().key());
        if (remark instanceof Remark.HeaterOff) return lexicon.say("heat.off");
        if (remark instanceof Remark.FanSet fan) {
            String speed = fan.speedFraction().isEmpty()
                    ? lexicon.say("on")
                    : percent(fan.speedFraction().getAsDouble());
            return lexicon.say("topic.fan") + " " + speed;
        }
        if (remark instanceof Remark.BedDepth bed)
            return lexicon.say("topic.bed") + " " + figure(metric ? bed.depthCm() : bed.depthCm() / 2.54)
                    + (metric ? " cm" : " in deep");
        if (remark instanceof Remark.ChittedShare chitted)
            return lexicon.say("chit") + " " + percent(chitted.chittedFraction());
        if (remark instanceof Remark.AcrospireShare acrospire)
            return lexicon.say("topic.acrospire") + " " + percent(acrospire.acrospireFraction());
        return lexicon.say("topic.rootlets") + " " + mass(((Remark.RootletsWeighed) remark).rootletsKg());
    }

    private String name(ActKind kind) {
        return lexicon.has("act." + kind.key() + ".ing")
                ? lexicon.say("act." + kind.key() + ".ing")
                : lexicon.say("act." + kind.key() + ".did");
    }

    private String spot(Spot spot) {
        return spot == Spot.GRAIN ? lexicon.say("topic.bed") : lexicon.say("spot." + spot.key());
    }

    private String mass(double kg) {
        return metric ? figure(kg) + " kg" : figure(kg / Units.KG_PER_POUND) + " lb";
    }

    private String temperature(double readC) {
        return metric ? figure(readC) + " C" : figure(Units.fahrenheitOfCelsius(readC)) + " F";
    }

    private static String percent(double fraction) {
        return figure(fraction * 100) + " %";
    }

    /** At most four decimals and never three, which could be a thousand. */
    private static String figure(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP).stripTrailingZeros();
        if (rounded.scale() == 3) rounded = rounded.setScale(4);
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString();
    }
}
