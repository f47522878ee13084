package piecewright.desktop.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.app.Workspace.Kept;
import piecewright.app.Workspace.Origin;
import piecewright.desktop.house.HouseField.Kind;
import piecewright.desktop.house.HouseField.Need;
import piecewright.desktop.plan.WishViewModel.Threads;
import piecewright.house.AirTemperature;
import piecewright.house.House;
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
        return new HouseViewModel(kept, new Threads(Runnable::run, Runnable::run, Runnable::run), units);
    }

    @Test
    void aTypedFigureIsKeptAtOnceAndTakenBack() throws Exception {
        assertEquals("", model.type("/kit/vessels/0/volumeL", VOLUME, "32 L"));
        assertEquals(32, HouseFile.read(file).kit().vessels().get(0).volumeL());
        model.undo();
        assertEquals(30, HouseFile.read(file).kit().vessels().get(0).volumeL());
        model.redo();
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
        assertEquals("", model.except(day, "08:00-12:00, 18:00-24:00"));
        assertEquals(2, HouseFile.read(file).people().get(0).hoursOn(day).size());
        assertFalse(model.except(day, "all day").isEmpty());
        assertEquals(2, HouseFile.read(file).people().get(0).hoursOn(day).size());
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
