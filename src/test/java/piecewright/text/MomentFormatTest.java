package piecewright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MomentFormatTest {
    private static final ZoneId OSLO = ZoneId.of("Europe/Oslo");

    @Test
    void showsTheHousesClockAcrossTheClockChange() {
        var format = new MomentFormat(OSLO, Locale.ENGLISH);
        assertEquals("Fri 19 Mar 18:00", format.moment(Instant.parse("2027-03-19T17:00:00Z")));
        assertEquals("Sun 28 Mar 01:59 +01:00", format.momentWithOffset(Instant.parse("2027-03-28T00:59:00Z")));
        assertEquals("Sun 28 Mar 03:00 +02:00", format.momentWithOffset(Instant.parse("2027-03-28T01:00:00Z")));
        assertEquals("Fri 19 Mar", format.day(LocalDate.of(2027, 3, 19)));
    }

    @Test
    void rootSpeaksEnglish() {
        assertEquals(
                "Fri 19 Mar 18:00", new MomentFormat(OSLO, Locale.ROOT).moment(Instant.parse("2027-03-19T17:00:00Z")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "ar-EG", "th-TH-u-ca-buddhist-nu-thai", "de-DE"})
    void isTheSameUnderEveryDefaultLocale(String tag) {
        assertEquals(
                "Fri 19 Mar 18:00",
                DefaultLocales.under(
                        tag,
                        () -> new MomentFormat(OSLO, Locale.ENGLISH).moment(Instant.parse("2027-03-19T17:00:00Z"))));
    }
}
