package org.tenthwise.app.picture;

import java.util.Optional;

/** An upright dimension whose figures stand over its upper end, clear of the part. */
final class RisingDimension {

    private static final double TEXT = 22;
    private static final double OVER = 20;
    private static final double GAP = 5;

    private RisingDimension() {}

    /** Room over the upper end that figures and heads take. */
    static double band(Drawing drawing) {
        return drawing.lettered(TEXT) + drawing.ruled(30);
    }

    /** @param clear height of what the figures stay over */
    static void draw(
            Drawing drawing, double x, double upper, double lower, double clear, Optional<SizePicture.Sized> judged) {
        Role role = judged.isPresent() ? Role.ACCENT : Role.LINE;
        Shape.Polyline line = drawing.dimension(new Point(x, upper), new Point(x, lower), role);
        judged.ifPresent(size -> {
            Label label = Label.of(size.figures(), TEXT, Role.ACCENT).bold();
            double half = drawing.height(label) / 2;
            double y = Math.min(
                    Math.min(clear, upper) - drawing.lettered(OVER),
                    line.bounds().top() - half - GAP);
            drawing.down(x, y + half + GAP, upper, Stroke.THIN, Role.ACCENT);
            drawing.text(label, new Point(x, y), Anchor.CENTRE);
        });
    }
}
