package org.tenthwise.app.bench;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.ZoneBars;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.fit.GeneralToleranceSum;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** What a dimension without a tolerance of its own may be off. */
final class GeneralToleranceForm implements BenchForm {

    private static final String ANGLE = "angle";

    @Override
    public BenchKind kind() {
        return BenchKind.GENERAL_TOLERANCE;
    }

    @Override
    public String sum() {
        return GeneralToleranceSum.NAME;
    }

    /** A zone to both sides of a nominal line. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.area(Role.ZONE, 34, 12, 62, 12, 62, 44, 34, 44);
        sketch.thick(Role.ACCENT, 34, 12, 62, 12, 62, 44, 34, 44, 34, 12);
        sketch.thin(Role.LINE, 6, 28, 90, 28);
    }

    private static boolean isAngle(FormValues filled) {
        return filled.is(GeneralToleranceSum.KIND, ANGLE);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        return List.of(
                FormField.of(GeneralToleranceSum.CLASS).called("general-class"),
                FormField.of(GeneralToleranceSum.KIND).called("general-kind"),
                FormField.of(GeneralToleranceSum.NOMINAL).called(isAngle(filled) ? "shorter-leg" : "nominal"));
    }

    /** The standard gives its tolerances in millimetres. */
    @Override
    public Optional<Unit> onlyUnit(FormValues filled) {
        return Optional.of(Unit.MILLIMETRE);
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(GeneralToleranceSum.TOLERANCE);
    }

    @Override
    public String called(Output<?> output, FormValues filled) {
        return "general-" + filled.text(GeneralToleranceSum.KIND);
    }

    @Override
    public String symbol(Output<?> figure, FormValues filled) {
        return isAngle(filled) ? "\u2032" : Unit.MILLIMETRE.symbol();
    }

    /** A length between its limits; an angle has no size to draw. */
    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return isAngle(filled)
                ? Optional.empty()
                : filled.length(GeneralToleranceSum.NOMINAL.key())
                        .flatMap(nominal -> result.find(GeneralToleranceSum.TOLERANCE)
                                .map(off -> Length.of(off, Unit.MILLIMETRE))
                                .map(off -> new ZoneBars(
                                        List.of(new ZoneBars.Bar(
                                                filled.text(GeneralToleranceSum.CLASS),
                                                false,
                                                nominal,
                                                Optional.of(format.greatest(nominal.plus(off))),
                                                Optional.of(format.least(nominal.minus(off))))),
                                        Optional.of(filled.text(GeneralToleranceSum.NOMINAL)),
                                        List.of(),
                                        format.spoken(kind(), filled.text(GeneralToleranceSum.NOMINAL)))));
    }
}
