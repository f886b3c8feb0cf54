package org.tenthwise.app.export.pdf;

import java.util.List;
import org.tenthwise.app.picture.Stroke;

/** Line weights of the printed record, in pixels of 96 to the inch. */
final class Strokes {

    static final Stroke THIN = new Stroke(0.75, List.of());
    static final Stroke MEDIUM = new Stroke(1.25, List.of());
    static final Stroke THICK = new Stroke(2.5, List.of());

    private Strokes() {}
}
