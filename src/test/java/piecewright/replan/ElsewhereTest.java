package piecewright.replan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.Kit;
import piecewright.house.Place;
import piecewright.house.Trays;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Continuation;
import piecewright.plan.Households;
import piecewright.plan.ModelParameters;
import piecewright.plan.PlanRequest;
import piecewright.plan.Timetable;
import piecewright.replan.ReplanResult.Replanned;
import piecewright.text.DisplayUnits;
import piecewright.text.MovePage;

/** Trays that were planned with are lent away while the grain soaks: that it grows elsewhere is said, with why. */
class ElsewhereTest {
    private static final House GARAGE = Households.garage(9, 11);

    private static House with(List<Trays> trays) {
        Kit kit = GARAGE.kit();
        List<Place> places = new ArrayList<>(GARAGE.places());
        places.add(new Place("cellar", new AirTemperature.Constant(15), 0.8));
        Kit changed = new Kit(kit.vessels(), trays, kit.boxes(), kit.heaters(), kit.scale(), kit.learned());
        return new House(
                GARAGE.name(), GARAGE.zone(), places, GARAGE.steepWaterC(), GARAGE.people(), GARAGE.nights(), changed);
    }

    private static Replanned replanned(PlanRequest wish, Story story) {
        Map<ActKind, String> places = new EnumMap<>(ActKind.class);
        for (Act act : story.plan().acts())
            act.setting().place().ifPresent(place -> places.putIfAbsent(act.kind(), place));
        Batch batch = new Batch(
                wish,
                story.plan().outcome().rawGrainKg(),
                Timetable.of(story.plan()).visits(),
                places,
                0,
                story.journal());
        Instant now = story.act("steep-1.drain").startsAt().plusSeconds(600);
        return new Replanner(new Continuation(ModelParameters.defaults()))
                .replan(batch, List.of(), now)
                .match(replanned -> replanned, not -> {
                    throw new AssertionError(not.obstacles().toString());
                });
    }

    @Test
    void aStepDoneElsewhereIsAMoveWithItsReason() {
        List<Trays> both = new ArrayList<>(GARAGE.kit().trays());
        both.add(new Trays("cellar screens", "cellar", 4, 0.2));
        Story story = Story.of(Households.wish(with(both))).byPlanUntil("steep-2.soak");
        assertEquals(Optional.of("cellar"), story.act("floor.spread").setting().place());
        assertTrue(replanned(story.wish(), story).moves().stream()
                .allMatch(move -> move.places().isEmpty()));
        Replanned lent = replanned(Households.wish(with(GARAGE.kit().trays())), story);
        List<Move> elsewhere =
                lent.moves().stream().filter(move -> move.places().isPresent()).toList();
        Move spread = elsewhere.get(0);
        assertEquals("floor.spread", spread.actId(), Story.told(lent.moves()));
        assertEquals(Optional.of(new Move.Places("cellar", "garage")), spread.places());
        assertEquals(new Move.Because.NoRoom("cellar"), spread.because());
        String page = new MovePage(DisplayUnits.metric(), GARAGE.zone(), story.journal()).of(lent, story.plan());
        assertTrue(
                page.replaceAll("\\s+", " ").contains("in “garage” instead of “cellar”, because “cellar” is gone"),
                page);
    }
}
