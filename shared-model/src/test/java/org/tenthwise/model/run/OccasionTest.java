package org.tenthwise.model.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.model.words.Refused;

/**
 * What must be said at the beginning of a run: SAE AS9102 Rev C, form 1, field 14, has a reason for full and partial.
 */
class OccasionTest {

    private static final Baseline BEFORE = new Baseline("LG-1-A-7", "ab".repeat(32));

    @Test
    void aFirstArticleIsNeverBegunWithoutAReason() {
        assertThrows(Refused.class, () -> Occasion.of(Purpose.FIRST_ARTICLE_FULL));
        assertThrows(Refused.class, () -> Occasions.fullFirstArticle(" "));
        assertThrows(Refused.class, () -> Occasions.partialFirstArticle(BEFORE, "", List.of(1)));
        assertTrue(Occasions.fullFirstArticle("new part").purpose().isFirstArticle());
    }

    @Test
    void aPartialOneNamesWhatItStandsOnAndWhatIsAffected() {
        assertThrows(Refused.class, () -> Occasions.partialFirstArticle(BEFORE, "new program", List.of()));
        assertThrows(
                Refused.class,
                () -> new Occasion(
                        Purpose.FIRST_ARTICLE_PARTIAL,
                        Optional.empty(),
                        "new program",
                        Optional.empty(),
                        List.of(1),
                        "",
                        List.of()));
        assertThrows(Refused.class, () -> new Baseline("LG-1-A-7", ""));
        assertEquals(
                List.of(2, 5),
                Occasions.partialFirstArticle(BEFORE, "why", List.of(5, 2, 5)).affected());
    }

    @Test
    void nothingButAPartialOneAndAMeasuringAgainStandsOnAnotherRun() {
        for (Purpose purpose : Purpose.values()) {
            if (!purpose.hasBaseline()) {
                assertThrows(
                        Refused.class,
                        () -> new Occasion(
                                purpose, Optional.of(BEFORE), "why", Optional.empty(), List.of(), "", List.of()),
                        purpose.name());
            }
        }
        assertEquals(Optional.of(BEFORE), Occasions.measuredAgain(BEFORE).baseline());
        assertThrows(Refused.class, () -> Occasion.of(Purpose.MEASURED_AGAIN));
    }

    @Test
    void aPieceInProcessIsGivenByItsNumberFromOne() {
        assertThrows(Refused.class, () -> Occasion.of(Purpose.IN_PROCESS));
        assertThrows(Refused.class, () -> Occasions.inProcess(0));
        assertEquals(Optional.of(1), Occasions.inProcess(1).piece());
    }

    @Test
    void anOrderAloneIsSomethingSaid() {
        assertTrue(Occasion.of(Purpose.NOT_STATED).saysNothing());
        assertFalse(Occasions.under("4500", List.of(), Occasion.NOT_STATED).saysNothing());
        assertFalse(Occasion.of(Purpose.FIRST_PIECE).saysNothing());
        assertThrows(Refused.class, () -> Occasions.under("", List.of(" "), Occasion.NOT_STATED));
    }
}
