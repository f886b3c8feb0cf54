package org.tenthwise.app.bench;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.SketchPicture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.profile.RadiusSum;

/** A radius by its chord and height or over two rolls, and the height of a radius. */
final class RadiusForm implements BenchForm {

    private static final String BY = "radius_by";
    private static final String BY_RADIUS = "radius";
    private static final String OUTSIDE = "rolls_outside";
    private static final String INSIDE = "rolls_inside";

    @Override
    public BenchKind kind() {
        return BenchKind.RADIUS;
    }

    @Override
    public String sum() {
        return RadiusSum.NAME;
    }

    /** An arc, its chord and its height. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.arc(48, 48, 40, 183, 357);
        sketch.thin(Role.LINE, 8, 46, 88, 46);
        sketch.thick(Role.ACCENT, 48, 8, 48, 46);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        FormField by = FormField.ofTheForm(BY, "chord", BY_RADIUS, OUTSIDE, INSIDE);
        FormField rolls = FormField.of(RadiusSum.ROLLS);
        FormField over = FormField.of(RadiusSum.OVER).must().called("over-rolls");
        return switch (filled.text(BY)) {
            case BY_RADIUS ->
                List.of(
                        by,
                        FormField.of(RadiusSum.CHORD),
                        FormField.of(RadiusSum.RADIUS).must());
            case OUTSIDE -> List.of(by, rolls, over);
            case INSIDE ->
                List.of(by, rolls, over, FormField.of(RadiusSum.HEIGHT).must().called("rolls-height"));
            default ->
                List.of(
                        by,
                        FormField.of(RadiusSum.CHORD),
                        FormField.of(RadiusSum.HEIGHT).must().called("arc-height"));
        };
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return filled.is(BY, BY_RADIUS) ? List.of(RadiusSum.HEIGHT_FOUND) : List.of(RadiusSum.RADIUS_FOUND);
    }

    @Override
    public String called(Output<?> output, FormValues filled) {
        if (!output.key().equals(RadiusSum.HEIGHT_FOUND.key())) {
            return output.key();
        }
        return filled.is(BY, OUTSIDE) ? "contact-height" : filled.is(BY, INSIDE) ? "rolls-height" : "arc-height";
    }

    @Override
    public String formula(FormValues filled) {
        return switch (filled.text(BY)) {
            case OUTSIDE -> "outside";
            case INSIDE -> "inside";
            case BY_RADIUS -> "back";
            default -> "all";
        };
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return result.find(RadiusSum.RADIUS_FOUND).map(format::length).map(radius -> {
            String spoken = format.spoken(kind(), radius);
            return switch (filled.text(BY)) {
                case OUTSIDE -> SketchPicture.rolls(filled.shown(RadiusSum.OVER), spoken);
                case INSIDE ->
                    SketchPicture.rolls(filled.shown(RadiusSum.OVER), filled.shown(RadiusSum.HEIGHT), spoken);
                default ->
                    SketchPicture.chord(
                            result.find(RadiusSum.HEIGHT_FOUND)
                                    .map(format::length)
                                    .orElse(""),
                            spoken);
            };
        });
    }
}
