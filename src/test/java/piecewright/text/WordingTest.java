package piecewright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static piecewright.text.PlanSamples.OSLO;
import static piecewright.text.PlanSamples.START;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.assess.LotJudgement.MouldRisk;
import piecewright.assess.Reason;
import piecewright.grain.GrainKind;
import piecewright.grain.LotObservations.Sign;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Arranging.Choice;
import piecewright.plan.Caution;
import piecewright.plan.CheckKind;
import piecewright.plan.Finding;
import piecewright.plan.Heaping;
import piecewright.plan.Heaping.Worth;
import piecewright.plan.Obstacle;
import piecewright.plan.PhaseKind;
import piecewright.plan.Setting;
import piecewright.process.couch.Ignition.Outlook;
import piecewright.quantity.Moisture;

class WordingTest {
    private static final Finding.Chosen.Way IN_THE_SHED = new Finding.Chosen.Way(Setting.at("shed"), 300);
    private static final Heaping.Expected HEAP = new Heaping.Expected(12, 2.5, 13, Worth.HELPS);
    private static final List<Finding> FINDINGS = List.of(
            new Finding.AirRepeats("house", "garage", START),
            new Finding.Germination("lot", true, 0.91),
            new Finding.Germination("lot", false, 0),
            new Finding.WaterSensitive("lot", 0.39),
            new Finding.MoistureGuessed("lot", new Moisture(0.12), 0.01),
            new Finding.TreatmentUnknown("lot"),
            new Finding.WarmFloor("floor.turn-2", 22.4, 20),
            new Finding.PastFreeWindow("floor.turn-2", Duration.ofMinutes(150)),
            new Finding.OffStyle("plan", Finding.Quantity.COLOUR_EBC, 5.1, 2.5, 3.5),
            new Finding.OffStyle("plan", Finding.Quantity.STEEP_OUT_MOISTURE, 0.41, 0.42, 0.45),
            new Finding.OffStyle("plan", Finding.Quantity.ACROSPIRE, 0.95, 0.6, 0.9),
            new Finding.OffStyle("plan", Finding.Quantity.END_MOISTURE, 0.06, 0, 0.05),
            new Finding.OffStyle("plan", Finding.Quantity.PACKING_MOISTURE, 0.46, 0.38, 0.42),
            new Finding.OffStyle("plan", Finding.Quantity.COUCH_INDEX_HOURS, 4.2, 12, 40),
            new Finding.OffStyle("kiln.off", Finding.Quantity.CURE_HOURS, 1.5, 3, 5),
            new Finding.ReadyLate("plan", Duration.ofHours(30)),
            new Finding.NotRoasted("finish.deroot"),
            new Finding.RampsItself("kiln.raise-1", "cabinet", 60, START),
            new Finding.AttendedHeat("kiln.cure", START, START.plusSeconds(14_400), 82.5),
            new Finding.LotLearned("lot", 1.18, 0.92),
            new Finding.HeaterLearned("house", "box kiln", 12.3, 5),
            new Finding.HeaterLearned("house", "box kiln", 12.3, -5),
            new Finding.HeaterLearned("house", "box kiln", 12.3, 0.2),
            new Finding.CouchForecast("couch.pack", START, START.plusSeconds(7200), 51.2, 10.6),
            new Finding.CouchForecast("couch.pack", Instant.MAX, START.plusSeconds(7200), 43.2, 4.6),
            new Finding.CouchHeats("couch.pack", Outlook.WILL_HEAT, 2.1, 17),
            new Finding.CouchHeats("couch.pack", Outlook.MARGINAL, 1.2, 17),
            new Finding.CouchHeats("couch.pack", Outlook.WILL_NOT, 0.9, 17),
            new Finding.CornsAlive("couch.break", 0.6),
            new Finding.CornsAlive("couch.break", 0.01),
            new Finding.LongSoak("steep-1.drain", Duration.ofHours(13), 10, 15),
            new Finding.OverWet("steep-3.drain", new Moisture(0.478)),
            new Finding.NoWetCouch("floor.spread", Worth.BED_IS_WARM, HEAP, 22),
            new Finding.NoWetCouch("floor.spread", Worth.TOO_LITTLE_GRAIN, HEAP, 22),
            new Finding.NoWetCouch("floor.spread", Worth.PLACE_IS_COLD, HEAP, 22),
            new Finding.NoWetCouch("floor.spread", Worth.TOO_WARM, HEAP, 22),
            new Finding.NoWetCouch("floor.spread", Worth.HELPS, HEAP, 22),
            new Finding.OpenFlame("kiln.load", "gas drum"),
            new Finding.WaterTempered("steep-1.soak", 17, 12),
            new Finding.WaterTempered("steep-1.soak", 5, 12),
            new Finding.Chosen("floor.spread", Choice.PLACE, IN_THE_SHED, Optional.empty()),
            new Finding.CouchMaySour("couch.pack", Duration.ofHours(41)),
            new Finding.MouldLikely("floor.spread", MouldRisk.HIGH, 0.12),
            new Finding.CouchMayMould("couch.pack", MouldRisk.RAISED, 0.08),
            new Finding.LotDoubt("lot", new Reason.Spoilt(Sign.MUSTY)),
            new Finding.LotDoubt("lot", new Reason.DishesDisagree(12, 7)),
            new Finding.LotDoubt("lot", new Reason.Ergot(0.1, 0.2, LocalDate.of(2025, 7, 1))),
            new Finding.LotDoubt("lot", new Reason.Slow(5.8)),
            new Finding.LotDoubt("lot", new Reason.Broken(0.07)),
            new Finding.LotDoubt("lot", new Reason.Damp(0.15)),
            new Finding.LotDoubt("lot", new Reason.PerhapsAsleep(LocalDate.of(2031, 8, 1))),
            new Finding.NoRoomToCheck("plan", CheckKind.LAY_OUT, "good barley"),
            new Finding.OvenDoubt("oven.roast", 8, 40, 110),
            new Finding.BedDepth("floor", 7.5, Duration.ofHours(11)),
            new Finding.WetCouchForecast("wetcouch.heap", 16.5, 4.1, 22));

    private static final List<Obstacle> OBSTACLES = List.of(
            new Obstacle.NobodyThere("steep-1.drain", START, START.plusSeconds(3600)),
            new Obstacle.TooSoon(START, Duration.ofHours(76)),
            new Obstacle.NothingFits("kiln.load", START),
            new Obstacle.TreatedSeed("seed sack"),
            new Obstacle.TooFewGrow("old sack", 0.72, 0.85),
            new Obstacle.GrainNotForStyle("pale", GrainKind.WHEAT),
            new Obstacle.VesselTooSmall(31, 25),
            new Obstacle.BedTooDeep(18, 10, 0.3),
            new Obstacle.ColourOutOfReach("Pale malt", 9, 3.2, List.of("Pale ale malt")),
            new Obstacle.NoHeater(82, 70),
            new Obstacle.HeaterTooSmall(0.5, 0.3),
            new Obstacle.NeverDry(45, 0.13),
            new Obstacle.NoBox(),
            new Obstacle.BoxTooSmall(21, 10),
            new Obstacle.CouchTooSmall(2.1, 14, new Obstacle.CouchTooSmall.Remedies(4.4, 21.5, 0.424, 0.21)),
            new Obstacle.CouchTooSmall(
                    0.6, 14, new Obstacle.CouchTooSmall.Remedies(4.4, Double.NaN, 0.424, Double.NaN)),
            new Obstacle.NoOven(150, 120),
            new Obstacle.RoastTooHot("Black malt", 230, 220),
            new Obstacle.OvenUnsure(205, 20, 220),
            new Obstacle.StewTooDeep(7, 5, 0.24),
            new Obstacle.TooManyLoads(6, 4, 1.3),
            new Obstacle.BlockTooLong("oven.roast-1", Duration.ofMinutes(135), Duration.ofMinutes(90)),
            new Obstacle.HeldByOthers(List.of("Pale malt – a lot")),
            new Obstacle.LongAfterPlan(START),
            new Obstacle.BedTooWarm("boiler room", 36.2, 20, START),
            new Obstacle.NotAllTried(12),
            new Obstacle.WouldFreeze("icy barn", -3.5, START));

    private final Wording wording = new Wording(DisplayUnits.metric(), OSLO);

    @Test
    void everyFindingAndObstacleHasASentence() {
        assertEquals(
                namesOf(Finding.class),
                FINDINGS.stream().map(f -> f.getClass().getSimpleName()).collect(Collectors.toSet()));
        assertEquals(
                namesOf(Obstacle.class),
                OBSTACLES.stream().map(o -> o.getClass().getSimpleName()).collect(Collectors.toSet()));
        for (String sentence : allSentences(wording)) {
            assertTrue(sentence.length() > 25 && sentence.endsWith("."), sentence);
            assertFalse(sentence.contains("{") || sentence.contains("null") || sentence.contains("\n"), sentence);
        }
    }

    private static Set<String> namesOf(Class<?> sealed) {
        return Arrays.stream(sealed.getPermittedSubclasses())
                .map(Class::getSimpleName)
                .collect(Collectors.toSet());
    }

    private static List<String> allSentences(Wording wording) {
        List<String> all = new ArrayList<>();
        FINDINGS.forEach(finding -> all.add(wording.finding(finding)));
        OBSTACLES.forEach(obstacle -> all.add(wording.obstacle(obstacle)));
        Stream.of(Caution.values()).forEach(caution -> all.add(wording.caution(caution)));
        for (ActKind kind : ActKind.values()) {
            Act act = PlanSamples.act(
                    kind,
                    kind.key(),
                    Setting.at("garage")
                            .withSetC(15)
                            .withWaterL(8)
                            .withDepthCm(5)
                            .withLimitC(53)
                            .withGateFraction(0.12));
            all.addAll(List.of(wording.whatToDo(act), wording.lookFor(act), wording.why(act)));
        }
        all.add(wording.expectation(PlanSamples.raise().expect()));
        return all;
    }

    @Test
    void saysWhatByHowMuchAndWhatWouldHelp() {
        assertEquals(
                "Nobody is there for “Drain 1” between Fri 21 Mar 18:00 and Fri 21 Mar 19:00, and it cannot wait longer."
                        + " Hours of somebody in that time, one night step, a colder place or another start day would help.",
                wording.obstacle(OBSTACLES.get(0)));
        assertEquals(
                "The swollen grain with its water needs 31 L; the largest vessel holds 25 L."
                        + " Use a larger vessel or make a smaller batch.",
                wording.obstacle(OBSTACLES.get(6)));
        assertEquals(
                "The colour is expected at 2.6 SRM; this style has 1.3 SRM to 1.8 SRM. Cure or roast for longer or shorter, or accept it.",
                new Wording(DisplayUnits.us(), OSLO).finding(FINDINGS.get(8)));
    }

    /** Weight at the gate: 4.5 kg at 13 % is 3.915 kg dry, 4.449 kg at 12 %; worked by hand. */
    @Test
    void theGateIsAlsoAWeight() {
        assertEquals(
                "Weigh first. Raise the heat under the bed only when the grain is as dry as the gate asks; if it is not,"
                        + " wait and weigh again. Where: box kiln. Set the air under the bed to 65 °C."
                        + " Go on only at 12 % moisture or less, which is about 4.449 kg on the scale for the whole batch.",
                wording.whatToDo(PlanSamples.raise()));
    }

    /** Couch page: in the middle the pile reads about 1 °C over its mean, near the bottom 1 °C under. */
    @Test
    void aLookAtTheCouchSaysWhatTheThermometerReadsWhereItSticks() {
        Act check = PlanSamples.act(
                ActKind.CHECK, "couch.check-2", Setting.at("cooler").withLimitC(53));
        double meanC = check.expect().grainC();
        String words = wording.whatToDo(check);
        assertTrue(words.contains("Expect " + degrees(meanC + 1) + " on a thermometer in the middle"), words);
        assertTrue(words.contains(degrees(meanC - 1) + " near the bottom"), words);
        assertTrue(words.contains("Hotter than 53 °C in the heap: spread it at once"), words);
    }

    private static String degrees(double celsius) {
        return new QuantityFormat(DisplayUnits.metric()).temperature(celsius);
    }

    @Test
    void titlesCarryTheLastNumberOfTheId() {
        assertEquals("Turn 3", wording.actTitle(PlanSamples.act(ActKind.TURN, "floor.turn-3", Setting.at("x"))));
        assertEquals("Drain 1", wording.actTitle(PlanSamples.act(ActKind.DRAIN, "steep-1.drain", Setting.at("x"))));
        assertEquals("Load the kiln", wording.actTitle(PlanSamples.act(ActKind.LOAD, "kiln.load", Setting.at("x"))));
        assertEquals("“kiln.something-2”", ActNames.byId("kiln.something-2"));
    }

    @ParameterizedTest
    @EnumSource(PhaseKind.class)
    void everyPhaseHasATitle(PhaseKind kind) {
        assertFalse(wording.phaseTitle(kind).isBlank());
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "ar-EG", "th-TH-u-ca-buddhist-nu-thai", "de-DE"})
    void saysTheSameUnderEveryDefaultLocale(String tag) {
        assertEquals(
                allSentences(wording),
                DefaultLocales.under(tag, () -> allSentences(new Wording(DisplayUnits.metric(), OSLO))));
    }

    @Test
    void theBundleHasNoApostropheThatAMessageWouldSwallow() throws IOException {
        try (var file = Wording.class.getResourceAsStream("wording.properties")) {
            assertFalse(new String(file.readAllBytes(), StandardCharsets.UTF_8).contains("'"));
        }
    }

    @Test
    void cautionsThatNeedItDeferToLocalRules() {
        List<Caution> ofTheKitchen =
                List.of(Caution.LIFTING, Caution.HOT_SURFACES, Caution.PACKS_DENSE, Caution.OATS_FLOAT);
        for (Caution caution : Caution.values()) {
            assertTrue(
                    ofTheKitchen.contains(caution)
                            || wording.caution(caution)
                                    .toLowerCase(java.util.Locale.ROOT)
                                    .contains("local"),
                    caution.name());
        }
    }
}
