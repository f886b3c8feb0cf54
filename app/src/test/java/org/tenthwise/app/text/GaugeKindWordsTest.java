package org.tenthwise.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.words.Words;

class GaugeKindWordsTest {

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void everyKindThatIsKnownHasAName(String language) {
        Words words = Words.of(Locale.forLanguageTag(language));
        assertEquals(
                GaugeKind.KNOWN.stream().map(GaugeKind::key).collect(Collectors.toSet()),
                words.keysBelow("gauge-kind."));
        GaugeKind.KNOWN.forEach(kind -> assertFalse(GaugeWords.kind(words, kind).isBlank(), kind.key()));
    }

    @Test
    void aKindOfAShopIsCalledWhatThePlanCallsIt() {
        assertEquals(
                "ring probe", GaugeWords.kind(Words.ENGLISH, new GaugeKind("ring probe", GaugeKind.Reference.MASTER)));
    }
}
