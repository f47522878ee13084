package piecewright.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.colour.ColourReach.Change;
import piecewright.colour.Cure.Cured;
import piecewright.process.kiln.ColourKinetics;
import piecewright.process.kiln.ColourParameters;
import piecewright.process.kiln.KilnParameters;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;

class CureSolverTest {
    private static Cure cure(MaltStyle style) {
        return new Cure(style, KilnParameters.defaults());
    }

    private static Cure cure(String key) throws StoreException {
        return cure(StyleLibrary.builtIn().style(key));
    }

    /** Property: solving for a colour and kilning by the answer gives the colour, over every style's range. */
    @Test
    void inverseAndForwardUndoEachOther() throws StoreException {
        for (MaltStyle style : StyleLibrary.builtIn().all()) {
            Cure cure = cure(style);
            var kiln = style.kiln();
            double low =
                    cure.at(kiln.cureC().lowC(), kiln.cureHours().lowHours()).colourEbc();
            double high =
                    cure.at(kiln.cureC().highC(), kiln.cureHours().highHours()).colourEbc();
            for (double share = 0.02; share < 1; share += 0.16) {
                double target = low + share * (high - low);
                ColourReach reach = new CureSolver(cure, Double.POSITIVE_INFINITY).reach(target);
                Cured cured = assertInstanceOf(ColourReach.Reached.class, reach, style.key() + " " + target)
                        .cured();
                double again = cure.at(cured.cureC(), cured.cureHours()).colourEbc();
                assertEquals(target, again, 0.01 * target, style.key());
                assertTrue(kiln.cureC().contains(cured.cureC()));
            }
        }
    }

    @Test
    void whatIsOutOfReachSaysWhatWouldHaveToChange() throws StoreException {
        double anyHeat = Double.POSITIVE_INFINITY;
        ColourReach dark = new CureSolver(cure("pale"), anyHeat).reach(25);
        assertEquals(Change.A_DARKER_STYLE, ((ColourReach.OutOfReach) dark).change());
        ColourReach pale = new CureSolver(cure("pale-ale"), anyHeat).reach(1);
        assertEquals(Change.A_PALER_STYLE, ((ColourReach.OutOfReach) pale).change());
        double reached = cure("pale-ale").at(100, 4).colourEbc() - 0.1;
        ColourReach cool = new CureSolver(cure("pale-ale"), 91).reach(reached);
        assertEquals(Change.A_HOTTER_HEATER, ((ColourReach.OutOfReach) cool).change());
        assertInstanceOf(ColourReach.NoHeater.class, new CureSolver(cure("pale-ale"), 70).reach(5));
    }

    /** Fitted model, residual factor 1.2: trade notes put pale lager malt near 3, memory pale ale malt near 5.7 EBC. */
    @Test
    void middlesOfTheCuresAreTheStyles() throws StoreException {
        assertEquals(3.0, cure("pale").at(82.5, 3.5).colourEbc(), 0.7);
        assertEquals(5.7, cure("pale-ale").at(95, 3.5).colourEbc(), 1.7);
    }

    /** Property: hotter and longer is darker and leaves less diastatic power. */
    @Test
    void hotterAndLongerIsDarker() throws StoreException {
        Cure cure = cure("pale");
        Cured mild = cure.at(80, 3);
        Cured longer = cure.at(80, 4);
        Cured hotter = cure.at(85, 3);
        assertTrue(longer.colourEbc() > mild.colourEbc() && hotter.colourEbc() > mild.colourEbc());
        assertTrue(longer.diastaticFraction() < mild.diastaticFraction()
                && hotter.diastaticFraction() < mild.diastaticFraction());
    }

    @Test
    void theMapForbidsWhatTheHouseOrTheStyleDoes() throws StoreException {
        CureMap map = CureMap.of(cure("pale"), 84);
        assertTrue(map.cells().stream().anyMatch(cell -> cell.forbidden().isEmpty()));
        for (CureMap.Cell cell : map.cells()) {
            boolean cool = cell.forbidden().contains(CureMap.Forbidden.HEATER_TOO_COOL);
            assertEquals(cell.cured().cureC() > 84, cool);
        }
    }

    /** Fitted look-up table of cures at substrate 1 after drying, hours 2 to 6; isothermal at 4.5 to 5 % moisture. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            80, 2.5, 2.6, 2.8, 2.9, 3.1
            85, 2.7, 3.0, 3.3, 3.6, 3.9
            90, 3.2, 3.8, 4.3, 4.8, 5.4
            95, 4.1, 5.1, 6.1, 7.0, 8.0
            """)
    void coloursOfCuresAreThoseOfTheTable(double cureC, double h2, double h3, double h4, double h5, double h6) {
        ColourKinetics kinetics = new ColourKinetics(ColourParameters.defaults());
        double[] table = {h2, h3, h4, h5, h6};
        for (int i = 0; i < 5; i++) {
            double ebc = kinetics.isothermalEbc(2.1, cureC, 0.042, 1, i + 2);
            assertEquals(table[i], ebc, 0.08 * table[i], cureC + " °C, " + (i + 2) + " h");
        }
    }

    /** Morey's power law from memory: ten units make 7.24 SRM. */
    @Test
    void beerColourIsMoreysLaw() {
        double pound = 0.45359237;
        double gallon = 3.785411784;
        BeerColour.Brew brew = new BeerColour.Brew(gallon, pound, 1, 0);
        double tenLovibondEbc = piecewright.quantity.Units.ebcOfSrm(1.3546 * 10 - 0.76);
        assertEquals(1.4922 * Math.pow(10, 0.6859) * 25 / 12.7, BeerColour.beerEbc(brew, tenLovibondEbc), 1e-6);
        BeerColour.Brew mixed = new BeerColour.Brew(20, 4.5, 0.4, 4);
        for (double ebc : new double[] {6, 25, 60}) {
            assertEquals(ebc, BeerColour.maltEbc(mixed, BeerColour.beerEbc(mixed, ebc)), 1e-6);
        }
        assertTrue(BeerColour.maltEbc(mixed, 2) < 0, "the other malts alone are darker");
        assertTrue(BeerColour.holdsFor(90) && !BeerColour.holdsFor(110));
    }
}
