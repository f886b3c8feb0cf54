package org.tenthwise.app.bench;

/**
 * The sums of the bench, in the order of a job: what the drawing asks for, the set-up and the hole, then the cut and
 * what is measured after it.
 */
public enum BenchKind {
    ZONE(new ZoneForm()),
    THREAD_LIMITS(new ThreadLimitsForm()),
    RUN_OUT(new RunOutForm()),
    DRILL_SET(new DrillSetForm()),
    NEXT_CUT(new NextCutForm()),
    WIRES(new OverWiresForm()),
    FIT(new FitForm()),
    TEMPERATURE(new AtTwentyForm());

    private final BenchForm form;

    BenchKind(BenchForm form) {
        this.form = form;
    }

    public BenchForm form() {
        return form;
    }
}
