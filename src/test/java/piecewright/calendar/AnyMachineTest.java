package piecewright.calendar;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.TimeZone;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The same bytes whatever the zone and locale of the machine; Arabic and Thai bring their own digits and calendar. */
class AnyMachineTest {
    private static final String[] LOCALES = {"ar-EG-u-nu-arab", "th-TH-u-ca-buddhist-nu-thai", "tr-TR", "ar-SA"};
    private static final String[] ZONES = {"Asia/Kathmandu", "America/St_Johns", "Australia/Lord_Howe"};

    @Test
    void zoneAndLocaleOfTheRunningMachineDoNotShow() {
        byte[] expected = FilePrinter.file();
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            for (String language : LOCALES) {
                for (String place : ZONES) {
                    Locale.setDefault(Locale.forLanguageTag(language));
                    TimeZone.setDefault(TimeZone.getTimeZone(place));
                    assertArrayEquals(expected, FilePrinter.file(), language + " in " + place);
                }
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
                    ar, EG, Asia/Kathmandu,      UTF-8
                    th, TH, America/St_Johns,    ISO-8859-1
                    tr, TR, Australia/Lord_Howe, US-ASCII
                    """)
    void aFreshJvmElsewhereWritesTheSameBytes(String language, String country, String zone, String charset)
            throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-Duser.language=" + language,
                        "-Duser.country=" + country,
                        "-Duser.timezone=" + zone,
                        "-Dfile.encoding=" + charset,
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        FilePrinter.class.getName())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        byte[] printed = process.getInputStream().readAllBytes();
        assertTrue(process.waitFor(60, TimeUnit.SECONDS));
        assertEquals(0, process.exitValue());
        assertArrayEquals(FilePrinter.file(), printed);
    }
}
