package org.tenthwise.app.text;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.session.Objection;
import org.tenthwise.model.words.Words;

class ObjectionsTest {

    /** One without words ends a command with a report of a fault, in front of whoever typed. */
    @ParameterizedTest
    @EnumSource
    void everyObjectionHasASentenceAndAShortOneInEveryLanguage(Objection.Kind kind) {
        for (Words words : new Words[] {Words.ENGLISH, Words.of(Locale.GERMAN)}) {
            assertFalse(words.say(words.key("refused", kind), "12", "8").isBlank());
            assertFalse(words.say(words.key("run.objection", kind), "8").isBlank());
        }
    }
}
