package org.tenthwise.model.compute.roughness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

class RoughnessSettingsTest {

    /**
     * A table of settings in Swedish, symbols of ISO 21920-3; Whitehouse (2002) for ISO 4288 up to Rz 0.5; the rest
     * from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "ISO_21920,RA,0.001,0.08",
        "ISO_21920,RA,0.02,0.08",
        "ISO_21920,RA,0.0201,0.25",
        "ISO_21920,RA,0.1,0.25",
        "ISO_21920,RA,2.0,0.8",
        "ISO_21920,RA,2.01,2.5",
        "ISO_21920,RA,10,2.5",
        "ISO_21920,RA,50,8",
        "ISO_21920,RZ,0.16,0.08",
        "ISO_21920,RZ,0.8,0.25",
        "ISO_21920,RZ,16,0.8",
        "ISO_21920,RZ,80,2.5",
        "ISO_21920,RZ,80.1,8",
        "ISO_4288,RA,0.02,0.08",
        "ISO_4288,RA,0.1,0.25",
        "ISO_4288,RA,2,0.8",
        "ISO_4288,RA,10,2.5",
        "ISO_4288,RZ,0.1,0.08",
        "ISO_4288,RZ,0.5,0.25",
        "ISO_4288,RZ,10,0.8",
        "ISO_4288,RZ,12.5,2.5",
        "ISO_4288,RZ,50,2.5",
        "ISO_4288,RZ,200,8"
    })
    void theLimitIsInTheBandThatEndsAtIt(
            RoughnessEdition edition, RoughnessParameter parameter, String limit, String cutoff) {
        assertEquals(
                Length.of(cutoff, Unit.MILLIMETRE),
                RoughnessSettings.of(edition, parameter, new BigDecimal(limit)).cutoff());
    }

    /** Five sampling lengths make an evaluation length: ISO 4288:1996, from memory, and every row of the tables. */
    @ParameterizedTest
    @EnumSource
    void fiveCutOffsAreEvaluated(RoughnessEdition edition) {
        for (String limit : List.of("0.03", "0.3", "3", "30", "100")) {
            for (RoughnessParameter parameter : RoughnessParameter.values()) {
                RoughnessSettings settings = RoughnessSettings.of(edition, parameter, new BigDecimal(limit));
                assertEquals(settings.cutoff().times(new BigDecimal("5")), settings.evaluationLength());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.025", "200.1"})
    void whereTheOlderEditionHasNoBandItSaysSo(String limit) {
        String said = assertThrows(
                        IllegalArgumentException.class,
                        () -> RoughnessSettings.of(
                                RoughnessEdition.ISO_4288, RoughnessParameter.RZ, new BigDecimal(limit)))
                .getMessage();
        assertEquals("ISO 4288:1996 has no band for a limit of Rz " + limit + " µm", said);
    }

    @Test
    void anEditionIsKnownByNumberOrYear() {
        for (String newer : List.of("ISO 21920-3", "ISO 21920-3:2021", "21920", "2021", "DIN EN ISO 21920-3")) {
            assertEquals(List.of(RoughnessEdition.ISO_21920), RoughnessEdition.named(newer));
        }
        for (String older : List.of("ISO 4288", "ISO 4288:1996", "4288", "1996")) {
            assertEquals(List.of(RoughnessEdition.ISO_4288), RoughnessEdition.named(older));
        }
        assertEquals(2, RoughnessEdition.named("ISO 4288 / ISO 21920-3").size());
        assertTrue(assertThrows(IllegalArgumentException.class, () -> RoughnessEdition.named("new"))
                .getMessage()
                .contains("ISO 4288:1996"));
    }
}
