package piecewright.text;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.colour.ColourBand;
import piecewright.ensemble.Figure;
import piecewright.ensemble.Sureness;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.quantity.EbcRange;

/** What a batch is, in a few named lines: grain, malt, colour, days, hours of work. */
public final class PlanFacts {
    private final QuantityFormat quantities;
    private final MomentFormat moments;
    private final List<Fact> facts = new ArrayList<>();

    private PlanFacts(Plan plan, DisplayUnits units) {
        this.quantities = new QuantityFormat(units);
        this.moments = new MomentFormat(plan.subject().zone(), units.locale());
    }

    /** One line: "Raw grain", "4.970 kg to weigh out …". */
    public record Fact(String name, String words) {}

    public static List<Fact> of(PlanRequest request, Plan plan, DisplayUnits units) {
        return of(request, plan, Optional.empty(), units);
    }

    /** The same with the colour's band from an ensemble where there is one. */
    static List<Fact> of(PlanRequest request, Plan plan, Optional<Sureness> sureness, DisplayUnits units) {
        PlanFacts facts = new PlanFacts(plan, units);
        double colourEbc = plan.outcome().finished().kiln().colourEbc();
        ColourBand usual = ColourBand.of(request.style(), colourEbc);
        ColourBand band = sureness.flatMap(sure -> sure.figure(Figure.COLOUR_EBC))
                .map(found -> new ColourBand(found.p10(), found.p90()))
                .orElse(usual);
        facts.amounts(plan.outcome(), band);
        EbcRange promised = request.style().finish().colour();
        if (!promised.contains(colourEbc)) facts.offColour(promised);
        facts.days(plan);
        facts.add("clock", plan.subject().zone().getId(), request.house().name());
        return List.copyOf(facts.facts);
    }

    private void amounts(Plan.Outcome outcome, ColourBand band) {
        add("raw-grain", quantities.mass(outcome.rawGrainKg()));
        add("malt", quantities.mass(outcome.finishedMaltKg()), quantities.mass(outcome.scaleMaltKg()));
        double colourEbc = outcome.finished().kiln().colourEbc();
        add(
                "colour",
                quantities.colour(colourEbc),
                quantities.colour(band.lowEbc()),
                quantities.colour(band.highEbc()));
    }

    /** Said at the top: what was not asked for is seen there first. */
    private void offColour(EbcRange promised) {
        add("off-colour", quantities.colour(promised.lowEbc()), quantities.colour(promised.highEbc()));
    }

    private void days(Plan plan) {
        dated("start", moments.dated(plan.startsAt()));
        plan.acts().stream()
                .filter(act -> act.kind() == ActKind.OFF)
                .findFirst()
                .ifPresent(off -> add(
                        "off",
                        moments.dated(off.startsAt()),
                        quantities.moisture(off.expect().moisture())));
        Act last = plan.acts().get(plan.acts().size() - 1);
        if (last.kind() == ActKind.ROAST) {
            add(
                    "roasted",
                    moments.dated(last.endsAt()),
                    quantities.moisture(plan.outcome().endMoisture()));
        }
        dated("ready", moments.dated(plan.subject().readyAt()));
        Duration work = plan.acts().stream().map(Act::work).reduce(Duration.ZERO, Duration::plus);
        add("work", Integer.toString(plan.acts().size()), quantities.time(work));
    }

    private void add(String key, String... figures) {
        facts.add(new Fact(Phrases.say("page." + key), Phrases.say("page." + key + ".is", figures)));
    }

    private void dated(String key, String moment) {
        facts.add(new Fact(Phrases.say("page." + key), moment));
    }
}
