package org.tenthwise.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EntryTimeTest {

    private static final String SIGNS = "0123456789-+:.TZtz ,/\u0663";

    /** The general way of the library, or that it refuses. */
    private static String general(String text) {
        try {
            return OffsetDateTime.parse(text, DateTimeFormatter.ISO_OFFSET_DATE_TIME)
                    .toString();
        } catch (DateTimeException e) {
            return "refused";
        }
    }

    private static String read(String text) {
        try {
            return EntryTime.read(text).toString();
        } catch (DateTimeException e) {
            return "refused";
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-11-25T07:31:12+01:00",
                "2026-11-25T07:31:12.5+01:00",
                "2026-11-25T07:31:12.123456789Z",
                "2026-11-25T07:31:12.1234567890Z",
                "2026-11-25T07:31:12.Z",
                "2026-11-25T07:31Z",
                "2024-02-29T00:00:00-00:00",
                "2026-02-29T00:00:00Z",
                "2026-11-25T24:00:00Z",
                "2026-11-25T23:59:60Z",
                "2026-11-25T07:31:12+01:75",
                "2026-11-25T07:31:12+18:01",
                "2026-11-25T07:31:12-17:59",
                "2026-11-25T07:31:12+01:00:30",
                "+12026-11-25T07:31:12Z",
                "0000-01-01T00:00:00Z",
                "-026-11-25T07:31:12Z",
                "2026-11-25t07:31:12z",
                "2026-11-25T07:31:12",
                "Z",
                "+01:00",
                ""
            })
    void whatIsReadIsWhatTheGeneralWayReads(String text) {
        assertEquals(general(text), read(text));
    }

    @Test
    void soItIsWhateverSignIsPutForAnother() {
        Random random = new Random(1);
        for (int i = 0; i < 20_000; i++) {
            OffsetDateTime time = OffsetDateTime.ofInstant(
                    Instant.ofEpochSecond(random.nextInt(), random.nextInt(3) * 1_500_000L),
                    ZoneOffset.ofTotalSeconds((random.nextInt(36 * 4 + 1) - 72) * 900));
            StringBuilder text = new StringBuilder(time.format(DateTimeFormatter.ISO_OFFSET_DATE_TIME));
            assertEquals(general(text.toString()), read(text.toString()));
            text.setCharAt(random.nextInt(text.length()), SIGNS.charAt(random.nextInt(SIGNS.length())));
            assertEquals(general(text.toString()), read(text.toString()), text::toString);
        }
    }
}
