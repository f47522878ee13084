package piecewright.reading;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import piecewright.journal.Remark;
import piecewright.journal.Report;
import piecewright.journal.Report.Corrected;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.Noted;
import piecewright.journal.Report.Observed;
import piecewright.journal.Report.Remarked;
import piecewright.journal.Report.Weighed;
import piecewright.journal.Sign;
import piecewright.reading.Outcome.Said;

/** What a line of the corpus means, in its canonical form, held against what was read. */
final class Meaning {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final Pattern SEGMENT = Pattern.compile("(?:\"[^\"]*\"|\\([^)]*\\)|[^;])+");
    private static final double LB = 0.45359237;

    private record Fact(String text, Instant at) {}

    private final List<Fact> facts = new ArrayList<>();

    private Meaning(String meaning, Instant now) {
        Instant at = now;
        Matcher segments = SEGMENT.matcher(meaning);
        while (segments.find()) {
            String segment = segments.group().strip();
            if (segment.matches("at=\\S+")) at = segment.equals("at=now") ? now : instant(segment.substring(3));
            else facts.add(new Fact(segment, at));
        }
    }

    static Meaning of(String meaning, Instant now) {
        return new Meaning(meaning, now);
    }

    static Instant instant(String local) {
        return LocalDateTime.parse(local).atZone(LONDON).toInstant();
    }

    /** What is lost, made up or at another time; empty when all is as meant. */
    List<String> amiss(List<Said> read) {
        List<Said> left = new ArrayList<>(read);
        List<String> amiss = new ArrayList<>();
        for (Fact fact : facts) {
            Optional<Said> hit =
                    left.stream().filter(said -> matches(fact, said)).findFirst();
            if (hit.isEmpty()) amiss.add("lost " + fact.text());
            else if (!words(hit.get().report())) left.remove(hit.get());
        }
        left.stream()
                .filter(said -> !words(said.report()) && facts.stream().noneMatch(fact -> matches(fact, said)))
                .forEach(said -> amiss.add("made up " + said));
        return amiss;
    }

    private static boolean words(Report report) {
        return report instanceof Noted || report instanceof Observed seen && seen.sign() == Sign.OTHER;
    }

    private static boolean matches(Fact fact, Said said) {
        boolean void0 = fact.text().startsWith("void=");
        boolean time = said.at().getEpochSecond() / 60 == fact.at().getEpochSecond() / 60;
        return fact.text().startsWith("correct=")
                ? corrected(fact.text(), said)
                : (void0 || time) && says(fact.text(), said.report());
    }

    private static boolean corrected(String text, Said said) {
        Matcher parts = Pattern.compile("correct=(\\d+) at=(\\S+) \\((.*)\\)").matcher(text);
        if (!parts.matches()) throw new IllegalArgumentException(text);
        return said.report() instanceof Corrected corrected
                && corrected.entry() == Integer.parseInt(parts.group(1))
                && said.at().equals(instant(parts.group(2)))
                && corrected
                        .instead()
                        .filter(instead -> says(parts.group(3), instead))
                        .isPresent();
    }

    private static boolean near(double one, double other, double relative, double absolute) {
        return Math.abs(one - other) <= Math.max(absolute, relative * Math.abs(other));
    }

    private static double kg(String figure, String unit) {
        return Double.parseDouble(figure)
                * switch (unit) {
                    case "g" -> 0.001;
                    case "lb" -> LB;
                    case "oz" -> LB / 16;
                    default -> 1;
                };
    }

    private static double celsius(String figure, String unit) {
        double value = Double.parseDouble(figure);
        return unit.equals("C") ? value : (value - 32) / 1.8;
    }

    private static boolean says(String text, Report report) {
        int cut = text.indexOf('=');
        String key = text.substring(0, cut);
        String[] v = text.substring(cut + 1).split(" ");
        Optional<Remark> remark =
                report instanceof Remarked remarked ? Optional.of(remarked.remark()) : Optional.empty();
        return switch (key) {
            case "did" -> report instanceof Did did && did.act().name().equals(v[0]) && water(did, v);
            case "began" ->
                report instanceof Report.Started started && started.act().name().equals(v[0])
                        || report instanceof Did did && did.act().name().equals(v[0]);
            case "skipped" ->
                remark.filter(one -> one instanceof Remark.Skipped skipped
                                && skipped.act().name().equals(v[0]))
                        .isPresent();
            case "not-yet" ->
                remark.filter(one -> one instanceof Remark.NotYet yet
                                && yet.act().name().equals(v[0]))
                        .isPresent();
            case "weight", "malt" ->
                report instanceof Weighed weighed
                        && near(weighed.grossKg(), kg(v[0], v[1]), 0.003, 0.006)
                        && weighed.tare()
                                .map(Report.Tare::vessel)
                                .orElse("")
                                .equals(text.contains("tare=") ? text.replaceFirst(".*tare=", "") : "");
            case "rootlets" ->
                remark.filter(one -> one instanceof Remark.RootletsWeighed roots
                                && near(roots.rootletsKg(), kg(v[0], v[1]), 0.003, 0.001))
                        .isPresent();
            case "temp" ->
                report instanceof Report.TemperatureRead read
                        && near(read.readC(), celsius(v[0], v[1]), 0, 0.3)
                        && read.spot().key().equals(v[2].substring(5));
            case "heat" ->
                v[0].equals("off")
                        ? remark.filter(Remark.HeaterOff.class::isInstance).isPresent()
                        : report instanceof Report.HeatSet heat && near(heat.airOnC(), celsius(v[0], v[1]), 0, 0.6);
            case "vents" ->
                report instanceof Report.VentsSet vents
                        && near(vents.openFraction(), Double.parseDouble(v[0]) / 100, 0, 0.02);
            case "fan" ->
                remark.filter(one -> one instanceof Remark.FanSet fan && fan(fan, v[0]))
                        .isPresent();
            case "bed" ->
                remark.filter(one -> one instanceof Remark.BedDepth bed
                                && near(
                                        bed.depthCm(),
                                        Double.parseDouble(v[0]) * (v[1].equals("in") ? 2.54 : 1),
                                        0.01,
                                        0.1))
                        .isPresent();
            case "vessel" ->
                report instanceof Report.VesselWeighed vessel
                        && vessel.tare()
                                .vessel()
                                .equalsIgnoreCase(String.join(" ", List.of(v).subList(0, v.length - 2)))
                        && near(vessel.tare().tareKg(), kg(v[v.length - 2], v[v.length - 1]), 0.003, 0.006);
            case "chitted" ->
                v[1].equals("of")
                        ? report instanceof Report.ChittedCounted counted
                                && counted.chitted() == Integer.parseInt(v[0])
                                && counted.of() == Integer.parseInt(v[2])
                        : remark.filter(one -> one instanceof Remark.ChittedShare share
                                        && near(share.chittedFraction(), Double.parseDouble(v[0]) / 100, 0, 0.005))
                                .isPresent();
            case "acrospire" ->
                v[0].contains("/")
                        ? report instanceof Report.AcrospiresCounted counted
                                && counted.count().corns().stream()
                                        .map(String::valueOf)
                                        .collect(Collectors.joining("/"))
                                        .equals(v[0])
                        : remark.filter(one -> one instanceof Remark.AcrospireShare share
                                        && near(share.acrospireFraction(), Double.parseDouble(v[0]) / 100, 0, 0.011))
                                .isPresent();
            case "moisture" ->
                report instanceof Report.SampleDried sample
                        && near(sample.moisture().wetBasisPercent(), Double.parseDouble(v[0]), 0, 0.2);
            case "colour" ->
                report instanceof Report.ColourMeasured colour && near(colour.colourEbc(), ebc(v), 0.1, 0.01);
            case "seen" ->
                v[0].equals("other")
                        ? words(report)
                        : report instanceof Observed seen && seen.sign().key().equals(v[0]);
            case "absent" ->
                remark.filter(one -> one instanceof Remark.Absent absent
                                && absent.sign().key().equals(v[0]))
                        .isPresent();
            case "note" -> words(report);
            case "void" ->
                report instanceof Corrected corrected
                        && corrected.instead().isEmpty()
                        && corrected.entry() == Integer.parseInt(v[0]);
            default -> throw new IllegalArgumentException(text);
        };
    }

    private static boolean water(Did did, String[] v) {
        if (v.length == 1) return did.waterL().isEmpty();
        double litres = Double.parseDouble(v[1].substring(6))
                * switch (v[2]) {
                    case "ml" -> 0.001;
                    case "gal" -> 3.785411784;
                    case "ukgal" -> 4.54609;
                    default -> 1;
                };
        return did.waterL().isPresent() && near(did.waterL().getAsDouble(), litres, 0.03, 0.006);
    }

    private static boolean fan(Remark.FanSet fan, String told) {
        return switch (told) {
            case "on" -> fan.speedFraction().isEmpty() || fan.speedFraction().getAsDouble() > 0;
            case "off" -> fan.speedFraction().isPresent() && fan.speedFraction().getAsDouble() == 0;
            default ->
                fan.speedFraction().isPresent()
                        && near(fan.speedFraction().getAsDouble(), Double.parseDouble(told) / 100, 0, 0.01);
        };
    }

    private static double ebc(String[] v) {
        double figure = Double.parseDouble(v[0]);
        return switch (v[1]) {
            case "SRM" -> figure * 1.97;
            case "L" -> (1.3546 * figure - 0.76) * 1.97;
            default -> figure;
        };
    }
}
