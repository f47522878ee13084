package piecewright.text;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import piecewright.ensemble.ActBands;
import piecewright.ensemble.Figure;
import piecewright.ensemble.Help;
import piecewright.ensemble.Milestone;
import piecewright.ensemble.Sureness;
import piecewright.ensemble.TimeBand;
import piecewright.ensemble.Verdict;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Plan;
import piecewright.process.couch.Ignition;
import piecewright.quantity.Moisture;

/** How sure a plan is, in sentences: one short band for each act, one verdict for the whole. */
public final class SurenessWords {
    /** Judgement: an act that takes place this often needs no word about it. */
    private static final double NEARLY_ALWAYS_FRACTION = 0.95;

    /** Where a thermometer is read. */
    private static final Set<ActKind> READ = EnumSet.of(ActKind.LOOK, ActKind.CHECK, ActKind.BREAK);
    /** Where nobody counts corns any more. */
    private static final Set<ActKind> GROWN = EnumSet.of(
            ActKind.CHECK,
            ActKind.BREAK,
            ActKind.STIR,
            ActKind.RAISE,
            ActKind.LOWER,
            ActKind.CURE,
            ActKind.OFF,
            ActKind.DEROOT,
            ActKind.ROAST);

    private final QuantityFormat quantities;
    private final MomentFormat moments;
    private final RemedyWords remedies;

    public SurenessWords(DisplayUnits units, ZoneId zone) {
        this.quantities = new QuantityFormat(units);
        this.moments = new MomentFormat(zone, units.locale());
        this.remedies = new RemedyWords(units, zone);
    }

    /** The band of one act: its weight, and when it will be where the malt decides. */
    public String act(Act act, ActBands bands) {
        List<String> words = new ArrayList<>();
        words.add(Phrases.say(
                "sure.act.weight",
                quantities.scaleMass(bands.weighedKg().p10()),
                quantities.scaleMass(bands.weighedKg().p90())));
        if (READ.contains(act.kind())) {
            words.add(Phrases.say(
                    "sure.act.grain",
                    quantities.temperature(bands.grainC().p10()),
                    quantities.temperature(bands.grainC().p90())));
        }
        bands.acrospireFraction()
                .filter(grown -> !GROWN.contains(act.kind()))
                .ifPresent(grown -> words.add(Phrases.say(
                        "sure.act.acrospire", quantities.percent(grown.p10()), quantities.percent(grown.p90()))));
        TimeBand at = bands.at();
        if (Duration.between(at.p10(), at.p90()).toMinutes() >= 15) {
            words.add(Phrases.say("sure.act.at", near(act, at.p10()), near(act, at.p90())));
        }
        if (bands.happensFraction() < NEARLY_ALWAYS_FRACTION) {
            words.add(Phrases.say("sure.act.happens", hundred(bands.happensFraction())));
        }
        return Phrases.say("sure.act", String.join(Phrases.say("sure.act.and"), words));
    }

    private String near(Act act, Instant at) {
        boolean sameDay =
                LocalDate.ofInstant(at, moments.zone()).equals(LocalDate.ofInstant(act.startsAt(), moments.zone()));
        return sameDay ? moments.clock(at) : moments.moment(at);
    }

    /** How likely all goes well, and that nothing is spoilt. */
    String chance(Verdict verdict) {
        return Phrases.say("sure.chance", hundred(verdict.softFraction()), hundred(verdict.hardFraction()));
    }

    /** The step most likely to go wrong, and how; empty where none does. */
    Optional<String> mostLikelyProblem(Plan plan, Verdict verdict) {
        return verdict.weakest()
                .map(weakest -> Phrases.say(
                        "sure.problem",
                        title(plan, weakest.actId()),
                        hundred(weakest.fraction()),
                        Phrases.say("sure.problem." + Phrases.key(weakest.fault()))));
    }

    /** How likely the plan holds, what breaks first, what helps most. */
    public String verdict(Plan plan, Sureness sureness) {
        Verdict verdict = sureness.verdict();
        StringBuilder words = new StringBuilder(chance(verdict));
        mostLikelyProblem(plan, verdict).ifPresent(problem -> words.append(' ').append(problem));
        sureness.help()
                .ifPresent(help ->
                        words.append(' ').append(Phrases.say("sure.help", help(help), hundred(help.softFraction()))));
        return words.toString();
    }

    private String help(Help help) {
        return help instanceof Help.Measured measured
                ? Phrases.say(quantities, "sure.measured." + Phrases.key(measured.doubt()))
                : remedies.change(((Help.Arranged) help).change());
    }

    private static String title(Plan plan, String actId) {
        return plan.acts().stream()
                .filter(act -> act.id().equals(actId))
                .findFirst()
                .map(act -> ActNames.title(act.kind(), act.id()))
                .orElse(actId);
    }

    /** When the grain does by itself what it does, and what comes of it. */
    public String piece(Sureness sureness) {
        List<String> words = new ArrayList<>();
        for (Milestone milestone : Milestone.values()) {
            if (milestone == Milestone.OFF) continue;
            sureness.milestone(milestone)
                    .ifPresent(at -> words.add(Phrases.say(
                            "sure.milestone." + Phrases.key(milestone),
                            moments.moment(at.p10()),
                            moments.moment(at.p90()),
                            quantities.temperature(Ignition.CAUGHT_C))));
            if (milestone == Milestone.PEAK) told(sureness, Figure.COUCH_PEAK_C, quantities::temperature, words);
        }
        told(sureness, Figure.STEW_MINUTES, this::minutes, words);
        told(sureness, Figure.ROAST_MINUTES, this::minutes, words);
        told(sureness, Figure.ROASTED_C, quantities::temperature, words);
        told(sureness, Figure.END_MOISTURE_FRACTION, end -> quantities.moisture(new Moisture(end)), words);
        told(sureness, Figure.DIASTATIC_FRACTION, quantities::percent, words);
        told(sureness, Figure.MALT_KG, quantities::mass, words);
        return String.join(" ", words) + " " + Phrases.say("sure.basis", Integer.toString(sureness.members()));
    }

    private static void told(Sureness sureness, Figure figure, DoubleFunction<String> written, List<String> words) {
        sureness.figure(figure)
                .ifPresent(band -> words.add(Phrases.say(
                        "sure.figure." + Phrases.key(figure), written.apply(band.p10()), written.apply(band.p90()))));
    }

    private String minutes(double minutes) {
        return quantities.time(Duration.ofMinutes(Math.round(minutes)));
    }

    private static String hundred(double fraction) {
        return Long.toString(Math.round(100 * fraction));
    }
}
