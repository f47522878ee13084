package piecewright.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import piecewright.learn.Estimate.Judged;
import piecewright.learn.Lessons.Known;
import piecewright.learn.Lessons.Outcome;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.plan.Timetable;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;

/** A batch that went by its plan is run again for learning as the plan foretold it, whatever the style does to it. */
class WholeBatchLearningTest {
    private static final Known FRESH = new Known(Learned.nothing(), Learned.nothing());
    private static final Lessons LESSONS = new Lessons(ModelParameters.defaults());

    private record Told(PlanRequest wish, Plan plan, List<Entry> entries) {
        static Told of(String style) {
            boolean garage = Set.of("pale", "munich", "dark").contains(style);
            String house = garage ? "cool-garage" : "terrace-kitchen";
            try {
                PlanRequest wish = new PlanRequest(
                        StyleLibrary.builtIn().style(style),
                        LotFile.read(Path.of("demo-data/lots/two-row-barley.json")),
                        HouseFile.read(Path.of("demo-data/houses/" + house + ".json")),
                        new PlanRequest.Amount.RawGrain(garage ? 5 : 3.6),
                        new PlanRequest.When.StartOn(LocalDate.of(2027, garage ? 3 : 4, garage ? 5 : 2)));
                Plan plan = assertInstanceOf(
                                PlanResult.Planned.class, new Planner(ModelParameters.defaults()).plan(wish))
                        .plan();
                return new Told(wish, plan, new ArrayList<>());
            } catch (StoreException unread) {
                throw new AssertionError(unread);
            }
        }

        Told at(Instant at, Report report) {
            entries.add(new Entry(entries.size() + 1, at, at, Optional.empty(), report));
            return this;
        }

        Told byPlan() {
            for (Act act : plan.acts()) {
                boolean sprinkles = act.kind() == ActKind.SPRINKLE || act.kind() == ActKind.TURN;
                OptionalDouble waterL = sprinkles ? act.setting().waterL() : OptionalDouble.empty();
                entries.add(new Entry(
                        entries.size() + 1,
                        act.startsAt(),
                        act.startsAt(),
                        Optional.of(act.id()),
                        new Report.Did(act.kind(), waterL)));
            }
            return this;
        }

        Instant end() {
            return entries.get(entries.size() - 1).at().plusSeconds(6 * 3600);
        }

        Outcome.Taught taught() {
            Lessons.Batch batch = new Lessons.Batch(
                    new UUID(1, 1),
                    wish,
                    plan.outcome().rawGrainKg(),
                    Timetable.of(plan).visits(),
                    new Journal(entries));
            return assertInstanceOf(Outcome.Taught.class, LESSONS.of(batch, FRESH, end()));
        }
    }

    private static Judged of(Outcome.Taught taught, Figure figure) {
        return taught.estimate().observations().stream()
                .filter(judged -> judged.observation().figure() == figure)
                .reduce((first, second) -> second)
                .orElseThrow();
    }

    /** Stew, couch, cure and roast included: colour and weight of the malt are those the plan foretold. */
    @ParameterizedTest
    @ValueSource(strings = {"pale", "munich", "dark", "amber", "crystal-light", "chocolate"})
    void whatWentByItsPlanWasForetoldAsThePlanForetoldIt(String style) {
        Told told = Told.of(style).byPlan();
        var finished = told.plan().outcome().finished();
        double ebc = finished.kiln().colourEbc();
        double kg = finished.mass().totalKg();
        Outcome.Taught taught = told.at(told.end(), new Report.ColourMeasured(ebc))
                .at(told.end(), Report.Weighed.net(kg))
                .taught();
        assertEquals(List.of(), taught.leftOut());
        assertEquals(ebc, of(taught, Figure.COLOUR).expected().middle(), 0.06 * ebc, "colour, EBC");
        assertEquals(kg, of(taught, Figure.WEIGHT).expected().middle(), 0.02 * kg, "malt, kg");
    }

    /** A roast twice as dark as foretold teaches the oven it was roasted in, not the kiln. */
    @Test
    void aDarkRoastTeachesItsOven() {
        Told told = Told.of("amber").byPlan();
        double ebc = told.plan().outcome().finished().kiln().colourEbc();
        Outcome.Taught taught =
                told.at(told.end(), new Report.ColourMeasured(1.3 * ebc)).taught();
        Judged colour = of(taught, Figure.COLOUR);
        assertInstanceOf(Verdict.LearnedFrom.class, colour.verdict());
        String oven = told.plan().acts().stream()
                .filter(act -> act.kind() == ActKind.ROAST)
                .findFirst()
                .orElseThrow()
                .setting()
                .place()
                .orElseThrow();
        Unknown rate = new Unknown(Trait.COLOUR_RATE, oven);
        double before = taught.estimate().prior().value(rate);
        assertTrue(taught.estimate().posterior().value(rate) > 1.05 * before, "colours faster");
        PlanRequest wish = Taught.wish(told.wish(), taught.known());
        Plan next = assertInstanceOf(PlanResult.Planned.class, new Planner(ModelParameters.defaults()).plan(wish))
                .plan();
        assertTrue(next.outcome().finished().kiln().colourEbc() > 1.05 * ebc, "the next plan goes by it");
    }
}
