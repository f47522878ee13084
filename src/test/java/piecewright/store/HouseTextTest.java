package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.LocalHours;
import piecewright.store.HouseText.Flag;
import piecewright.store.HouseText.Thing;

/** A household's file changed value by value. */
class HouseTextTest {
    private static final Path DEMO = Path.of("demo-data/houses");

    @TempDir
    Path folder;

    private HouseText text;

    @BeforeEach
    void aHouse() throws Exception {
        Files.copy(DEMO.resolve("cool-garage-2027-03.csv"), folder.resolve("cool-garage-2027-03.csv"));
        Files.copy(DEMO.resolve("cool-garage.json"), folder.resolve("house.json"));
        text = HouseText.read(folder.resolve("house.json"));
    }

    @Test
    void oneValueChangesAndEverythingElseStays() throws Exception {
        House before = text.house();
        House after = text.withNumber("/kit/vessels/0/volumeL", 33.5).house();
        assertEquals(33.5, after.kit().vessels().get(0).volumeL());
        assertEquals(before.kit().vessels().get(1), after.kit().vessels().get(1));
        assertEquals(before.people(), after.people());
        assertEquals(before.places(), after.places());
    }

    @Test
    void aRenamedPlaceKeepsWhatStandsInIt() throws Exception {
        House after = text.withText("/places/0/name", "shed").house();
        assertEquals("shed", after.places().get(0).name());
        assertEquals("shed", after.kit().heaters().get(0).place());
        assertEquals("hall", after.kit().vessels().get(1).place());
    }

    @Test
    void aValueOutOfRangeIsRefusedWithItsKeyAndNothingIsWritten() throws Exception {
        String before = Files.readString(text.file());
        StoreException refused = assertThrows(StoreException.class, () -> text.withNumber("/kit/vessels/0/volumeL", 0));
        assertTrue(String.valueOf(refused.getMessage()).contains("volumeL"));
        assertEquals(before, Files.readString(text.file()));
    }

    @Test
    void aPlaceThatIsStoodInIsNotRemoved() {
        StoreException refused = assertThrows(StoreException.class, () -> text.without("/places/1"));
        assertTrue(String.valueOf(refused.getMessage()).contains("place"));
    }

    @Test
    void everyKindOfThingCanBeAddedTwiceAndTakenAway() throws Exception {
        HouseText now = text;
        for (Thing thing : Thing.values()) {
            int size = now.size(thing.list());
            now = now.added(thing, "new").added(thing, "new");
            assertEquals(size + 2, now.size(thing.list()));
            now = now.without(thing.list() + "/" + size);
            assertEquals(size + 1, now.size(thing.list()));
        }
        now.write();
        assertEquals(
                text.house().kit().heaters().size() + 1,
                HouseFile.read(text.file()).kit().heaters().size());
    }

    @Test
    void airIsToldAnew() throws Exception {
        House constant =
                text.withAir(0, Map.of("constantC", 12.0), Optional.empty()).house();
        assertEquals(new AirTemperature.Constant(12), constant.places().get(0).air());
        House daily = text.withAir(1, Map.of("lowC", 9.0, "highC", 14.0), Optional.empty())
                .house();
        assertEquals(new AirTemperature.Daily(9, 14), daily.places().get(1).air());
        assertThrows(StoreException.class, () -> text.withAir(1, Map.of(), Optional.of("missing.csv")));
    }

    @Test
    void aDatedDayIsAddedChangedAndTakenAway() throws Exception {
        LocalDate day = LocalDate.of(2031, 5, 1);
        HouseText with = text.withException(0, day, List.of("07:00-09:30", "20:00-22:00"));
        assertEquals(2, with.house().people().get(0).hoursOn(day).size());
        HouseText away = with.withException(0, day, List.of());
        assertEquals(List.of(), away.house().people().get(0).hoursOn(day));
        HouseText gone = away.without("/people/0/exceptions/1");
        assertEquals(text.house().people(), gone.house().people());
    }

    @Test
    void aWeekIsPaintedAndAFlagIsSet() throws Exception {
        LocalHours evening = new LocalHours(LocalTime.of(18, 0), LocalTime.MIDNIGHT);
        HouseText painted = text.withWeek("the early riser", Map.of(DayOfWeek.MONDAY, List.of(evening)));
        assertEquals(
                Map.of(DayOfWeek.MONDAY, List.of(evening)),
                painted.house().people().get(0).week());
        assertThrows(StoreException.class, () -> text.withWeek("nobody", Map.of()));
        House flagged = text.withFlag("/kit/heaters/0/rampsItself", Flag.YES).house();
        assertTrue(flagged.kit().heaters().get(0).control().rampsItself());
    }
}
