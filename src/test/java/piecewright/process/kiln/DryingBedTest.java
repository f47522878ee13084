package piecewright.process.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.process.Psychrometrics;
import piecewright.quantity.Moisture;

/** Oracles marked "worked" come from the same law worked elsewhere, integrated in another way. */
class DryingBedTest {
    private static final double GREEN_KG = 3.76;

    private final DryingBed bed = new DryingBed(DryingParameters.defaults());

    /** Worked: rates per hour; O'Callaghan's law from memory, first at the barley's own rate, then at 0.7 of it. */
    @Test
    void kernelsGiveUpWaterAsTheRateLawSays() {
        DryingBed barley = new DryingBed(DryingParameters.defaults().withKernelRatio(1));
        assertEquals(0.565, barley.kernelPerHour(50), 0.005 * 0.565);
        assertEquals(0.319, bed.kernelPerHour(45), 0.005 * 0.319);
        assertEquals(0.395, bed.kernelPerHour(50), 0.005 * 0.395);
        assertEquals(0.726, bed.kernelPerHour(65), 0.005 * 0.726);
        assertEquals(1.266, bed.kernelPerHour(80), 0.005 * 1.266);
    }

    /** Worked: 3.76 kg of dry matter, 10 m³/h of 20 °C and 50 % warmed to 47.5 °C. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            0.6667, 0.1187, 0.830, 0.1186
            0.2,    0.1119, 0.207, 0.0943
            """)
    void airAndKernelsShareTheLimit(double ratio, double airKg, double kernelKg, double dryingKg) {
        AirOn air = AirOn.of(47.5, 10, 20, 0.5);
        assertEquals(11.90, air.dryAirKgPerHour(), 0.01);
        double limitC = bed.in(air).exhaustLimitC(ratio);
        double limitRatio = Psychrometrics.humidityRatio(
                limitC,
                Math.min(0.995, EquilibriumMoisture.humidityFraction(limitC, ratio)),
                Psychrometrics.STANDARD_PRESSURE_PA);
        assertEquals(airKg, air.dryAirKgPerHour() * (limitRatio - air.humidityRatio()), 0.02 * airKg);
        double givenKg = bed.kernelPerHour(47.5) * GREEN_KG * (ratio - bed.driestRatio(air));
        assertEquals(kernelKg, givenKg, 0.02 * kernelKg);
        assertEquals(dryingKg, GREEN_KG * bed.dryingPerHour(ratio, GREEN_KG, air), 0.02 * dryingKg);
    }

    /** Worked: the bed's line of constant enthalpy meets saturation at 23.2 °C (the full wet bulb is 23.5). */
    @Test
    void exhaustOfWetGrainLeavesNearTheWetBulb() {
        assertEquals(23.2, bed.in(AirOn.of(50, 100, 20, 0.5)).exhaustLimitC(0.8), 0.1);
    }

    /** Worked: 4.5 kg of barley grown, from 40 to 23 %. Common practice, no source: 12 h in a box with open vents. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            8,   14.7
            9.8, 12.06
            12,  10.0
            """)
    void aVentedBoxTakesHalfADayToTheBreak(double airFlowM3PerHour, double expectedHours) {
        AirOn air = AirOn.of(47.5, airFlowM3PerHour, 20, 0.5);
        assertEquals(expectedHours, hours(40, 23, GREEN_KG, air), 0.03 * expectedHours);
    }

    /** Worked: hours of each stage per kg of barley as started (12 %, 5 % of dry matter lost), room 20 °C and 50 %. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            1.5, 24.7, 21.3, 18.7, 8.0, 6.9, 2.2, 1.4
            2.5, 15.1, 13.0, 11.3, 5.5, 4.6, 1.5, 1.0
            4,   10.0, 8.5,  7.4,  4.2, 3.5, 1.2, 0.8
            6,   7.4,  6.2,  5.3,  3.6, 2.9, 1.1, 0.7
            10,  5.6,  4.6,  3.9,  3.1, 2.5, 1.0, 0.6
            20,  4.4,  3.6,  2.9,  2.8, 2.2, 0.9, 0.5
            """)
    void stageHoursFollowTheFlowPerKg(
            double flow,
            double to23at45,
            double to23at50,
            double to23at55,
            double to12at50,
            double to12at55,
            double to8at65,
            double to5at80) {
        assertStage(to23at45, 44, 23, 45, flow);
        assertStage(to23at50, 44, 23, 50, flow);
        assertStage(to23at55, 44, 23, 55, flow);
        assertStage(to12at50, 23, 12, 50, flow);
        assertStage(to12at55, 23, 12, 55, flow);
        assertStage(to8at65, 12, 8, 65, flow);
        assertStage(to5at80, 8, 5, 80, flow);
    }

    /** Worked: the same stage at 50 °C with 2.5 m³/h per kg, other rooms. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            5,  0.85, 11.6
            10, 0.80, 12.2
            20, 0.50, 13.0
            25, 0.60, 14.7
            30, 0.70, 17.7
            """)
    void humidRoomsDrySlowly(double roomC, double humidityFraction, double expectedHours) {
        assertEquals(expectedHours, hours(44, 23, 0.836, AirOn.of(50, 2.5, roomC, humidityFraction)), 0.15);
    }

    /**
     * Common practice, no source: trade kilns reach 12 % in 8.5 to 12 h at 4000 to 5000 m³/h per tonne, read here as a
     * tonne of dry matter (a tonne of malt has 955 kg: 4 % fewer hours).
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            55, 4000
            55, 4500
            55, 5000
            60, 4000
            60, 4500
            60, 5000
            """)
    void tradeKilnsBreakWhenTheyAreSaidTo(double airOnC, double flowPerTonne) {
        double hours = hours(44, 12, 1000, AirOn.of(airOnC, flowPerTonne, 10, 0.8));
        assertTrue(hours > 8.5 && hours < 12, "hours: " + hours);
    }

    /** Worked; common practice, no source, says "malt at 40 and creeping up". */
    @Test
    void grainStaysFarBelowHotAirWhileItDries() {
        AirOn air = AirOn.of(65, 8.6, 20, 0.5);
        assertEquals(34.8, bed.step(0.2987, GREEN_KG, air).meanGrainC(), 1);
        assertEquals(39.3, bed.step(0.20, GREEN_KG, air).meanGrainC(), 1);
        assertEquals(47, bed.step(0.12, GREEN_KG, air).meanGrainC(), 1);
    }

    @Test
    void onlyAirPerKgMatters() {
        BedStep small = bed.step(0.4, 1, AirOn.of(50, 2.5, 20, 0.5));
        BedStep large = bed.step(0.4, 50, AirOn.of(50, 125, 20, 0.5));
        assertEquals(small.dryingPerHour(), large.dryingPerHour(), 1e-9);
        assertEquals(small.meanGrainC(), large.meanGrainC(), 1e-6);
        assertEquals(hours(44, 23, 1, AirOn.of(50, 2.5, 20, 0.5)), hours(44, 23, 50, AirOn.of(50, 125, 20, 0.5)), 1e-6);
    }

    /** A thin layer in plentiful air: ln((X0 - Xe) / (Xf - Xe)) / k. */
    @Test
    void endlessAirLeavesTheKernelAlone() {
        AirOn air = AirOn.of(50, 1e7, 20, 0.5);
        double driest = bed.driestRatio(air);
        double from = Moisture.ofWetBasisPercent(44).dryBasisRatio();
        double to = Moisture.ofWetBasisPercent(12).dryBasisRatio();
        double expectedHours = Math.log((from - driest) / (to - driest)) / bed.kernelPerHour(50);
        assertEquals(expectedHours, hours(44, 12, 1, air), 1e-4 * expectedHours);
        assertEquals(50, bed.step(0.4, 1, air).meanGrainC(), 0.01);
    }

    /** Kernels that keep nothing back: only the air's capacity counts, and above 27 % that is a constant. */
    @Test
    void willingKernelsLeaveTheAirAlone() {
        DryingBed willing = new DryingBed(DryingParameters.defaults().withKernelRatio(1e6));
        AirOn air = AirOn.of(50, 2.5, 20, 0.5);
        double limitC = willing.in(air).exhaustLimitC(0.7);
        double limitRatio = Psychrometrics.humidityRatio(limitC, 0.995, Psychrometrics.STANDARD_PRESSURE_PA);
        double airKgPerHour = air.dryAirKgPerHour() * (limitRatio - air.humidityRatio());
        assertEquals(airKgPerHour, willing.dryingPerHour(0.7, 1, air), 1e-6 * airKgPerHour);
        double expectedHours = (0.7857142857 - 0.5) / airKgPerHour;
        assertEquals(
                expectedHours, willing.hoursToDry(0.7857142857, 0.5, 1, air).orElseThrow(), 1e-3);
    }

    @Test
    void dryingBelowEquilibriumIsNeverNotANumber() {
        AirOn air = AirOn.of(45, 10, 20, 0.5);
        double driest = bed.driestRatio(air);
        assertEquals(0.049, driest, 0.001, "worked elsewhere: 4.9 % at 45 °C");
        assertEquals(OptionalDouble.empty(), bed.hoursToDry(0.3, driest, GREEN_KG, air));
        assertTrue(bed.hoursToDry(0.3, driest + 1e-4, GREEN_KG, air).isPresent());
        assertEquals(0, bed.dryingPerHour(driest - 0.01, GREEN_KG, air));
        assertEquals(new BedStep(0, 45, 45, air.humidityRatio()), bed.step(driest - 0.01, GREEN_KG, air));
        assertThrows(IllegalArgumentException.class, () -> bed.hoursToDry(0.2, 0.3, GREEN_KG, air));
    }

    @Test
    void moreAirWarmerAirAndDrierRoomsDryFaster() {
        double hours = hours(44, 23, 1, AirOn.of(50, 2.5, 20, 0.5));
        assertTrue(hours(44, 23, 1, AirOn.of(50, 2.6, 20, 0.5)) < hours);
        assertTrue(hours(44, 23, 1, AirOn.of(51, 2.5, 20, 0.5)) < hours);
        assertTrue(hours(44, 23, 1, AirOn.of(50, 2.5, 20, 0.55)) > hours);
    }

    @Test
    void aWetterBedNeverDriesSlowerAndIsNeverWarmer() {
        for (double airOnC = 20; airOnC <= 110; airOnC += 10) {
            AirOn air = AirOn.of(airOnC, 2.5, 15, 0.6);
            BedStep before = bed.step(0.001, 1, air);
            for (double ratio = 0.005; ratio < 0.9; ratio += 0.005) {
                BedStep now = bed.step(ratio, 1, air);
                assertTrue(now.dryingPerHour() >= before.dryingPerHour() - 1e-9, airOnC + " °C, " + ratio);
                assertTrue(now.meanGrainC() <= before.meanGrainC() + 1e-6, airOnC + " °C, " + ratio);
                assertTrue(now.topC() <= now.meanGrainC() + 1e-9 && now.meanGrainC() <= airOnC + 1e-9);
                before = now;
            }
        }
    }

    /** The vapour the bed gives off is what the exhaust carries away. */
    @Test
    void exhaustCarriesTheWaterAway() {
        AirOn air = AirOn.of(55, 12, 18, 0.6);
        BedStep step = bed.step(0.35, GREEN_KG, air);
        double carriedKg = air.dryAirKgPerHour() * (step.exhaustHumidityRatio() - air.humidityRatio());
        assertEquals(GREEN_KG * step.dryingPerHour(), carriedKg, 1e-9);
        assertEquals(step.dryingPerHour(), bed.dryingPerHour(0.35, GREEN_KG, air));
    }

    /** Table figures are rounded to 0.1 h; the law may differ by 3 % more. */
    private void assertStage(double expectedHours, double from, double to, double airOnC, double flow) {
        double hours = hours(from, to, 0.836, AirOn.of(airOnC, flow, 20, 0.5));
        assertEquals(expectedHours, hours, 0.06 + 0.03 * expectedHours, from + " to " + to + " at " + airOnC);
    }

    private double hours(double fromPercent, double toPercent, double dryMatterKg, AirOn air) {
        double from = Moisture.ofWetBasisPercent(fromPercent).dryBasisRatio();
        double to = Moisture.ofWetBasisPercent(toPercent).dryBasisRatio();
        return bed.hoursToDry(from, to, dryMatterKg, air).orElseThrow();
    }
}
