package org.tenthwise.app.bench;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.SketchPicture;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.position.CentreDistanceSum;
import org.tenthwise.model.worked.BetweenCentres;

/** The distance of two bores from axis to axis. */
final class CentreDistanceForm implements BenchForm {

    private static final String BY = "centres_by";

    @Override
    public BenchKind kind() {
        return BenchKind.CENTRE_DISTANCE;
    }

    @Override
    public String sum() {
        return CentreDistanceSum.NAME;
    }

    /** Two bores in a plate. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.thick(Role.LINE, 4, 4, 92, 4, 92, 44, 4, 44, 4, 4);
        sketch.thinRing(26, 24, 12);
        sketch.thinRing(72, 24, 9);
        sketch.thick(Role.ACCENT, 26, 53, 72, 53);
        sketch.thin(Role.ACCENT, 26, 24, 26, 55);
        sketch.thin(Role.ACCENT, 72, 24, 72, 55);
    }

    private static String by(FormValues filled) {
        return filled.text(BY).isEmpty() ? CentreDistanceSum.OVER.key() : filled.text(BY);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        String by = by(filled);
        String of = by.equals(CentreDistanceSum.WEB.key()) ? "bore" : "plug";
        return List.of(
                FormField.ofTheForm(
                        BY, CentreDistanceSum.OVER.key(), CentreDistanceSum.BETWEEN.key(), CentreDistanceSum.WEB.key()),
                switch (by) {
                    case "between" -> FormField.of(CentreDistanceSum.BETWEEN);
                    case "web" -> FormField.of(CentreDistanceSum.WEB);
                    default -> FormField.of(CentreDistanceSum.OVER).called("over-plugs");
                },
                FormField.of(CentreDistanceSum.FIRST).called("first-" + of),
                FormField.of(CentreDistanceSum.SECOND).called("second-" + of));
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(CentreDistanceSum.DISTANCE);
    }

    @Override
    public String formula(FormValues filled) {
        return by(filled).equals(CentreDistanceSum.OVER.key()) ? "over" : "all";
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        return result.find(CentreDistanceSum.DISTANCE)
                .map(format::length)
                .map(distance -> SketchPicture.centres(
                        BetweenCentres.Read.valueOf(by(filled).toUpperCase(Locale.ROOT)),
                        filled.shown(by(filled)),
                        format.spoken(kind(), distance)));
    }
}
