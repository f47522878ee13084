package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.Kit;
import piecewright.house.Place;
import piecewright.house.Trays;
import piecewright.house.Vessel;
import piecewright.plan.Timetable.Visit;

/** A batch under way lies where it lies: what a better choice would be now is no news to it. */
class KitUsedTest {
    private static final House GARAGE = Households.garage(13, 15);

    /** The same with a second room that has a tub and trays, so warm. */
    private static House withRoom(double lowC, double highC) {
        Kit kit = GARAGE.kit();
        List<Place> places = new java.util.ArrayList<>(GARAGE.places());
        places.add(new Place("cellar", new AirTemperature.Daily(lowC, highC), 0.7));
        List<Vessel> vessels = new java.util.ArrayList<>(List.of(new Vessel("barrel", "cellar", 60)));
        vessels.addAll(kit.vessels());
        List<Trays> trays = new java.util.ArrayList<>(kit.trays());
        trays.add(new Trays("cellar screens", "cellar", 4, 0.2));
        Kit more = new Kit(vessels, trays, kit.boxes(), kit.heaters(), kit.scale(), kit.learned());
        return new House(
                GARAGE.name(), GARAGE.zone(), places, GARAGE.steepWaterC(), GARAGE.people(), GARAGE.nights(), more);
    }

    private static Plan planned(PlanResult result) {
        return result.match(PlanResult.Planned::plan, not -> {
            throw new AssertionError(not.obstacles().toString());
        });
    }

    private static String place(Plan plan, ActKind kind) {
        return plan.acts().stream()
                .filter(act -> act.kind() == kind)
                .findFirst()
                .orElseThrow()
                .setting()
                .place()
                .orElseThrow();
    }

    private static Begun begun(Plan plan, int done) {
        Map<ActKind, String> places = new EnumMap<>(ActKind.class);
        for (Act act : plan.acts()) act.setting().place().ifPresent(place -> places.putIfAbsent(act.kind(), place));
        List<Visit> all = Timetable.of(plan).visits();
        Instant now = all.get(done - 1).at().plus(Duration.ofMinutes(5));
        return new Begun(plan.outcome().rawGrainKg(), all.subList(0, done), Found.nothing(), all, places, now);
    }

    @Test
    void soaksOfThePastStayInTheirRoomAndTheGrainWhereItIsSpread() {
        Plan plan = planned(new Planner(ModelParameters.defaults()).plan(Households.wish(GARAGE)));
        PlanRequest later = Households.wish(withRoom(14.9, 15.1));
        Plan afresh = planned(new Planner(ModelParameters.defaults()).plan(later));
        assertNotEquals(place(plan, ActKind.FLOOR), place(afresh, ActKind.FLOOR), "the other room is the better one");
        int spread = 1 + Timetable.of(plan).visits().indexOf(Timetable.of(plan).first(ActKind.FLOOR));
        Plan rest = planned(new Continuation(ModelParameters.defaults()).continued(later, begun(plan, spread)));
        for (ActKind kind : List.of(ActKind.SOAK, ActKind.DRAIN, ActKind.FLOOR, ActKind.LOAD)) {
            assertEquals(place(plan, kind), place(rest, kind), kind.key());
        }
    }

    /** The vessels shrank on paper after the soak: the grain is in them all the same. */
    @Test
    void kitInUseHoldsThePieceWhateverIsSaidOfItSince() {
        Plan plan = planned(new Planner(ModelParameters.defaults()).plan(Households.wish(GARAGE)));
        Kit kit = GARAGE.kit();
        List<Vessel> small = kit.vessels().stream()
                .map(vessel -> new Vessel(vessel.name(), vessel.place(), 1))
                .toList();
        House shrunk =
                GARAGE.withKit(new Kit(small, kit.trays(), kit.boxes(), kit.heaters(), kit.scale(), kit.learned()));
        Plan rest = planned(
                new Continuation(ModelParameters.defaults()).continued(Households.wish(shrunk), begun(plan, 2)));
        assertEquals(place(plan, ActKind.SOAK), place(rest, ActKind.SOAK));
    }

    /** How sure a plan is, is drawn in the rooms and kit the plan itself takes, whatever looks better to a new wish. */
    @Test
    void bandsAreDrawnWhereThePlanHasTheGrain() {
        Planner planner = new Planner(ModelParameters.defaults());
        PlanRequest roomy = Households.wish(withRoom(14.9, 15.1));
        for (String room : List.of("garage", "cellar")) {
            Plan plan = planned(planner.plan(roomy.arranged(Arrangement.usual()
                    .at(Arrangement.usual().places().growingIn(room).steepingIn(room)))));
            Outfit drawn = planner.blueprint(roomy, plan).setup().outfit();
            assertEquals(place(plan, ActKind.FLOOR), drawn.growing().place());
            assertEquals(place(plan, ActKind.SOAK), drawn.soaking().place());
            assertEquals(place(plan, ActKind.LOAD), drawn.drying().dryer().name());
            assertEquals(room, drawn.growing().place());
        }
    }
}
