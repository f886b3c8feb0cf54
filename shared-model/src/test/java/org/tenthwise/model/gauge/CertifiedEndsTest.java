package org.tenthwise.model.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/** Invented ends of a gauge for 20.000 to 20.021, by hand. */
class CertifiedEndsTest {

    private static Written mm(String figure) {
        return new Written(figure, Unit.MILLIMETRE);
    }

    private static CertifiedEnds ends(LimitGaugeForm form, String go, String notGo) {
        return new CertifiedEnds(form, Limits.between(mm("20.000"), mm("20.021")), mm(go), mm(notGo));
    }

    @Test
    void whatItAcceptsLiesBetweenItsEnds() {
        CertifiedEnds plug = ends(LimitGaugeForm.PLUG, "20.004", "20.019");
        assertEquals(mm("20.004"), plug.least());
        assertEquals(mm("20.019"), plug.greatest());
        CertifiedEnds ring = ends(LimitGaugeForm.RING, "20.018", "20.001");
        assertEquals(mm("20.001"), ring.least());
        assertEquals(mm("20.018"), ring.greatest());
    }

    @Test
    void anEndOnALimitIsInside() {
        assertEquals(mm("20.000"), ends(LimitGaugeForm.PLUG, "20.000", "20.021").least());
        assertEquals(mm("20.021"), ends(LimitGaugeForm.SNAP, "20.021", "20.000").greatest());
    }

    @ParameterizedTest
    @CsvSource({
        "PLUG,19.999,20.019,worn",
        "PLUG,20.004,20.022,NOT GO of 20.022",
        "PLUG,20.019,20.004,below its NOT GO",
        "PLUG,20.010,20.010,below its NOT GO",
        "RING,20.022,20.001,worn",
        "RING,20.018,19.999,NOT GO of 19.999",
        "SNAP,20.001,20.018,above its NOT GO",
        "THREAD_PLUG,19.999,20.019,worn",
        "THREAD_RING,20.022,20.001,worn"
    })
    void anEndThatLetsThroughWhatIsOutIsRefused(LimitGaugeForm form, String go, String notGo, String said) {
        String why = assertThrows(IllegalArgumentException.class, () -> ends(form, go, notGo))
                .getMessage();
        assertTrue(why.contains(said), why);
    }

    @Test
    void withOneLimitNothingIsSaidOfIt() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new CertifiedEnds(LimitGaugeForm.PLUG, Limits.atMost(mm("20.021")), mm("20.004"), mm("20.019")));
    }
}
