package piecewright.desktop.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import piecewright.colour.Cure;
import piecewright.colour.RoastSolver;
import piecewright.desktop.colour.ColourField.Barred;
import piecewright.desktop.colour.ColourField.Point;
import piecewright.house.House;
import piecewright.process.kiln.KilnParameters;
import piecewright.store.HouseFile;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;

class ColourFieldTest {
    private static MaltStyle pale;
    private static ColourField field;

    @BeforeAll
    static void read() throws Exception {
        House house = HouseFile.read(Path.of("demo-data/houses/cool-garage.json"));
        pale = StyleLibrary.builtIn().style("pale");
        field = ColourField.of(pale, house);
    }

    /** Between the points that were computed the field is within a fiftieth of the kiln model itself. */
    @Test
    void theFieldAgreesWithTheKilnModelBetweenItsPoints() {
        Cure cure = new Cure(pale, KilnParameters.defaults());
        for (double hours : new double[] {1.5, 2.7, 4.4, 5.9}) {
            for (double c = field.leastC() + 1; c < field.mostC(); c += 3.3) {
                double exact = cure.at(c, hours).colourEbc();
                assertEquals(exact, field.colourEbc(new Point(hours, c)), exact / 50, hours + " h at " + c);
            }
        }
    }

    @Test
    void theCurveOfAColourGivesThatColourAllAlong() {
        Contour contour = Contour.of(field, 3);
        assertTrue(contour.points().size() > 10);
        for (Point point : contour.points()) assertEquals(3, field.colourEbc(point), 0.01);
    }

    @Test
    void theLongerTheCureTheCoolerForOneColour() {
        double before = Double.POSITIVE_INFINITY;
        for (Point point : Contour.of(field, 3).points()) {
            assertTrue(point.heatC() < before, point.toString());
            before = point.heatC();
        }
    }

    @Test
    void whatTheKitDoesNotHoldIsBarred() {
        ColourField cool = new ColourField(pale, 80, field.rows());
        assertEquals(Optional.of(Barred.KIT_TOO_COOL), cool.barred(new Point(3.5, 81)));
        var kiln = pale.kiln();
        double middleC = (kiln.cureC().lowC() + kiln.cureC().highC()) / 2;
        assertEquals(Optional.empty(), field.barred(new Point(kiln.cureHours().highHours(), middleC)));
    }

    /** On its own points the field is the roast itself; between them within a tenth of its band. */
    @Test
    void theFieldOfARoastAgreesWithTheRoastBetweenItsPoints() throws Exception {
        MaltStyle chocolate = StyleLibrary.builtIn().style("chocolate");
        ColourField roasts =
                ColourField.of(chocolate, HouseFile.read(Path.of("demo-data/houses/terrace-kitchen.json")));
        assertTrue(roasts.isRoast());
        var last = chocolate.oven().roast().orElseThrow().last();
        RoastSolver solver = new RoastSolver(chocolate, KilnParameters.defaults(), Double.POSITIVE_INFINITY);
        for (double minutes = last.shortestMinutes(); minutes <= last.longestMinutes(); minutes++) {
            double exact =
                    solver.at(Duration.ofSeconds(Math.round(60 * minutes))).colourEbc();
            double told = roasts.colourEbc(new Point(minutes / 60, last.ovenC()));
            assertEquals(1, told / exact, 0.07, minutes + " min");
        }
    }

    /** References, safety: roasting above 220 °C is never offered at home. */
    @Test
    void aRoastIsNeverHotterThanAKitchenBears() throws Exception {
        MaltStyle black = StyleLibrary.builtIn().style("black");
        ColourField roasts = ColourField.of(black, HouseFile.read(Path.of("demo-data/houses/terrace-kitchen.json")));
        for (double c = 220.5; c < roasts.mostC(); c++) {
            assertEquals(Optional.of(Barred.TOO_HOT), roasts.barred(new Point(roasts.mostHours(), c)));
        }
        assertTrue(roasts.mostC() > 220, "the map shows the region it crosses out");
    }
}
