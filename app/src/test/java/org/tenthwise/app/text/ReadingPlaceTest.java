package org.tenthwise.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.words.Words;

/** Which of several readings at one place it is. */
class ReadingPlaceTest {

    private static final String INDICATED =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "indicated"
            movement_of = "%s"
            name = "Seat"
            method = "A slow turn."
            datum = "A"
            datum_by = "centres"
            limit = 0.02
            places = ["near", "far"]
            gauge_kind = "dial-indicator"
            """;

    private static final String READ_TWICE =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "diameter"
            name = "Seat"
            method = "Twice."
            lower = 29.980
            upper = 30.000
            places = ["near", "far"]
            readings_each = 2
            gauge_kind = "micrometer"
            """;

    private static Check indicated(String of) {
        return InventedPlans.inMillimetres(INDICATED.formatted(of)).step(1).check();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "circular-run-out | 1 | highest, near | höchster Wert, near",
                "circular-run-out | 2 | lowest, near | tiefster Wert, near",
                "symmetry | 1 | near | near",
                "symmetry | 2 | turned over, near | umgeschlagen, near"
            })
    void ofASweepItSaysTheHighestOrTheLowestAndOfASymmetryTheOneTurnedOver(
            String of, int repeat, String english, String german) {
        assertEquals(english, new ReadingPlace(Words.ENGLISH).of(indicated(of), "near", repeat));
        assertEquals(german, new ReadingPlace(Words.of(Locale.GERMAN)).of(indicated(of), "near", repeat));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1 | near", "2 | near, reading 2"})
    void ofASizeReadTwiceItSaysWhichReadingItIs(int repeat, String said) {
        Check check = InventedPlans.inMillimetres(READ_TWICE).step(1).check();
        assertEquals(said, new ReadingPlace(Words.ENGLISH).of(check, "near", repeat));
    }
}
