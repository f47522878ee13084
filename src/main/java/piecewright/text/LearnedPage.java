package piecewright.text;

import java.util.ArrayList;
import java.util.List;
import piecewright.belief.Belief;
import piecewright.belief.Interval;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.history.Contradiction;
import piecewright.learn.Estimate;
import piecewright.learn.Estimate.Judged;
import piecewright.learn.Figure;
import piecewright.learn.Learned;
import piecewright.learn.Lessons.Outcome;
import piecewright.learn.Observation;
import piecewright.learn.Verdict;
import piecewright.quantity.Moisture;

/** What batches taught of a lot or a kit: before and now, eight chances in ten. */
public final class LearnedPage {
    private final QuantityFormat quantities;
    private final QuestionWords questions;

    public LearnedPage(DisplayUnits units) {
        this.quantities = new QuantityFormat(units);
        this.questions = new QuestionWords(units);
    }

    /**
     * The page.
     *
     * @param stated what was believed before any batch
     */
    public String page(String name, Belief stated, Learned learned) {
        StringBuilder page = new StringBuilder();
        page.append(Paragraph.of(name + ": ", from(learned)));
        Columns columns = columns();
        Belief now = learned.believed(stated);
        for (Unknown unknown : stated.unknowns()) {
            columns.add(
                    title(unknown, name), span(unknown.trait(), stated.interval(unknown)), now(unknown, stated, now));
        }
        page.append("  ").append(columns.titles()).append('\n');
        for (int i = 0; i < columns.size(); i++)
            page.append("  ").append(columns.row(i)).append('\n');
        return page.toString();
    }

    /** Whether lessons were kept for the next batch. */
    public enum Kept {
        YES,
        NO
    }

    /** What came of learning from a batch. */
    public String outcome(String name, Outcome outcome, Kept kept) {
        if (outcome instanceof Outcome.NothingYet) {
            return Paragraph.of(name + ": ", Phrases.say("lessons.nothing-yet")) + leftOut(outcome);
        }
        if (outcome instanceof Outcome.BuiltUpon) return Paragraph.of(name + ": ", Phrases.say("lessons.built-upon"));
        String page = lessons(name, ((Outcome.Taught) outcome).estimate()) + leftOut(outcome);
        return kept == Kept.YES ? page + Paragraph.of("", Phrases.say("lessons.kept")) : page;
    }

    /** What one batch taught, for the window, a sentence each. */
    public List<String> told(Outcome outcome) {
        if (outcome instanceof Outcome.NothingYet) {
            List<String> nothing = new ArrayList<>(List.of(WindowWords.say("learned.nothing-yet")));
            nothing.addAll(questions(outcome));
            return nothing;
        }
        if (outcome instanceof Outcome.BuiltUpon) return List.of(WindowWords.say("learned.built-upon"));
        List<Judged> all = ((Outcome.Taught) outcome).estimate().observations();
        List<Judged> questioned = all.stream()
                .filter(judged -> judged.verdict() instanceof Verdict.Questioned)
                .toList();
        List<String> told = new ArrayList<>();
        told.add(WindowWords.say("learned.taught", Integer.toString(all.size() - questioned.size())));
        questioned.forEach(judged -> told.add(question(judged)));
        told.addAll(questions(outcome));
        return told;
    }

    /** What is asked about entries that cannot be true and taught nothing, a sentence or two each. */
    public List<String> questions(Outcome outcome) {
        return leftOutOf(outcome).stream().map(questions::sentence).toList();
    }

    /** Entries that cannot be true. */
    public static List<Contradiction> leftOutOf(Outcome outcome) {
        if (outcome instanceof Outcome.Taught taught) return taught.leftOut();
        return outcome instanceof Outcome.NothingYet nothing ? nothing.leftOut() : List.of();
    }

    private String leftOut(Outcome outcome) {
        StringBuilder page = new StringBuilder();
        questions(outcome).forEach(question -> page.append(Paragraph.of("  ", question)));
        return page.toString();
    }

    /** What one batch taught: what moved, and every reading that was not learned from, with its likely cause. */
    private String lessons(String name, Estimate estimate) {
        StringBuilder page = new StringBuilder();
        List<Judged> questioned = estimate.observations().stream()
                .filter(judged -> judged.verdict() instanceof Verdict.Questioned)
                .toList();
        int taught = estimate.observations().size() - questioned.size();
        page.append(Paragraph.of(name + ": ", Phrases.say("lessons.from", Integer.toString(taught))));
        Columns columns = columns();
        for (Unknown unknown : estimate.prior().unknowns()) {
            columns.add(
                    title(unknown, name),
                    span(unknown.trait(), estimate.prior().interval(unknown)),
                    now(unknown, estimate.prior(), estimate.posterior()));
        }
        append(page, columns);
        questioned.forEach(judged -> page.append(Paragraph.of("  ", question(judged))));
        return page.toString();
    }

    /** Why a reading was not learned from, and what to do. */
    public String question(Judged judged) {
        Observation observation = judged.observation();
        Verdict.Cause cause = ((Verdict.Questioned) judged.verdict()).cause();
        return Phrases.say(
                "lessons.question." + Phrases.key(cause),
                observation.key(),
                read(observation.figure(), observation.value()),
                read(observation.figure(), judged.expected().middle()));
    }

    private String read(Figure figure, double value) {
        return switch (figure) {
            case WEIGHT -> quantities.mass(value);
            case MOISTURE -> quantities.moisture(new Moisture(value));
            case GRAIN_TEMPERATURE, AIR_TEMPERATURE -> quantities.temperature(value);
            case ACROSPIRE -> quantities.percent(value);
            case COLOUR -> quantities.colour(value);
        };
    }

    private static Columns columns() {
        return new Columns(List.of(
                new Columns.Column("", Columns.Side.LEFT),
                new Columns.Column(Phrases.say("learned.column.before"), Columns.Side.LEFT),
                new Columns.Column(Phrases.say("learned.column.now"), Columns.Side.LEFT)));
    }

    private static void append(StringBuilder page, Columns columns) {
        page.append("  ").append(columns.titles()).append('\n');
        for (int i = 0; i < columns.size(); i++)
            page.append("  ").append(columns.row(i)).append('\n');
    }

    /** From how many batches it was learned. */
    public String from(Learned learned) {
        int batches = learned.chapters().size();
        if (batches == 0) return Phrases.say("learned.nothing");
        String day = learned.chapters().get(batches - 1).learnedAt().toString().substring(0, 10);
        return batches == 1
                ? Phrases.say("learned.from-one", day)
                : Phrases.say("learned.from-many", Integer.toString(batches), day);
    }

    private String now(Unknown unknown, Belief stated, Belief now) {
        Interval interval = now.interval(unknown);
        return interval.equals(stated.interval(unknown))
                ? Phrases.say("learned.as-before")
                : span(unknown.trait(), interval);
    }

    /** What an unknown is called; the thing is named where it is not the page's own. */
    public String title(Unknown unknown, String name) {
        String trait = Phrases.say("trait." + Phrases.key(unknown.trait()));
        return unknown.item().equals(name) ? trait : unknown.item() + ": " + trait;
    }

    /** "1.42 (1.28 to 1.57)" in the unit of the trait. */
    public String span(Trait trait, Interval interval) {
        return Phrases.say(
                "learned.span",
                figure(trait, interval.middle()),
                figure(trait, interval.low()),
                figure(trait, interval.high()));
    }

    private String figure(Trait trait, double value) {
        return switch (trait) {
            case RAW_MOISTURE -> quantities.moisture(new Moisture(value));
            case AIR_FLOW -> quantities.airFlow(value);
            case DIAL_OFFSET -> (value > 0 ? "+" : "") + quantities.temperatureStep(value);
            case BOX_LOSS -> quantities.ratio(value) + " W/K";
            default -> quantities.ratio(value);
        };
    }
}
