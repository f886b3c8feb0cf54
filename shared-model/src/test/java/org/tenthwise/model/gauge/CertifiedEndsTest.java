package org.tenthwise.model.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;
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
        "PLUG,20.004,19.999,below its NOT GO",
        "PLUG,20.010,20.010,below its NOT GO",
        "SNAP,20.001,20.018,above its NOT GO",
        "PLUG,19.978,20.019,no gauge for the limit",
        "PLUG,20.004,20.043,no gauge for the limit",
        "RING,20.043,20.001,no gauge for the limit",
        "RING,20.018,19.978,no gauge for the limit"
    })
    void endsTheWrongWayRoundOrOfAnotherPartAreRefused(LimitGaugeForm form, String go, String notGo, String said) {
        String why = assertThrows(IllegalArgumentException.class, () -> ends(form, go, notGo))
                .getMessage();
        assertTrue(why.contains(said), why);
    }

    /** A plug gauges the least bore with its GO, a ring the greatest shaft: each lets through on its own side. */
    @ParameterizedTest
    @CsvSource({
        "PLUG,19.999,20.019,true,LOWER,0.001",
        "PLUG,20.004,20.0225,false,UPPER,0.0015",
        "RING,20.022,20.001,true,UPPER,0.001",
        "RING,20.018,19.979,false,LOWER,0.021",
        "SNAP,20.022,20.001,true,UPPER,0.001",
        "THREAD_PLUG,19.999,20.019,true,LOWER,0.001",
        "THREAD_RING,20.018,19.999,false,LOWER,0.001"
    })
    void anEndOutsideItsLimitLetsThroughByThatMuch(
            LimitGaugeForm form, String go, String notGo, boolean isGo, Limit limit, String by) {
        assertEquals(
                List.of(new CertifiedEnds.Past(isGo, mm(isGo ? go : notGo), limit, mm(by))),
                ends(form, go, notGo).past());
    }

    @Test
    void endsInsideOrOnTheLimitsLetNothingThrough() {
        assertEquals(List.of(), ends(LimitGaugeForm.PLUG, "20.000", "20.021").past());
        assertEquals(List.of(), ends(LimitGaugeForm.RING, "20.021", "20.000").past());
        assertEquals(2, ends(LimitGaugeForm.PLUG, "19.999", "20.022").past().size());
    }

    @Test
    void withOneLimitNothingIsSaidOfIt() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new CertifiedEnds(LimitGaugeForm.PLUG, Limits.atMost(mm("20.021")), mm("20.004"), mm("20.019")));
    }
}
