package org.tenthwise.app.ui.history;

import java.math.BigDecimal;
import org.tenthwise.app.InventedPlans;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.model.plan.Plan;

/** Parts of an invented pulley, made one after the other in a workshop: a journal, a width and a shoulder. */
public final class PartsMade {

    public static final String PART = "T-1";

    private static final String STEPS =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "diameter"
            name = "Journal \u2300%1$s"
            balloon = "13"
            designator = "KC"
            method = "Two places, turned about."
            lower = %2$s
            upper = %3$s
            %4$s
            places = ["middle"]
            gauge_kind = "micrometer"
            gauge = "%5$s"

            [[step]]
            number = 2
            operation = 10
            kind = "size"
            feature = "thickness"
            name = "Width of the rim over both faces"
            method = "On the flats."
            lower = 18.0
            upper = 18.2
            places = ["near", "far"]
            gauge_kind = "micrometer"
            gauge = "MC-7"

            [[step]]
            number = 3
            operation = 10
            kind = "size"
            feature = "length"
            name = "Shoulder, at least"
            method = "On the flats."
            lower = 4.0
            places = ["middle"]
            gauge_kind = "depth-micrometer"
            gauge = "DM-2"
            """;

    private final Workshop workshop;
    private int made;

    public PartsMade(Workshop workshop) {
        this.workshop = workshop;
    }

    /** With limits of the bore, a guard band or none, and the gauge named for it. */
    public static Plan plan(String issue, String lower, String upper, String band, String gauge) {
        String guard = band.isEmpty() ? "" : "guard_band = " + band;
        return InventedPlans.read(
                InventedPlans.text("mm", STEPS.formatted(lower.substring(0, 2), lower, upper, guard, gauge))
                        .replace("issue = \"1\"", "issue = \"" + issue + "\""));
    }

    public static Plan plan() {
        return plan("1", "30.000", "30.021", "", "MC-3");
    }

    /** Bores in thousandths over 30, each a part. */
    public PartsMade bores(Plan plan, String by, int... thousandths) {
        for (int over : thousandths) {
            part(plan, by, "AB-7731", bore(over));
        }
        return this;
    }

    private static String bore(int over) {
        return new BigDecimal(30).add(BigDecimal.valueOf(over, 3)).setScale(3).toPlainString();
    }

    /** @param bore as it is read; empty where the run is left before that */
    public RunSession part(Plan plan, String by, String lot, String bore) {
        made++;
        RunSession session = workshop.begin(plan, "%03d".formatted(made), lot, "Lathe 4", by);
        return Workshop.must(() -> {
            if (!bore.isEmpty()) {
                session.goTo(1);
                enter(session, bore);
                session.goTo(2);
                enter(session, "18.1%d".formatted(made % 7));
                enter(session, "18.1%d".formatted((made + 3) % 9));
                session.goTo(3);
                enter(session, "4.%d%d".formatted(made % 3, made % 5));
            }
            return session;
        });
    }

    private static void enter(RunSession session, String figure) throws Exception {
        session.enter(figure).objection().ifPresent(objection -> {
            throw new AssertionError(figure + " " + objection);
        });
    }

    /** A process that scatters and goes nowhere, in thousandths. */
    public static int[] scattered(int count) {
        int[] values = new int[count];
        for (int i = 0; i < count; i++) {
            values[i] = 10 + (i * 7919 + i * i * 31) % 11 - 5;
        }
        return values;
    }
}
