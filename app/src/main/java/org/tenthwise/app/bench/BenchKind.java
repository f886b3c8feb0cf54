package org.tenthwise.app.bench;

/**
 * The sums of the bench by their groups, each group in the order of a job: what the drawing asks for, then what is
 * measured, then what becomes of it.
 */
public enum BenchKind {
    ZONE(BenchGroup.SIZE, new ZoneForm()),
    FIT(BenchGroup.SIZE, new FitForm()),
    GENERAL_TOLERANCE(BenchGroup.SIZE, new GeneralToleranceForm()),
    STACK(BenchGroup.SIZE, new StackForm()),
    GAUGE_TOLERANCE(BenchGroup.SIZE, new GaugeToleranceForm()),
    TEMPERATURE(BenchGroup.SIZE, new AtTwentyForm()),
    THREAD_LIMITS(BenchGroup.THREAD, new ThreadLimitsForm()),
    THREAD_PERCENT(BenchGroup.THREAD, new ThreadPercentForm()),
    WIRES(BenchGroup.THREAD, new OverWiresForm()),
    TAPER(BenchGroup.ANGLE, new TaperForm()),
    TAPER_BALLS(BenchGroup.ANGLE, new TaperBallsForm()),
    SINE_BAR(BenchGroup.ANGLE, new SineBarForm()),
    TAILSTOCK(BenchGroup.ANGLE, new TailstockForm()),
    DOVETAIL(BenchGroup.ANGLE, new DovetailForm()),
    BOLT_CIRCLE(BenchGroup.HOLES, new BoltCircleForm()),
    POSITION(BenchGroup.HOLES, new PositionForm()),
    CENTRE_DISTANCE(BenchGroup.HOLES, new CentreDistanceForm()),
    KEYSEAT(BenchGroup.SHAPE, new KeyseatForm()),
    OVER_PINS(BenchGroup.SHAPE, new OverPinsForm()),
    SPAN(BenchGroup.SHAPE, new SpanForm()),
    CHORDAL(BenchGroup.SHAPE, new ChordalForm()),
    RADIUS(BenchGroup.SHAPE, new RadiusForm()),
    ACROSS_CORNERS(BenchGroup.SHAPE, new AcrossCornersForm()),
    ROUGHNESS(BenchGroup.SURFACE, new RoughnessForm()),
    ROUGHNESS_SETTINGS(BenchGroup.SURFACE, new RoughnessSettingsForm()),
    RUN_OUT(BenchGroup.CUT, new RunOutForm()),
    DRILL_SET(BenchGroup.CUT, new DrillSetForm()),
    NEXT_CUT(BenchGroup.CUT, new NextCutForm());

    private final BenchGroup group;
    private final BenchForm form;

    BenchKind(BenchGroup group, BenchForm form) {
        this.group = group;
        this.form = form;
    }

    public BenchGroup group() {
        return group;
    }

    public BenchForm form() {
        return form;
    }
}
