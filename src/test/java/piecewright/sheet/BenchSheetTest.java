package piecewright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import piecewright.chart.Followed;
import piecewright.chart.Markup;
import piecewright.chart.Parsed;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.CouchedDemo;
import piecewright.plan.DemoPlan;
import piecewright.plan.InnerSchedule;
import piecewright.plan.InnerSchedule.InnerStep;
import piecewright.plan.InnerSchedule.Inside;
import piecewright.plan.InnerSchedule.Kind;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.Preflight;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.style.MaltStyle;
import piecewright.text.DisplayUnits;
import piecewright.text.MomentFormat;
import piecewright.text.QuantityFormat;
import piecewright.text.Wording;

class BenchSheetTest {
    private static final String HOSTILE =
            "</title></style><script>alert('x')</script><img src=x onerror=alert(1)>\"&amp;";

    private static String sheet(Plan plan, DisplayUnits units) {
        return BenchSheet.of(DemoPlan.request(), plan, units, Known.of(Map.of()));
    }

    private static List<Element> ofClass(Parsed parsed, String name) {
        return parsed.all("*").stream()
                .filter(element -> element.getAttribute("class").equals(name))
                .toList();
    }

    @Test
    void everyActHasItsBoxItsBlanksAndItsWeightInThePersonsUnits() {
        for (DisplayUnits units : List.of(DisplayUnits.metric(), DisplayUnits.us())) {
            List<Element> blocks = ofClass(Parsed.of(sheet(DemoPlan.plan(), units)), "act");
            List<Act> acts = DemoPlan.plan().acts();
            assertEquals(acts.size(), blocks.size());
            Wording wording = new Wording(units, DemoPlan.plan().subject().zone());
            for (int i = 0; i < acts.size(); i++) {
                String text = blocks.get(i).getTextContent();
                assertTrue(text.contains(wording.actTitle(acts.get(i))), text);
                assertTrue(
                        text.contains(new QuantityFormat(units)
                                .scaleMass(acts.get(i).expect().massKg())),
                        text);
                assertTrue(text.contains(wording.shortWindow(acts.get(i))), text);
                assertEquals(
                        "checkbox",
                        ((Element) blocks.get(i).getElementsByTagName("input").item(0)).getAttribute("type"));
                assertTrue(blocks.get(i).getElementsByTagName("input").getLength() >= 3, text);
            }
        }
    }

    /** Hands are wet: how it is done and what is dangerous stands once, in full, not at every step. */
    @Test
    void everyKindOfStepAndEveryDangerIsToldOnceInFull() {
        Wording wording =
                new Wording(DisplayUnits.metric(), DemoPlan.plan().subject().zone());
        String sheet = Parsed.of(sheet(DemoPlan.plan(), DisplayUnits.metric()))
                .all("body")
                .get(0)
                .getTextContent();
        Set<String> told = new HashSet<>();
        for (Act act : DemoPlan.plan().acts()) {
            told.add(wording.howTo(act) + " " + wording.lookFor(act));
            act.cautions().forEach(caution -> told.add(wording.caution(caution)));
        }
        assertTrue(told.size() > 12, told.toString());
        for (String sentences : told)
            assertEquals(2, (sheet + ".").split(Pattern.quote(sentences), -1).length, sentences);
    }

    /** A long batch is set smaller; the first sheet of paper is enough in the garage. */
    @Test
    void timesAndTargetsComeFirstAndLongBatchesAreSetSmaller() {
        String body = Parsed.of(sheet(CouchedDemo.plan(), DisplayUnits.metric()))
                .all("body")
                .get(0)
                .getTextContent();
        assertTrue(body.indexOf("Times and targets") < body.indexOf("What a weight of this batch means"), body);
        assertEquals(
                CouchedDemo.plan().acts().size() > 22 ? 1 : 0,
                ofClass(Parsed.of(sheet(CouchedDemo.plan(), DisplayUnits.metric())), "steps many")
                        .size());
    }

    @Test
    void nobodysWordsBecomeMarkup() {
        Plan plan = DemoPlan.plan();
        Plan.Subject subject = plan.subject();
        Plan hostile = new Plan(
                new Plan.Subject(subject.style(), HOSTILE, HOSTILE, subject.zone(), subject.readyAt()),
                plan.outcome(),
                plan.acts(),
                plan.phases(),
                plan.findings(),
                plan.course(),
                plan.bill());
        Parsed parsed = Parsed.of(sheet(hostile, DisplayUnits.metric()));
        assertEquals(List.of(), parsed.all("script"));
        assertEquals(List.of(), parsed.all("img"));
        for (Element element : parsed.all("*")) {
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                Attr attribute = (Attr) element.getAttributes().item(i);
                assertFalse(attribute.getName().startsWith("on"), attribute.getName());
                boolean linked = List.of("href", "src", "action").contains(attribute.getName());
                assertFalse(linked, () -> attribute.getName() + " in " + element.getTagName());
            }
        }
        assertTrue(parsed.all("h1").get(0).getTextContent().contains(HOSTILE));
    }

    @Test
    void theStylesHoldNothingThatHtmlWouldReadAndFetchNothing() throws IOException {
        String css = Files.readString(Path.of("src/main/resources/piecewright/sheet/sheet.css"));
        for (String sign : List.of("<", ">", "&", "url(", "@import")) assertFalse(css.contains(sign), sign);
        assertTrue(sheet(DemoPlan.plan(), DisplayUnits.metric()).contains(css));
    }

    @Test
    void aBandStandsBesideTheMiddle() {
        Act drain = DemoPlan.plan().acts().get(1);
        String sheet = BenchSheet.of(
                DemoPlan.request(),
                DemoPlan.plan(),
                DisplayUnits.metric(),
                Known.of(Map.of(drain.id(), new MassBand(6.4, 6.8))));
        assertTrue(ofClass(Parsed.of(sheet), "target").get(1).getTextContent().contains("(6400 g to 6800 g)"));
    }

    @Test
    void rescueRulesCarryTheFiguresOfThisStyleAndOnlyWhatCanHappen() {
        Element rescue = ofClass(Parsed.of(sheet(DemoPlan.plan(), DisplayUnits.us())), "rescue")
                .get(0);
        String text = rescue.getTextContent();
        assertTrue(text.contains("Above 68 °F spread it"), text);
        assertFalse(text.contains("packed dense"), "barley has a husk");
        assertFalse(text.contains("{"), text);
        // 4.286 kg of dry matter from 40 % to 42 %: 4.286 · (1/0.58 − 1/0.60) = 246 g, 8 fl oz
        assertTrue(text.contains("sprinkle: 8 fl oz brings this batch from two points below to 42 %"), text);
    }

    private static String textOf(PlanRequest request, Plan plan, Known known, String cssClass) {
        StringBuilder text = new StringBuilder();
        Parsed parsed = Parsed.of(BenchSheet.of(request, plan, DisplayUnits.metric(), known));
        ofClass(parsed, cssClass).forEach(each -> text.append(each.getTextContent()));
        return text.toString();
    }

    @Test
    void aCouchedMaltIsRescuedByTheRulesOfItsCouch() {
        String text = textOf(CouchedDemo.request(), CouchedDemo.plan(), Known.of(Map.of()), "rescue");
        for (String rule : List.of(
                "The couch passes 53 °C",
                "no later than 3 d after packing",
                "It must be drying within 4 h",
                "The couch smells of vinegar")) {
            assertTrue(text.contains(rule), rule + " in " + text);
        }
        // two days of rest are for living grain; after the couch it is dead
        assertFalse(text.contains("two days at 14 °C"), text);
        assertFalse(text.contains("roast") || text.contains("{"), text);
    }

    @Test
    void everyStyleIsShownRulesOfItsOwnAndEveryRuleHasItsFigures() throws StoreException {
        for (MaltStyle style : StyleLibrary.builtIn().all()) {
            PlanRequest request = DemoPlan.request().withStyle(style);
            String text = textOf(request, DemoPlan.plan(), Known.of(Map.of()), "rescue");
            assertFalse(text.contains("{"), text);
            assertEquals(style.couches().hot().isPresent(), text.contains("The couch stays cool"), style.key());
            assertEquals(style.oven().stew().isPresent(), text.contains("stew dries on top"), style.key());
            assertEquals(style.oven().roast().isPresent(), text.contains("You have to leave the roast"), style.key());
        }
    }

    @Test
    void doneActsAreTickedAndNotExplainedAgain() {
        Plan plan = DemoPlan.plan();
        String soak = plan.acts().get(0).id();
        Known known = new Known(Map.of(), Set.of(soak), Followed.nothing());
        Parsed parsed = Parsed.of(BenchSheet.of(DemoPlan.request(), plan, DisplayUnits.metric(), known));
        List<Element> done = ofClass(parsed, "act done");
        assertEquals(1, done.size());
        assertEquals(
                "checked", ((Element) done.get(0).getElementsByTagName("input").item(0)).getAttribute("checked"));
        assertFalse(done.get(0).getTextContent().contains("too late"));
        assertEquals(plan.acts().size() - 1, ofClass(parsed, "act").size());
    }

    @Test
    void testsOfLotAndKitStandBeforeTheFirstActWithABlankForTheirResult() {
        PlanRequest request = DemoPlan.request();
        Plan checked = new Preflight(request, LocalDateTime.of(2027, 3, 1, 8, 0)).added(DemoPlan.plan());
        assertFalse(checked.checks().isEmpty());
        List<Element> days = ofClass(Parsed.of(sheet(checked, DisplayUnits.metric())), "checks");
        String first = days.get(0).getTextContent();
        assertTrue(first.startsWith("\nBefore the first step"), first);
        assertEquals(
                checked.checks().size(),
                days.get(0).getElementsByTagName("article").getLength());
        assertTrue(first.contains("Result"), first);
    }

    /** Judgement of practice: nobody opens the couch to weigh it at a look; the thermometer and the nose tell. */
    @Test
    void aLookAtTheCouchAsksForThermometerAndNoseOnly() {
        assertEquals(List.of(Blank.GRAIN_TEMPERATURE, Blank.SMELL), Blank.of(ActKind.CHECK));
        assertTrue(WeightTable.of(CouchedDemo.plan()).columns().size() <= 8);
    }

    @Test
    void aBlockIsToldMinuteByMinuteWithItsClockTimes() {
        InnerSchedule inner = new InnerSchedule(
                2,
                2,
                Duration.ofMinutes(20),
                5,
                List.of(new InnerStep(
                        Duration.ofMinutes(75),
                        Kind.STIR,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        new Inside(99, 0.02, 30))));
        Act deroot = DemoPlan.plan().acts().get(DemoPlan.plan().acts().size() - 1);
        Act roast = new Act(
                "oven.roast",
                ActKind.ROAST,
                deroot.startsAt(),
                inner.length(),
                deroot.window(),
                deroot.setting(),
                deroot.expect(),
                List.of(),
                Optional.of(inner));
        Markup page = new Markup();
        ZoneId zone = DemoPlan.plan().subject().zone();
        DisplayUnits units = DisplayUnits.metric();
        MomentFormat moments = new MomentFormat(zone, units.locale());
        page.open("body");
        new MinutePage(page, new SheetWords(new Wording(units, zone), new QuantityFormat(units), moments))
                .write(roast, inner);
        page.close();
        String text = page.written();
        assertTrue(text.contains("<th scope=\"row\">+75</th>"), text);
        assertTrue(text.contains(moments.clock(deroot.startsAt().plus(Duration.ofMinutes(75)))), text);
        assertTrue(text.contains("Stir and level; 99 °C in the middle."), text);
    }
}
