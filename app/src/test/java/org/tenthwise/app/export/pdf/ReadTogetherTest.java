package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.words.Words;

/** How readings are taken together stands in the table of a record, whatever way a check names. */
class ReadTogetherTest {

    @ParameterizedTest
    @EnumSource(Combine.class)
    void everyWayHasItsWordsInTheTable(Combine combine) {
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            Words words = Words.of(locale);
            String said = words.say(words.key("record.together", combine), 12, "");
            assertTrue(combine == Combine.SIXTEEN_PERCENT || said.contains("12"), said);
        }
    }
}
