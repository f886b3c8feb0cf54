package org.tenthwise.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.OffsetDateTime;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.words.Words;

class DatesTest {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-11-05T14:31:00+01:00");

    @ParameterizedTest
    @CsvSource({
        "en, '5 Nov 2026, 14:31 +01:00', 5 Nov 2026, Thursday",
        "en-GB, '5 Nov 2026, 14:31 +01:00', 5 Nov 2026, Thursday",
        "en-US, 'Nov 5, 2026, 14:31 +01:00', 'Nov 5, 2026', Thursday"
    })
    void anEnglishDateHasTheOrderOfItsPlace(String tag, String moment, String day, String weekday) {
        Dates dates = new Dates(Words.of(Locale.forLanguageTag(tag)));
        assertEquals(moment, dates.moment(AT));
        assertEquals(day, dates.day(AT));
        assertEquals(weekday, dates.weekday(AT));
        assertEquals("14:31", dates.hour(AT));
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-05T23:59:00+01:00, 14:31",
        "2026-11-06T00:00:00+01:00, '5 Nov 2026, 14:31'",
        "2026-11-05T22:59:00Z, 14:31",
        "2026-11-05T23:00:00Z, '5 Nov 2026, 14:31'",
        "2027-11-05T14:31:00+01:00, '5 Nov 2026, 14:31'"
    })
    void anHourWithoutItsDayIsOfToday(OffsetDateTime now, String said) {
        assertEquals(said, new Dates(Words.of(Locale.ENGLISH)).lately(AT, now));
    }
}
