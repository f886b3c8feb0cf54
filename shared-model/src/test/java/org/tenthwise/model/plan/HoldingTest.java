package org.tenthwise.model.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What holds the work, and how many jaws it has. */
class HoldingTest {

    @ParameterizedTest
    @CsvSource({
        "FOUR_JAW, 4",
        "THREE_JAW, 3",
        "POWER_CHUCK, 3",
        "COLLET, 0",
        "CENTRES, 0",
        "FACE_PLATE, 0",
        "STEADY, 0",
        "UNSAID, 0"
    })
    void itHasSoManyJaws(Holding holding, int jaws) {
        assertEquals(jaws, holding.jaws());
    }

    /** A plan that only counts its jaws: no number but these says how they move. */
    @ParameterizedTest
    @CsvSource({"4, FOUR_JAW", "3, THREE_JAW", "0, UNSAID", "2, UNSAID", "6, UNSAID"})
    void aNumberOfJawsAloneSaysHowTheyMove(int jaws, Holding holding) {
        assertEquals(holding, Holding.ofJaws(jaws));
    }
}
