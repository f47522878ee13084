package piecewright.text;

import java.util.List;
import piecewright.learn.Belief;
import piecewright.learn.Interval;
import piecewright.learn.Learned;
import piecewright.learn.Trait;
import piecewright.learn.Unknown;
import piecewright.quantity.Moisture;

/** What batches taught of a lot or a kit: before and now, eight chances in ten. */
public final class LearnedPage {
    private final QuantityFormat quantities;

    public LearnedPage(DisplayUnits units) {
        this.quantities = new QuantityFormat(units);
    }

    /**
     * The page.
     *
     * @param stated what was believed before any batch
     */
    public String page(String name, Belief stated, Learned learned) {
        StringBuilder page = new StringBuilder();
        page.append(Paragraph.of(name + ": ", from(learned)));
        Columns columns = new Columns(List.of(
                new Columns.Column("", Columns.Side.LEFT),
                new Columns.Column(Phrases.say("learned.column.before"), Columns.Side.LEFT),
                new Columns.Column(Phrases.say("learned.column.now"), Columns.Side.LEFT)));
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

    private static String from(Learned learned) {
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
    private static String title(Unknown unknown, String name) {
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
