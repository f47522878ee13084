package piecewright.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WrittenEventsTest {
    private static final byte[] FILE =
            new IcsWriter().file("Malt", PlanFixture.usual().dated());

    @Test
    void everyEventOfOurOwnFileIsKnownAgain() {
        var seen = WrittenEvents.in(FILE).orElseThrow();
        var planned = PlanFixture.usual().dated();
        assertEquals(planned.size(), seen.size());
        for (DatedEvent dated : planned) {
            assertTrue(seen.contains(new WrittenEvent(
                    dated.uid(),
                    dated.event().key(),
                    dated.stamp(),
                    dated.status(),
                    dated.event().span(),
                    dated.event().summary())));
        }
    }

    @Test
    void aFileOfSomebodyElseIsNotOurs() {
        String other = new String(FILE, StandardCharsets.UTF_8).replace("PRODID:-//Piecewright", "PRODID:-//Else");
        assertEquals(Optional.empty(), WrittenEvents.in(other.getBytes(StandardCharsets.UTF_8)));
        assertEquals(Optional.empty(), WrittenEvents.in("not a calendar".getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void aFileCutShortAnywhereIsNotOursOrWhole() {
        for (int length = 0; length < FILE.length - 2; length += 7) {
            assertFalse(WrittenEvents.in(Arrays.copyOf(FILE, length)).isPresent());
        }
    }

    @Test
    void damagedEventsAreLeftOut() {
        String file = new String(FILE, StandardCharsets.UTF_8);
        int all = WrittenEvents.in(FILE).orElseThrow().size();
        for (String[] damage : new String[][] {
            {"SEQUENCE:0", "SEQUENCE:99999999999"},
            {"DTSTART:2031", "DTSTART:0000"},
            {"UID:", "UID:x"},
            {"X-PIECEWRIGHT-ACT:", "X-PIECEWRIGHT-ACT:/ "},
            {"LAST-MODIFIED:2031", "LAST-MODIFIED:9999"},
            {"CREATED:2031", "CREATED:2032"},
            {"SUMMARY:", "COMMENT:"}
        }) {
            String damaged = file.replaceFirst(damage[0], damage[1]);
            assertEquals(
                    all - 1,
                    WrittenEvents.in(damaged.getBytes(StandardCharsets.UTF_8))
                            .orElseThrow()
                            .size(),
                    damage[1]);
        }
    }

    @Test
    void deepNestingIsRefused() {
        String deep = "BEGIN:VCALENDAR\r\n" + "BEGIN:VEVENT\r\n".repeat(100_000);
        assertEquals(Optional.empty(), WrittenEvents.in(deep.getBytes(StandardCharsets.UTF_8)));
    }
}
