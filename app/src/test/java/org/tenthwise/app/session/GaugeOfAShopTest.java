package org.tenthwise.app.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.math.BigDecimal;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.app.text.GaugeWords;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** A kind of gauge that only this plan knows, set on a master and read at a thickness. Figures by hand. */
class GaugeOfAShopTest extends RunBegun {

    private static final int WEB = 1;

    GaugeOfAShopTest() {
        super(
                InventedPlans.inMillimetres(
                        """
                [[gauge_kind]]
                name = "web probe"
                makes = ["thickness"]
                set_on_master = true
                resolution = 0.001

                [[step]]
                number = 1
                operation = 10
                kind = "size"
                feature = "thickness"
                name = "Web"
                method = "Two places."
                lower = 7.980
                upper = 8.000
                places = ["front", "back"]
                cut_again = "too big"
                gauge_kind = "web probe"
                gauge = "WP-1"
                master = 8.000
                """));
    }

    /** Its dial goes up as the size grows: +0.004 on it beside 0 on a master of 8.001 is 8.005. */
    @Test
    void itIsSetReadAndKeptLikeAnyOther() throws Exception {
        session.goTo(WEB);
        taken(session.gauge().tellSense(true));
        enter("8.001", "0.000");
        Prompt.SenseInFigures figures =
                assertInstanceOf(Prompt.SenseInFigures.class, session.state().asked());
        assertEquals(false, figures.byPlunger());
        // on a size smaller than the master by 0.02, a dial that goes up with the size stands lower
        assertEquals(true, figures.reading().figure().signum() < 0);
        taken(session.gauge().confirmSense(true));
        enter("0.004", "-0.006");
        assertEquals(
                Written.of(new BigDecimal("8.005"), Unit.MILLIMETRE).length(),
                finding().measured().get(0).value());
        assertEquals(VerdictKind.CUT_AGAIN, standing());
        assertEquals(
                "WP-1 · dial goes up as the size grows · set on master 8.001 · dial at 0.000",
                new GaugeWords(Words.of(Locale.ENGLISH))
                        .line(session.state().setting().orElseThrow()));
        String run = session.id();
        ledger.close();
        ledger = new SqliteStores().open(store());
        RunSession again = new Runs(ledger, Clock.systemUTC()).open(run);
        again.goTo(WEB);
        assertEquals(
                VerdictKind.CUT_AGAIN, again.state().line().finding().verdict().standing());
        assertEquals(
                Optional.of(new GaugeKind("web probe", GaugeKind.Reference.MASTER)),
                again.state().setting().map(set -> set.gauge().kind()));
    }
}
