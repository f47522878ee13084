package piecewright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import piecewright.chart.Parsed;
import piecewright.plan.Act;
import piecewright.plan.Caution;
import piecewright.plan.DemoPlan;
import piecewright.plan.Plan;
import piecewright.text.DisplayUnits;
import piecewright.text.MomentFormat;
import piecewright.text.QuantityFormat;
import piecewright.text.Wording;

class BenchSheetTest {
    private static final String HOSTILE =
            "</title></style><script>alert('x')</script><img src=x onerror=alert(1)>\"&amp;";

    private static String sheet(Plan plan, DisplayUnits units) {
        return BenchSheet.of(DemoPlan.request(), plan, units, Map.of());
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
                assertTrue(text.contains(wording.whatToDo(acts.get(i))) || text.contains(" above."), text);
                assertEquals(
                        "checkbox",
                        ((Element) blocks.get(i).getElementsByTagName("input").item(0)).getAttribute("type"));
                assertTrue(blocks.get(i).getElementsByTagName("input").getLength() >= 3, text);
            }
        }
    }

    @Test
    void aDayCanBeReadAlone() {
        ZoneId zone = DemoPlan.plan().subject().zone();
        Wording wording = new Wording(DisplayUnits.metric(), zone);
        MomentFormat moments = new MomentFormat(zone, DisplayUnits.metric().locale());
        int cautions = 0;
        for (Element day : ofClass(Parsed.of(sheet(DemoPlan.plan(), DisplayUnits.metric())), "day")) {
            String text = day.getTextContent();
            for (Act act : DemoPlan.plan().acts()) {
                String longDay = moments.longDay(act.startsAt().atZone(zone).toLocalDate());
                if (!text.contains(longDay)) continue;
                assertTrue(text.contains(wording.actTitle(act)), text);
                assertTrue(text.contains(wording.lookFor(act)), text);
                for (Caution caution : act.cautions()) {
                    assertTrue(text.contains(wording.caution(caution)), text);
                    cautions++;
                }
            }
        }
        assertTrue(cautions > 10, "cautions seen: " + cautions);
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
                plan.costMinutes());
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
                DemoPlan.request(), DemoPlan.plan(), DisplayUnits.metric(), Map.of(drain.id(), new MassBand(6.4, 6.8)));
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
        assertTrue(text.contains("sprinkle: 8 fl oz brings this piece from two points below to 42 %"), text);
    }
}
