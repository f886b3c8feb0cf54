package org.tenthwise.app.bench;

/** The sums of the bench, in the order they are offered. */
public enum BenchKind {
    WIRES(new OverWiresForm()),
    NEXT_CUT(new NextCutForm()),
    RUN_OUT(new RunOutForm()),
    FIT(new FitForm()),
    TEMPERATURE(new AtTwentyForm()),
    DRILL_SET(new DrillSetForm()),
    THREAD_LIMITS(new ThreadLimitsForm()),
    ZONE(new ZoneForm());

    private final BenchForm form;

    BenchKind(BenchForm form) {
        this.form = form;
    }

    public BenchForm form() {
        return form;
    }
}
