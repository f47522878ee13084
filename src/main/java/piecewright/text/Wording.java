package piecewright.text;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import piecewright.plan.Act;
import piecewright.plan.Caution;
import piecewright.plan.Check;
import piecewright.plan.Expectation;
import piecewright.plan.Finding;
import piecewright.plan.InnerSchedule;
import piecewright.plan.Obstacle;
import piecewright.plan.Phase;
import piecewright.plan.PhaseKind;
import piecewright.plan.Plan;

/** Turns what the plan holds as figures into sentences for one person and one house's clock. */
public final class Wording {
    private static final List<String> SUBJECTS = List.of("lot", "house", "style", "plan");

    private final QuantityFormat quantities;
    private final MomentFormat moments;
    private final ActWords acts;
    private final CheckWords checks;
    private final FindingWords findings;
    private final ObstacleWords obstacles;
    private final InnerWords inner;

    public Wording(DisplayUnits units, ZoneId zone) {
        this.quantities = new QuantityFormat(units);
        this.moments = new MomentFormat(zone, units.locale());
        this.acts = new ActWords(quantities);
        this.checks = new CheckWords(quantities);
        this.findings = new FindingWords(quantities, moments);
        this.obstacles = new ObstacleWords(quantities, moments);
        this.inner = new InnerWords(quantities);
    }

    /** What somebody should know, by how much, and what would better it. */
    public String finding(Finding finding) {
        return findings.sentence(finding);
    }

    /** What the finding is about: an act by its name, or the lot, house, style or plan. */
    public String about(Plan plan, Finding finding) {
        String about = finding.about();
        return plan.acts().stream()
                .filter(act -> act.id().equals(about))
                .findFirst()
                .map(this::actTitle)
                .orElseGet(() -> SUBJECTS.contains(about) ? Phrases.say("about." + about) : about);
    }

    /** Why there is no plan, by how much, and what would help. */
    public String obstacle(Obstacle obstacle) {
        return obstacles.sentence(obstacle);
    }

    /** The danger and what to do about it; local rules and licensed practice come first. */
    public String caution(Caution caution) {
        return Phrases.say(quantities, "caution." + Phrases.key(caution));
    }

    /** What to do about the danger, in one line. */
    public String shortCaution(Caution caution) {
        return Phrases.say(quantities, "caution-short." + Phrases.key(caution));
    }

    /** The danger in a word or two: "Fire". */
    public String cautionName(Caution caution) {
        return Phrases.say("caution-name." + Phrases.key(caution));
    }

    /** The danger under its name: "Dust. Malt and grain dust harms the lungs …". */
    public String namedCaution(Caution caution) {
        String name = cautionName(caution);
        String words = caution(caution);
        return words.startsWith(name) ? words : name + ". " + words;
    }

    /** The dangers by name, where there is room for no more. */
    public String cautionNames(List<Caution> cautions) {
        return Phrases.say(
                "caution-names",
                String.join("; ", cautions.stream().map(this::cautionName).toList()));
    }

    /** The first sentence of several. */
    public String firstSentence(String sentences) {
        int end = sentences.indexOf(". ");
        return end < 0 ? sentences : sentences.substring(0, end + 1);
    }

    /** A short name, numbered when there are several: "Turn 3". */
    public String actTitle(Act act) {
        return ActNames.title(act.kind(), act.id());
    }

    /** What to do and what to set. */
    public String whatToDo(Act act) {
        return acts.whatToDo(act);
    }

    /** What goes into an attended block, how it lags and how far to trust the dial. */
    public String innerHead(InnerSchedule schedule) {
        return inner.head(schedule);
    }

    /** The minutes of an attended block, one line each: "+15  In. Oven at 100 °C."; none for other acts. */
    public List<String> innerRows(Act act) {
        return inner.rows(act);
    }

    /** When a step of an attended block is due by the timer that was started with it: "75", "75:30". */
    public String innerTimer(InnerSchedule.InnerStep step) {
        return InnerWords.timer(step.at());
    }

    /** What one step of an attended block asks for. */
    public String innerStep(Act act, InnerSchedule.InnerStep step) {
        return inner.sentence(act.kind(), step);
    }

    /** The kind of step, without a number: "Turn". */
    public String kindTitle(Act act) {
        return Phrases.say(ActNames.words(act.kind(), act.id()) + ".title");
    }

    /** How such a step is done, whatever is set. */
    public String howTo(Act act) {
        return Phrases.say(quantities, ActNames.words(act.kind(), act.id()) + ".do");
    }

    /** The step at which a danger first stands, and that there are more. */
    public String from(Collection<String> steps) {
        String first = steps.iterator().next();
        return steps.size() == 1 ? first : Phrases.say("onepage.caution.from", first);
    }

    /** What to look and smell for, in the trade's words. */
    public String lookFor(Act act) {
        return Phrases.say(quantities, ActNames.words(act.kind(), act.id()) + ".look");
    }

    /** Why the act is in the plan. */
    public String why(Act act) {
        return Phrases.say(quantities, ActNames.words(act.kind(), act.id()) + ".why");
    }

    /** "Count germination – two-row barley". */
    public String checkTitle(Check check) {
        return CheckWords.title(check);
    }

    public String checkToDo(Check check) {
        return checks.toDo(check);
    }

    /** What the check buys in certainty. */
    public String checkGain(Check check) {
        return checks.gain(check);
    }

    /** Where its result is to be written, so that the next plan knows it. */
    public String checkEntry(Check check) {
        return checks.entry(check);
    }

    /** Weight, moisture, temperature and growth to be found. */
    public String expectation(Expectation expect) {
        String mass = quantities.mass(expect.massKg());
        String moisture = quantities.moisture(expect.moisture());
        String grain = quantities.temperature(expect.grainC());
        return expect.acrospireFraction().isPresent()
                ? Phrases.say(
                        "expect.grown",
                        mass,
                        moisture,
                        grain,
                        quantities.percent(expect.acrospireFraction().getAsDouble()))
                : Phrases.say("expect.wet", mass, moisture, grain);
    }

    /** Until when whoever begins this act must stay near. */
    public String stay(Act act, Instant until) {
        return Phrases.say("stay.until", near(act, until));
    }

    /** "Stay near: drying". */
    public String stayTitle(PhaseKind kind) {
        return Phrases.say("stay.title." + kind.key());
    }

    /** Why somebody must stay near. */
    public String mayNotBeLeft() {
        return Phrases.say("stay.why");
    }

    public String phaseTitle(PhaseKind kind) {
        return Phrases.say("phase." + kind.key());
    }

    /** When the act may happen, and when it never may; moments of its own day by the clock alone. */
    public String window(Act act) {
        boolean past = act.startsAt().isAfter(act.window().latest());
        return Phrases.say(
                past ? "act.when.past" : "act.when.free",
                near(act, act.window().earliest()),
                near(act, act.window().latest()),
                near(act, act.window().hardLatest()));
    }

    /** The same in a few words: "best 14:10–20:03, too late after Mon 29 Mar 01:10". */
    public String shortWindow(Act act) {
        return Phrases.say(
                "act.when.short",
                near(act, act.window().earliest()),
                near(act, act.window().latest()),
                near(act, act.window().hardLatest()));
    }

    private String near(Act act, Instant at) {
        ZoneId zone = moments.zone();
        boolean sameDay = LocalDate.ofInstant(at, zone).equals(LocalDate.ofInstant(act.startsAt(), zone));
        return sameDay ? moments.clock(at) : moments.moment(at);
    }

    /** Where the grain lies meanwhile and what its moisture does. */
    public String phase(Phase phase) {
        return Phrases.say(
                "phase.is",
                phase.place(),
                quantities.moisture(phase.moistureFrom()),
                quantities.moisture(phase.moistureUntil()));
    }
}
