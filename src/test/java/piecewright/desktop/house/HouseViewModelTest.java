package piecewright.desktop.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.app.Workspace.Kept;
import piecewright.app.Workspace.Origin;
import piecewright.desktop.house.HouseField.Kind;
import piecewright.desktop.house.HouseField.Need;
import piecewright.desktop.plan.WishViewModel.Threads;
import piecewright.desktop.shell.UndoHistory;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.NightActs;
import piecewright.store.HouseFile;
import piecewright.store.HouseText.Thing;
import piecewright.text.ColourUnit;
import piecewright.text.DisplayUnits;
import piecewright.text.UnitSystem;

/** A house that is typed and painted, without a toolkit. */
class HouseViewModelTest {
    private static final HouseField VOLUME = new HouseField("volumeL", Kind.VOLUME, Need.NEEDED);

    @TempDir
    Path folder;

    private Path file;
    private HouseViewModel model;

    private final UndoHistory history = new UndoHistory();

    @BeforeEach
    void aHouse() throws Exception {
        Path demo = Path.of("demo-data/houses");
        Files.copy(demo.resolve("cool-garage-2027-03.csv"), folder.resolve("cool-garage-2027-03.csv"));
        file = folder.resolve("house.json");
        Files.copy(demo.resolve("cool-garage.json"), file);
        model = model(DisplayUnits.metric());
    }

    private HouseViewModel model(DisplayUnits units) throws Exception {
        Kept<House> kept = new Kept<>(file, HouseFile.read(file), Origin.OWN);
        return new HouseViewModel(kept, new Threads(Runnable::run, Runnable::run, Runnable::run), units, history);
    }

    @Test
    void aTypedFigureIsKeptAtOnceAndTakenBack() throws Exception {
        assertEquals("", model.type("/kit/vessels/0/volumeL", VOLUME, "32 L"));
        assertEquals(32, HouseFile.read(file).kit().vessels().get(0).volumeL());
        history.undo();
        assertEquals(30, HouseFile.read(file).kit().vessels().get(0).volumeL());
        history.redo();
        assertEquals(32, HouseFile.read(file).kit().vessels().get(0).volumeL());
    }

    /** 1 US gallon is 3.785411784 L. */
    @Test
    void figuresAreTypedInEitherSystem() throws Exception {
        HouseViewModel american = model(new DisplayUnits(
                UnitSystem.US, ColourUnit.SRM, DisplayUnits.metric().locale()));
        assertEquals("", american.type("/kit/vessels/0/volumeL", VOLUME, "10 gal"));
        assertEquals(37.854, HouseFile.read(file).kit().vessels().get(0).volumeL(), 1e-3);
        assertTrue(american.shownValue("/kit/vessels/0/volumeL", VOLUME).contains("gal"));
    }

    @Test
    void whatCannotBeReadIsToldAndChangesNothing() throws Exception {
        String before = Files.readString(file);
        assertFalse(model.type("/kit/vessels/0/volumeL", VOLUME, "a lot").isEmpty());
        assertTrue(model.type("/kit/vessels/0/volumeL", VOLUME, "0 L").contains("volumeL"));
        assertEquals(before, Files.readString(file));
    }

    @Test
    void airIsTypedAsOneTemperatureAsTwoOrAsAFile() throws Exception {
        assertEquals("", model.typeAir(1, "12 C"));
        assertEquals(
                new AirTemperature.Constant(12),
                HouseFile.read(file).places().get(1).air());
        assertEquals("", model.typeAir(1, "50 F to 59 F"));
        assertEquals(
                new AirTemperature.Daily(10, 15),
                HouseFile.read(file).places().get(1).air());
        assertEquals("", model.typeAir(1, "cool-garage-2027-03.csv"));
        assertFalse(model.typeAir(1, "other.csv").isEmpty());
    }

    @Test
    void aDayOfOtherHoursIsAddedAndAWrongOneIsRefused() throws Exception {
        LocalDate day = LocalDate.of(2031, 5, 1);
        assertEquals("", model.except(day, day, "08:00-12:00, 18:00-24:00"));
        assertEquals(2, HouseFile.read(file).people().get(0).hoursOn(day).size());
        assertFalse(model.except(day, day, "all day").isEmpty());
        assertEquals(2, HouseFile.read(file).people().get(0).hoursOn(day).size());
    }

    @Test
    void somebodyComesIsNamedAndGoesAndTheLastOneStays() throws Exception {
        assertEquals("", model.add(Thing.PERSON, "somebody"));
        assertEquals("somebody", model.shownProperty().get().person(), "whoever came is looked at");
        HouseField name = new HouseField("name", Kind.NAME, Need.NEEDED);
        assertEquals("", model.type("/people/1/name", name, "the night owl"));
        assertEquals("the night owl", model.shownProperty().get().person());
        model.paint(model.shownProperty().get().week().taken(DayOfWeek.MONDAY, 0, 96));
        assertEquals(
                List.of(), HouseFile.read(file).people().get(1).hoursOn(LocalDate.of(2031, 5, 5)), "a Monday of hers");
        assertEquals("", model.remove("/people/0"));
        assertEquals(1, HouseFile.read(file).people().size());
        assertTrue(model.remove("/people/0").contains("at least one person"));
        assertEquals(1, HouseFile.read(file).people().size());
    }

    @Test
    void nightsAreTypedAndWrongOnesRefused() throws Exception {
        assertEquals("", model.typeNight(HouseViewModel.Night.MOST, "2"));
        assertEquals("", model.typeNight(HouseViewModel.Night.FROM, "23:30"));
        assertEquals("", model.typeNight(HouseViewModel.Night.UNTIL, "5.45"));
        NightActs nights = HouseFile.read(file).nights();
        assertEquals(new NightActs(2, LocalTime.of(23, 30), LocalTime.of(5, 45)), nights);
        assertFalse(model.typeNight(HouseViewModel.Night.MOST, "often").isEmpty());
        assertFalse(model.typeNight(HouseViewModel.Night.MOST, "21").isEmpty());
        assertFalse(model.typeNight(HouseViewModel.Night.FROM, "25:00").isEmpty());
        assertEquals(nights, HouseFile.read(file).nights());
    }

    @Test
    void aHolidayOfSeveralDaysIsOneStep() throws Exception {
        LocalDate first = LocalDate.of(2031, 5, 5);
        assertEquals("", model.except(first, first.plusDays(6), ""));
        for (int day = 0; day < 7; day++) {
            assertEquals(List.of(), HouseFile.read(file).people().get(0).hoursOn(first.plusDays(day)));
        }
        history.undo();
        assertFalse(HouseFile.read(file).people().get(0).hoursOn(first).isEmpty());
        assertFalse(model.except(first, first.minusDays(1), "").isEmpty());
    }

    @Test
    void whatAnotherProgramWroteIsShownAndNotWrittenOver() throws Exception {
        String other = Files.readString(file).replace("\"volumeL\": 30", "\"volumeL\": 35");
        Files.writeString(file, other);
        model.reread();
        assertEquals(
                35, model.shownProperty().get().house().kit().vessels().get(0).volumeL());
        assertEquals(other, Files.readString(file));
        assertEquals("", model.add(Thing.VESSEL, "tub"));
        assertEquals(35, HouseFile.read(file).kit().vessels().get(0).volumeL());
    }
}
