package org.tenthwise.app.picture;

/** Shares a sheet between a section and the strip that magnifies it; on a sheet too small for both, the strip stands alone, and on one too low for that nothing does. */
final class SectionAndStrip {

    private static final double LEAST_SECTION = 170;
    private static final double LEAST_HEIGHT = 200;
    /** Under it a strip says nothing any more: its figures would lie on each other. */
    private static final double LEAST_STRIP = 110;
    private static final double GAP = 14;

    /** Draws the section into its room; the scale is the strip's. */
    interface Section {
        void draw(Box room, StripScale scale);
    }

    private SectionAndStrip() {
    }

    /** @param detail whether the section marks the spot that the strip magnifies */
    static void draw(SizePicture picture, Drawing drawing, boolean detail, Section section) {
        Box frame = drawing.frame().box();
        if (frame.height() < drawing.lettered(LEAST_STRIP)) {
            return;
        }
        double weight = Math.min(1, drawing.frame().lineScale());
        double lane = StripLane.width(picture, drawing);
        double width = frame.width() - lane - Strip.ticksWidth(drawing) - Strip.columnsWidth(picture, drawing) - GAP;
        boolean shown = width >= LEAST_SECTION * weight && frame.height() >= drawing.lettered(LEAST_HEIGHT);
        Box rest = new Box(shown ? width + GAP : 0, frame.top(), frame.right(), frame.bottom());
        Strip strip = new Strip(picture, drawing, rest, lane, shown && detail);
        if (shown) {
            section.draw(new Box(1, frame.top(), width, frame.bottom()), strip.scale());
        }
        strip.draw();
    }
}
