package piecewright.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The checks must fail where they should: one good file, and each defect put into it by itself. "\n" in the table is a
 * line end. The defects are those that general validators were seen to miss or find, and more.
 */
class IcsChecksTest {
    private static final String GOOD = """
            BEGIN:VCALENDAR
            VERSION:2.0
            PRODID:-//Piecewright//Piecewright 1.0//EN
            CALSCALE:GREGORIAN
            NAME:Malt
            X-WR-CALNAME:Malt
            BEGIN:VEVENT
            UID:3f0f3f5e-0b0e-4c1a-8b63-5a7e8d3c0a02
            DTSTAMP:20310320T080000Z
            CREATED:20310320T080000Z
            LAST-MODIFIED:20310320T080000Z
            SEQUENCE:0
            DTSTART:20310328T030000Z
            DTEND:20310328T033000Z
            SUMMARY:Drain\\, weigh
            DESCRIPTION:Water
            CATEGORIES:Malting
            COLOR:firebrick
            STATUS:CONFIRMED
            TRANSP:OPAQUE
            CLASS:PRIVATE
            X-PIECEWRIGHT-ACT:steep-1.drain
            BEGIN:VALARM
            ACTION:DISPLAY
            TRIGGER:-PT30M
            DESCRIPTION:Drain
            END:VALARM
            END:VEVENT
            END:VCALENDAR
            """;

    @Test
    void theGoodFileIsGood() {
        assertEquals(List.of(), faults(GOOD));
    }

    @ParameterizedTest(name = "check {0}: {1} -> {2}")
    @CsvSource(delimiter = '|', textBlock = """
                    7  | VERSION:2.0\\n                  | ''
                    7  | VERSION:2.0                     | VERSION:1.0
                    7  | PRODID:-//Piecewright//Piecewright 1.0//EN\\n | ''
                    7  | CALSCALE:GREGORIAN              | CALSCALE:JULIAN
                    9  | CALSCALE:GREGORIAN              | METHOD:PUBLISH
                    11 | X-WR-CALNAME:Malt               | X-WR-CALNAME:Other
                    11 | CALSCALE:GREGORIAN              | REFRESH-INTERVAL:PT1H
                    11 | CALSCALE:GREGORIAN              | REFRESH-INTERVAL;VALUE=DURATION:PT0S
                    12 | UID:3f0f3f5e-0b0e-4c1a-8b63-5a7e8d3c0a02\\n | ''
                    12 | DTSTAMP:20310320T080000Z\\n     | ''
                    12 | DTSTART:20310328T030000Z\\n     | ''
                    14 | UID:3f0f3f5e                    | UID:3F0F3F5E
                    14 | 5a7e8d3c0a02                    | 5a7e8d3c0a02@host
                    15 | DTSTAMP:20310320T080000Z        | DTSTAMP:20310320T080001Z
                    15 | CREATED:20310320T080000Z        | CREATED:20310320T090000Z
                    15 | LAST-MODIFIED:20310320T080000Z  | LAST-MODIFIED:20310320T080000
                    15 | LAST-MODIFIED:20310320T080000Z\\n | ''
                    16 | DTEND:20310328T033000Z          | DURATION:PT30M
                    16 | SUMMARY:Drain                   | DURATION:PT30M\\nSUMMARY:Drain
                    17 | DTEND:20310328T033000Z          | DTEND:20310328T030000Z
                    17 | DTEND:20310328T033000Z          | DTEND:20310328T023000Z
                    17 | DTEND:20310328T033000Z          | DTEND:20310328T033000
                    17 | DTEND:20310328T033000Z          | DTEND;VALUE=DATE:20310329
                    18 | DTSTART:20310328T030000Z        | DTSTART;TZID=Europe/Berlin:20310328T030000Z
                    18 | DTSTART:20310328T030000Z        | DTSTART;TZID=Z:20310328T030000Z
                    19 | DTSTART:20310328T030000Z        | DTSTART:20310328T030000
                    20 | DTSTART:20310328T030000Z        | DTSTART;TZID=Europe/Berlin:20310328T030000
                    20 | DTSTART:20310328T030000Z        | DTSTART;TZID=\"+01:00\":20310328T030000
                    21 | DTSTART:20310328T030000Z        | DTSTART;TZID=Europe/Berlin:20310330T023000
                    21 | DTSTART:20310328T030000Z        | DTSTART;TZID=Europe/Berlin:20311026T023000
                    23 | DTSTART:20310328T030000Z        | DTSTART:20310328T030060Z
                    23 | DTSTART:20310328T030000Z        | DTSTART:20310230T030000Z
                    23 | DTSTART:20310328T030000Z        | DTSTART:٢٠٣١٠٣٢٨T030000Z
                    24 | SEQUENCE:0                      | SEQUENCE:0\\nRRULE:FREQ=DAILY
                    24 | SEQUENCE:0                      | SEQUENCE:0\\nRECURRENCE-ID:20310328T030000Z
                    25 | SEQUENCE:0                      | SEQUENCE:-1
                    25 | SEQUENCE:0                      | SEQUENCE:2147483648
                    25 | SEQUENCE:0\\n                   | ''
                    26 | STATUS:CONFIRMED                | STATUS:NEEDS-ACTION
                    27 | TRANSP:OPAQUE                   | TRANSP:GLASS
                    27 | STATUS:CONFIRMED                | STATUS:CANCELLED
                    28 | COLOR:firebrick                 | COLOR:#b22222
                    29 | SUMMARY:Drain                   | SUMMARY:Twice\\nSUMMARY:Drain
                    30 | CATEGORIES:Malting              | CATEGORIES:Other,Malting
                    31 | CLASS:PRIVATE                   | GEO:north;south
                    31 | CLASS:PRIVATE                   | URL:file:///etc/hosts
                    5  | COLOR:firebrick                 | COLOR;X-A=1:firebrick
                    6  | SUMMARY:Drain\\\\, weigh        | SUMMARY:Drain, weigh
                    6  | DESCRIPTION:Water               | DESCRIPTION:Water; cold
                    6  | DESCRIPTION:Water               | DESCRIPTION:Water \\\\x
                    10 | CLASS:PRIVATE                   | ORGANIZER:mailto:a@example.org
                    10 | CLASS:PRIVATE                   | ATTENDEE:mailto:a@example.org
                    32 | ACTION:DISPLAY\\n               | ''
                    32 | ACTION:DISPLAY                  | ACTION:EMAIL
                    32 | TRIGGER:-PT30M\\n               | ''
                    32 | DESCRIPTION:Drain\\n            | ''
                    33 | TRIGGER:-PT30M                  | TRIGGER:-P1D
                    33 | TRIGGER:-PT30M                  | TRIGGER:20310328T023000
                    33 | TRIGGER:-PT30M                  | TRIGGER;VALUE=DATE-TIME:20310328T023000
                    34 | TRIGGER:-PT30M                  | TRIGGER:-PT30M\\nREPEAT:2
                    35 | TRANSP:OPAQUE                   | TRANSP:TRANSPARENT
                    36 | TRIGGER:-PT30M                  | TRIGGER:-PT30M\\nUID:a\\nUID:b
                    5  | CLASS:PRIVATE                   | CLASS PRIVATE
                    5  | CLASS:PRIVATE                   | CL_ASS:PRIVATE
                    5  | CLASS:PRIVATE                   | CLASS;X:PRIVATE
                    5  | CLASS:PRIVATE                   | CLASS:PRIVATE\\n\\nX-A:1
                    5  | END:VALARM\\n                   | ''
                    5  | END:VEVENT\\n                   | END:VEVENT\\nX-LATE:1\\n
                    """)
    void aDefectIsCaughtByItsCheck(int check, String good, String bad) {
        String from = good.strip().replace("\\n", "\n").replace("\\\\", "\\");
        String to = bad.strip().replace("\\n", "\n").replace("\\\\", "\\");
        String broken = GOOD.replace(from, to);
        assertNotEquals(GOOD, broken, "the table must change the file");
        assertCaught(check, crlf(broken));
    }

    @Test
    void theSameUidTwiceIsCaught() {
        String event = GOOD.substring(GOOD.indexOf("BEGIN:VEVENT"), GOOD.indexOf("END:VCALENDAR"));
        assertCaught(13, crlf(GOOD.replace(event, event + event)));
    }

    @Test
    void threeAlarmsOrTwoEqualOnesAreCaught() {
        String alarm = GOOD.substring(GOOD.indexOf("BEGIN:VALARM"), GOOD.indexOf("END:VEVENT"));
        assertCaught(35, crlf(GOOD.replace(alarm, alarm + alarm)));
        String three = alarm + alarm.replace("30M", "20M") + alarm.replace("30M", "10M");
        assertCaught(35, crlf(GOOD.replace(alarm, three)));
    }

    @Test
    void aCalendarWithoutEventOrWithATaskIsCaught() {
        String event = GOOD.substring(GOOD.indexOf("BEGIN:VEVENT"), GOOD.indexOf("END:VCALENDAR"));
        assertCaught(8, crlf(GOOD.replace(event, "")));
        assertCaught(8, crlf(GOOD.replace(event, event + "BEGIN:VTODO\nUID:1\nEND:VTODO\n")));
    }

    @Test
    void anAlarmInsideAnAlarmIsCaught() {
        assertCaught(32, crlf(GOOD.replace("END:VALARM", "BEGIN:VALARM\nACTION:DISPLAY\nEND:VALARM\nEND:VALARM")));
    }

    @Test
    void aZoneDefinedButUnusedOrBadlyDefinedIsCaught() {
        String zone =
                "BEGIN:VTIMEZONE\nTZID:Europe/Berlin\nBEGIN:STANDARD\nDTSTART:19701025T030000\nTZOFFSETFROM:+0200\n"
                        + "TZOFFSETTO:+0100\nEND:STANDARD\nEND:VTIMEZONE\nBEGIN:VEVENT";
        String unused = GOOD.replace("BEGIN:VEVENT", zone);
        assertCaught(20, crlf(unused));
        String used = unused.replace("DTSTART:20310328T030000Z", "DTSTART;TZID=Europe/Berlin:20310328T040000")
                .replace("DTEND:20310328T033000Z", "DTEND;TZID=Europe/Berlin:20310328T043000");
        assertEquals(List.of(), faults(used));
        assertCaught(20, crlf(used.replace("TZOFFSETTO:+0100", "TZOFFSETTO:0100")));
        assertCaught(20, crlf(used.replace("19701025T030000", "19701025T030000Z")));
    }

    @Test
    void octetDefectsAreCaught() {
        byte[] good = crlf(GOOD);
        assertCaught(1, concat(new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF}, good));
        assertCaught(1, latin1("Wäter"));
        assertCaught(2, GOOD.getBytes(StandardCharsets.UTF_8));
        assertCaught(2, Arrays.copyOf(good, good.length - 2));
        assertCaught(2, crlf(GOOD.replace("Water", "Wa\rter")));
        assertCaught(3, crlf(GOOD.replace("Water", "W".repeat(64))));
        assertCaught(3, crlf(GOOD.replace("Water", "Wa\n ter")));
        assertCaught(4, crlf(GOOD.replace("Water", "Wa\u0007ter")));
    }

    @Test
    void aFoldInsideACharacterIsCaught() {
        byte[] good = crlf(GOOD.replace("Water", "ü"));
        String asLatin = new String(good, StandardCharsets.ISO_8859_1);
        assertCaught(3, asLatin.replace("\u00c3\u00bc", "\u00c3\r\n \u00bc").getBytes(StandardCharsets.ISO_8859_1));
    }

    @Test
    void aWatchedWordIsCaughtEvenAcrossAFold() {
        byte[] file = OctetFolding.fold(GOOD.replace("Water", "w".repeat(60) + " brewhost"));
        assertEquals(List.of(new IcsFault(31, "brewhost")), new IcsChecks(List.of("brewhost")).faultsOf(file));
        assertEquals(List.of(), new IcsChecks(List.of("host", "brew")).faultsOf(file));
    }

    private static byte[] latin1(String water) {
        return GOOD.replace("Water", water).replace("\n", "\r\n").getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] concat(byte[] first, byte[] second) {
        byte[] both = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, both, first.length, second.length);
        return both;
    }

    private static List<IcsFault> faults(String lines) {
        return new IcsChecks().faultsOf(crlf(lines));
    }

    private static byte[] crlf(String lines) {
        return lines.replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8);
    }

    private static void assertCaught(int check, byte[] file) {
        TreeSet<Integer> found = new TreeSet<>();
        new IcsChecks().faultsOf(file).forEach(fault -> found.add(fault.check()));
        assertTrue(found.contains(check), "expected check " + check + ", found " + found);
    }
}
