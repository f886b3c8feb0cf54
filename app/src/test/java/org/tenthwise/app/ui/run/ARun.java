package org.tenthwise.app.ui.run;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.tenthwise.app.DemoPlans;
import org.tenthwise.app.session.RunHeader;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.app.store.sqlite.SqliteStores;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;

/** A run of the demo's screw carrier, brought to where a test wants it. */
final class ARun implements AutoCloseable {

    static final int RUN_OUT = 4;
    static final int OUTSIDE = 9;
    static final int BORE = 13;
    static final int PLUG = 14;

    private final Ledger ledger;
    final RunSession session;
    private boolean open = true;

    ARun(Path store) throws Exception {
        this(store, DemoPlans.outsideAsRead());
    }

    /** A run of another plan, at its first step. */
    ARun(Path store, Plan plan) throws Exception {
        ledger = new SqliteStores().open(store);
        Clock clock = Clock.fixed(Instant.parse("2026-11-25T06:31:00Z"), ZoneOffset.ofHours(1));
        session = new Runs(ledger, clock).begin(new RunHeader(plan, "014", "AB-7731", "Lathe 4", "Setter 2"));
    }

    /** The first operation passed, and the step {@code step} in hand. */
    ARun setUpAndGoTo(int step) throws Exception {
        for (int confirm : List.of(1, 2, 3, 5)) {
            session.goTo(confirm);
            session.answer(Answer.YES);
        }
        session.goTo(RUN_OUT);
        session.turn().sweep(false);
        for (int section = 0; section < 2; section++) {
            enter("0.000", "0.002", "0.004", "0.005", "0.004", "0.002", "0.000", "-0.001");
        }
        session.goTo(step);
        return this;
    }

    ARun enter(String... figures) throws Exception {
        for (String figure : figures) {
            session.enter(figure);
        }
        return this;
    }

    /**
     * The bore in hand at 20 °C, its gauge set on the plan's master and reading zero there; its number rises with size.
     */
    ARun setBoreGauge() throws Exception {
        return setOnMaster().enter("20", "20");
    }

    /** The same, before any temperature. */
    ARun setOnMaster() throws Exception {
        session.gauge().tellSense(false);
        enter("30.000", "");
        session.gauge().confirmSense(true);
        return this;
    }

    @Override
    public void close() {
        if (open) {
            ledger.close();
        }
        open = false;
    }
}
