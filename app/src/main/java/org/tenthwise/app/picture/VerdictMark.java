package org.tenthwise.app.picture;

import org.tenthwise.model.verdict.VerdictKind;

/** The shape of one verdict, as large as its room. */
public record VerdictMark(VerdictKind standing, String spoken) implements Picture {

    @Override
    public void draw(Drawing drawing) {
        Box room = drawing.frame().box();
        VerdictShape.draw(
                drawing,
                standing,
                new Point(room.centreX(), room.centreY()),
                Math.min(room.width(), room.height()) / 2);
    }
}
