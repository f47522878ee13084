package piecewright.desktop.plan;

import java.time.Duration;
import java.util.List;
import java.util.Objects;
import piecewright.app.ReadWish;
import piecewright.colour.ColourBand;
import piecewright.desktop.timeline.ActMark.Standing;
import piecewright.desktop.timeline.ChartWriter;
import piecewright.desktop.timeline.PieceChart;
import piecewright.plan.Act;
import piecewright.plan.Plan;
import piecewright.purchase.GrainNeed;
import piecewright.text.DisplayUnits;
import piecewright.text.MomentFormat;
import piecewright.text.QuantityFormat;
import piecewright.text.WindowWords;
import piecewright.text.Wording;

/** A plan that answers the sentence, with what the window says of it. */
public record Drafted(ReadWish wish, Plan plan, PieceChart chart, List<Figure> verdict, List<String> findings) {
    public Drafted {
        Objects.requireNonNull(wish);
        Objects.requireNonNull(plan);
        Objects.requireNonNull(chart);
        verdict = List.copyOf(verdict);
        findings = List.copyOf(findings);
    }

    /** One figure of the verdict, and what is said under it. */
    public record Figure(String key, String figure, String under) {}

    static Drafted of(ReadWish wish, Plan plan, DisplayUnits units) {
        Wording wording = new Wording(units, plan.subject().zone());
        List<String> findings = plan.findings().stream().map(wording::finding).toList();
        PieceChart chart = new ChartWriter(wish.request(), plan, units).chart(act -> Standing.PLANNED);
        return new Drafted(wish, plan, chart, verdict(wish, plan, units), findings);
    }

    private static List<Figure> verdict(ReadWish wish, Plan plan, DisplayUnits units) {
        QuantityFormat quantities = new QuantityFormat(units);
        MomentFormat moments = new MomentFormat(plan.subject().zone(), units.locale());
        Act last = plan.acts().get(plan.acts().size() - 1);
        Duration hands = plan.acts().stream().map(Act::work).reduce(Duration.ZERO, Duration::plus);
        Duration busy = Duration.between(plan.startsAt(), last.endsAt());
        long rest = Duration.between(last.endsAt(), plan.subject().readyAt()).toDays();
        GrainNeed need = GrainNeed.of(plan, wish.request().lot());
        double colourEbc = plan.outcome().finished().kiln().colourEbc();
        ColourBand band = ColourBand.of(wish.request().style(), colourEbc);
        return List.of(
                new Figure(
                        "start",
                        WindowWords.say("verdict.start", moments.moment(plan.startsAt())),
                        WindowWords.say(
                                "verdict.start.under",
                                Long.toString(Math.max(1, Math.round(busy.toHours() / 24.0))),
                                Long.toString(rest))),
                new Figure(
                        "work",
                        WindowWords.say(
                                "verdict.work", Integer.toString(plan.acts().size()), quantities.time(hands)),
                        WindowWords.say("verdict.work.under")),
                new Figure(
                        "grain",
                        WindowWords.say(
                                "verdict.grain",
                                quantities.roughMass(plan.outcome().rawGrainKg())),
                        WindowWords.say(
                                "verdict.grain.under",
                                quantities.roughMass(need.lowGrainKg()),
                                quantities.roughMass(need.highGrainKg()))),
                new Figure(
                        "colour",
                        quantities.colour(colourEbc),
                        WindowWords.say(
                                "verdict.colour.under",
                                quantities.colour(band.lowEbc()),
                                quantities.colour(band.highEbc()))));
    }
}
