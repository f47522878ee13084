package piecewright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import piecewright.text.Columns.Column;
import piecewright.text.Columns.Side;

/** Lines of the page: columns, paragraphs, days. */
class PageTextTest {
    @Test
    void columnsAreAsWideAsTheirWidestCell() {
        Columns columns = new Columns(List.of(new Column("Act", Side.LEFT), new Column("Weight", Side.RIGHT)));
        columns.add("Soak 1", "4874 g");
        columns.add("Größe", "12 lb 4.1 oz");
        assertEquals("Act           Weight", columns.titles());
        assertEquals("Soak 1        4874 g", columns.row(0));
        assertEquals("Größe   12 lb 4.1 oz", columns.row(1));
        assertEquals(8, columns.offset(1));
        assertThrows(IllegalArgumentException.class, () -> columns.add("one cell"));
    }

    @Test
    void paragraphsKeepFiguresWithTheirUnitsAndIndentWhatFollows() {
        String words = "a".repeat(50) + " " + "b".repeat(40) + " about 40 g in handling";
        assertEquals(
                "- " + "a".repeat(50) + " " + "b".repeat(40) + " about 40 g in\n  handling\n",
                Paragraph.of("- ", words));
        String tight = "a".repeat(50) + " " + "b".repeat(52) + " 40 g more";
        assertEquals(
                "- " + "a".repeat(50) + " " + "b".repeat(52) + "\n  40 g more\n",
                Paragraph.of("- ", tight),
                "\"40\" alone would have fitted");
        Paragraph.of("  ", "word ".repeat(200))
                .lines()
                .forEach(line -> assertTrue(line.length() <= Paragraph.WIDTH && line.startsWith("  ")));
    }

    @Test
    void aDayOnWhichTheClocksChangeSaysSo() {
        MomentFormat oslo = new MomentFormat(ZoneId.of("Europe/Oslo"), Locale.ENGLISH);
        assertEquals("02:30 +02:00", oslo.clock(Instant.parse("2027-10-31T00:30:00Z")));
        assertEquals("02:30 +01:00", oslo.clock(Instant.parse("2027-10-31T01:30:00Z")));
        assertEquals("02:30", oslo.clock(Instant.parse("2027-10-30T00:30:00Z")));
        assertTrue(oslo.clockChange(LocalDate.of(2027, 10, 31)).isPresent());
        assertTrue(oslo.clockChange(LocalDate.of(2027, 10, 30)).isEmpty());
        MomentFormat kathmandu = new MomentFormat(ZoneId.of("Asia/Kathmandu"), Locale.ENGLISH);
        assertTrue(kathmandu.clockChange(LocalDate.of(2027, 10, 31)).isEmpty());
        assertEquals("Sunday 31 October 2027", oslo.longDay(LocalDate.of(2027, 10, 31)));
        assertEquals("Sun 31 Oct 2027 02:30", oslo.dated(Instant.parse("2027-10-31T00:30:00Z")));
    }

    @Test
    void theKitchenScaleShowsGramsOrOunces() {
        assertEquals("6562 g", new QuantityFormat(DisplayUnits.metric()).scaleMass(6.5621));
        assertEquals("40 g", new QuantityFormat(DisplayUnits.metric()).scaleMass(0.0401));
        assertEquals("14 lb 7.5 oz", new QuantityFormat(DisplayUnits.us()).scaleMass(6.5621));
    }
}
