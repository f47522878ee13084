package piecewright.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import piecewright.plan.Act;
import piecewright.plan.DemoPlan;
import piecewright.plan.Plan;
import piecewright.text.DisplayUnits;

class PlanChartTest {
    private static final Pattern LINE = Pattern.compile("M([-0-9.]+) ([-0-9.]+)((?:L[-0-9.]+ [-0-9.]+)+)");

    private final Plan plan = DemoPlan.plan();

    private String drawn(List<Measured> measured) {
        return PlanChart.of(
                DemoPlan.request(),
                plan,
                DisplayUnits.metric(),
                new Followed(measured, Optional.empty(), Optional.empty()));
    }

    @Test
    void everyActHasOneMarkerWithItsNameAndMoment() {
        List<String> titles = Parsed.of(drawn(List.of())).all("title").stream()
                .map(title -> title.getTextContent())
                .toList();
        Act drain = plan.acts().stream()
                .filter(act -> act.id().equals("steep-1.drain"))
                .findFirst()
                .orElseThrow();
        String moment = "Drain 1, "
                + DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH)
                        .withZone(DemoPlan.request().house().zone())
                        .format(drain.startsAt());
        assertEquals(
                1, titles.stream().filter(title -> title.startsWith(moment)).count(), titles::toString);
        // one for the picture, one for each act, one for each phase that begins before its right edge
        assertTrue(titles.size() >= 1 + plan.acts().size() + plan.phases().size() - 1, titles::toString);
    }

    @Test
    void allLinesLieInsideThePicture() {
        String drawn = drawn(List.of());
        String[] box =
                Parsed.of(drawn).all("svg").get(0).getAttribute("viewBox").split(" ");
        Matcher lines = LINE.matcher(drawn);
        int points = 0;
        while (lines.find()) {
            for (String point : lines.group().substring(1).split("L")) {
                double x = Double.parseDouble(point.split(" ")[0]);
                double y = Double.parseDouble(point.split(" ")[1]);
                if (x < -20 || y < -20) throw new AssertionError(point);
                assertTrue(x <= Double.parseDouble(box[2]) && y <= Double.parseDouble(box[3]), point);
                points++;
            }
        }
        assertTrue(points > 500, "the forecast must be drawn: " + points);
    }

    @Test
    void measuredFiguresStandWhereTheirForecastWouldWhenTheyAgree() {
        Plan.Sample sample = plan.course().get(plan.course().size() / 2);
        Measured weighed = new Measured(
                sample.at(),
                Measured.Kind.WEIGHED,
                sample.state().mass().moisture().wetBasisFraction());
        String with = drawn(List.of(weighed));
        Matcher mark = Pattern.compile("translate\\(([-0-9.]+) ([-0-9.]+)\\)\"><path d=\"M-4.5")
                .matcher(with);
        assertTrue(mark.find(), "a circle must be drawn");
        assertTrue(with.contains(mark.group(1) + " " + mark.group(2) + "L"), "the forecast passes through it");
        assertFalse(drawn(List.of()).contains("M-4.5"), "no mark without a measurement");
        assertTrue(with.contains(">weighed<"));
    }

    @Test
    void theForecastOfBeforeAndThePresentStandBesideTheForecast() {
        Followed followed = new Followed(
                List.of(), Optional.of(plan), Optional.of(plan.startsAt().plus(Duration.ofHours(50))));
        String with = PlanChart.of(DemoPlan.request(), plan, DisplayUnits.metric(), followed);
        assertTrue(with.contains(">before any reading<") && with.contains(">now<"));
        assertEquals(3, with.split("stroke-dasharray=\"4 3\"").length - 1 - 1, "one for each of three lanes, one told");
        assertFalse(drawn(List.of()).contains("before any reading"));
    }

    @Test
    void screenReadersAreToldTitleAndCourse() {
        Parsed parsed = Parsed.of(drawn(List.of()));
        assertEquals("img", parsed.all("svg").get(0).getAttribute("role"));
        assertTrue(parsed.all("title").get(0).getTextContent().startsWith("Pale malt from “two-row barley”, ready"));
        long wettest = Math.round(100
                * plan.course().stream()
                        .mapToDouble(sample -> sample.state().mass().moisture().wetBasisFraction())
                        .max()
                        .orElseThrow());
        assertTrue(parsed.all("desc").get(0).getTextContent().contains("Moisture rises to " + wettest + " %"));
    }

    @Test
    void anInstantPastTheEdgeIsClipped() {
        TimeScale scale = new TimeScale(plan.startsAt(), plan.startsAt().plus(Duration.ofHours(10)), 100, 200);
        assertEquals(150, scale.x(plan.startsAt().plus(Duration.ofHours(5))), 1e-9);
        assertEquals(scale.until(), scale.clipped(plan.startsAt().plus(Duration.ofHours(11))));
    }

    @Test
    void theFoldJoinsBothSlopes() {
        ValueScale scale = new ValueScale(0, 25, 110, 100, 40, 10);
        assertEquals(100, scale.y(0), 1e-9);
        assertEquals(40, scale.y(25), 1e-9);
        assertEquals(10, scale.y(110), 1e-9);
        assertEquals(10, scale.y(300), 1e-9);
        assertEquals(scale.y(25), scale.y(25.0001), 1e-3);
    }
}
