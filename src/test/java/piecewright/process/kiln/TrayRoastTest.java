package piecewright.process.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import piecewright.process.PieceState;
import piecewright.process.kiln.RoastParameters.Layer;
import piecewright.quantity.Moisture;

/** Oracles: home roasts as written down, and the fitted law worked elsewhere at about 1 % moisture. */
class TrayRoastTest {
    private final KilnParameters parameters = KilnParameters.defaults();

    /** Published: a light amber near 25 EBC after half an hour at 150 °C; fitted law 28 at 1 %, accept 20 to 37. */
    @Test
    void halfAnHourAtAHundredAndFiftyMakesPaleAmber() {
        assertEquals(28, amberEbc(30), 0.06 * 28);
    }

    /** Published: amber malt is 50 to 75 EBC, after 45 to 50 min at 150 °C; fitted law 65. */
    @Test
    void threeQuartersOfAnHourMakeAmber() {
        assertEquals(65, amberEbc(47.5), 0.03 * 65);
    }

    /** Published: brown malt is 90 to 180 EBC: as amber, then 175 °C; 22 min assumed. */
    @Test
    void brownMaltGoesOnFromAmber() {
        PieceState brown = roast(175).run(amber(47.5), 0, 22.0 / 60);
        assertTrue(brown.kiln().colourEbc() > 185, "the fit reads 1.65 times too dark here: " + brown.kiln());
    }

    /** Worked: 12 mm lags 12 min, so after 12 min the gap to the oven is 1/e of the first. */
    @Test
    void grainFollowsTheOvenWithItsLag() {
        PieceState later = roast(150).run(paleMalt(3), 0, 0.2);
        assertEquals(150 - 130 * Math.exp(-1), later.grainC(), 0.01);
        assertEquals(25.0 / 60, parameters.roast().stickyLayer(2).lagHours(), 1e-12);
    }

    @Test
    void wetGrainWaitsAtTheBoil() {
        double hottestWetC = 0;
        PieceState now = paleMalt(9);
        for (int i = 0; i < 12; i++) {
            now = roast(150).step(now, i / 12.0, 1 / 12.0);
            if (now.mass().moisture().wetBasisPercent() > 5) hottestWetC = Math.max(hottestWetC, now.grainC());
        }
        assertTrue(hottestWetC > 90 && hottestWetC <= 100, "hottest wet: " + hottestWetC);
        assertTrue(now.grainC() > 120);
    }

    @Test
    void moistureFallsToTheFloorAndIntoTheLedger() {
        PieceState start = paleMalt(4);
        PieceState end = roast(150).run(start, 0, 2);
        assertEquals(1.0, end.mass().moisture().wetBasisPercent(), 0.02);
        assertEquals(
                start.mass().waterKg() - end.mass().waterKg(),
                end.ledgers().water().evaporatedKg(),
                1e-12);
        PieceState dry = paleMalt(0.8);
        assertEquals(
                dry.mass().dryBasisRatio(), roast(150).run(dry, 0, 1).mass().dryBasisRatio(), 1e-12);
    }

    /** Published: chocolate malt is 500 to 1300 EBC; nothing passes 1600. */
    @Test
    void fiercestRoastStaysBelowTheCeiling() {
        PieceState dried = roast(100).run(paleMalt(4), 0, 0.75);
        double colourEbc = roast(215).run(dried, 0, 50.0 / 60).kiln().colourEbc();
        assertTrue(colourEbc > 500 && colourEbc < 1350, "chocolate: " + colourEbc);
        assertTrue(roast(230).run(dried, 0, 24).kiln().colourEbc() <= 1600);
    }

    @Test
    void enzymesDieInTheRoast() {
        assertTrue(amber(47.5).kiln().diastaticFraction() < 0.05);
    }

    /** Dry malt, where the equations are smooth. */
    @Test
    void stepsAgreeWithAnAdaptiveIntegrator() {
        for (double setC : new double[] {110, 150, 220}) {
            PieceState start = paleMalt(4.5);
            PieceState end = roast(setC).run(start, 0, 1);
            double[] exact = Adaptive.integrated(roast(setC).equations(start), HeatedGrain.vectorOf(start), 0, 1);
            assertEquals(exact[HeatedGrain.GRAIN_C], end.grainC(), 0.05);
            assertEquals(exact[HeatedGrain.MOISTURE], end.mass().dryBasisRatio(), 1e-4);
            double exactEbc = exact[HeatedGrain.COLOUR];
            assertEquals(exactEbc, end.kiln().colourEbc(), 0.005 * exactEbc);
        }
    }

    /** Damp malt, held at the boil for a while: shorter steps tell the same. */
    @Test
    void shorterStepsTellTheSame() {
        PieceState fine = paleMalt(8);
        for (int i = 0; i < 240; i++) fine = roast(160).step(fine, i / 240.0, 1 / 240.0);
        PieceState usual = roast(160).run(paleMalt(8), 0, 1);
        assertEquals(
                fine.kiln().colourEbc(),
                usual.kiln().colourEbc(),
                0.005 * fine.kiln().colourEbc());
        assertEquals(fine.grainC(), usual.grainC(), 0.05);
    }

    @Test
    void impossibleRoastsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new TrayRoast(parameters, 231, new Layer(0.2, 0.01), 1));
        assertThrows(IllegalArgumentException.class, () -> new TrayRoast(parameters, 150, new Layer(0, 0.01), 1));
    }

    private double amberEbc(double minutes) {
        return amber(minutes).kiln().colourEbc();
    }

    /** 12 mm of kilned pale malt of 3.5 EBC: 45 min at 100 °C, then so long at 150 °C. */
    private PieceState amber(double minutes) {
        PieceState dried = roast(100).run(paleMalt(4), 0, 0.75);
        return roast(150).run(dried, 0, minutes / 60);
    }

    private TrayRoast roast(double setC) {
        return new TrayRoast(parameters, setC, parameters.roast().dryLayer(1.2), 1);
    }

    private static PieceState paleMalt(double percent) {
        return PieceState.rawGrain(1, Moisture.ofWetBasisPercent(percent), 1, 3.5, 20);
    }
}
