package org.tenthwise.app.bench;

import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Picture;

/** The drawn sign of a bench sum on its key, in a box of 96 by 56 in the middle of its room. */
public record BenchSign(BenchKind kind, String spoken) implements Picture {

    private static final double WIDTH = 96;
    private static final double HEIGHT = 56;

    @Override
    public void draw(Drawing drawing) {
        double scale = Math.min(drawing.frame().width() / WIDTH, drawing.frame().height() / HEIGHT);
        kind.form()
                .sign(new SignSketch(
                        drawing,
                        scale,
                        (drawing.frame().width() - WIDTH * scale) / 2,
                        (drawing.frame().height() - HEIGHT * scale) / 2));
    }
}
