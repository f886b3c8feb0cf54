package org.tenthwise.app.export.pdf;

import org.tenthwise.app.picture.Frame;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Pictures;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;

/** The part's half section with its characteristics numbered, where the plan has one. */
final class OutlineSection {

    private static final double GAP = 8;

    private final RecordContext matter;
    private final PageFlow flow;
    private final double height;

    OutlineSection(RecordContext matter, PageFlow flow, double height) {
        this.matter = matter;
        this.flow = flow;
        this.height = height;
    }

    void add() {
        new Pictures(matter.words()).numbered(matter.plan()).ifPresent(this::add);
    }

    private void add(Picture picture) {
        flow.need(height + 2 * GAP);
        Point corner = new Point(PageFlow.LEFT, flow.y() + GAP);
        flow.leaf().add(drawing -> picture.draw(drawing.inset(corner, Frame.print(PageFlow.WIDTH, height))));
        flow.down(height + 2 * GAP);
        flow.rule(Strokes.MEDIUM, Role.INK);
    }
}
