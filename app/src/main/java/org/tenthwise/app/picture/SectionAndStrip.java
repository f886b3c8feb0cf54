package org.tenthwise.app.picture;

/**
 * Shares a sheet between a section and the strip that magnifies it; on a sheet too small for both, the strip stands
 * alone, and on one too low for that nothing does.
 */
final class SectionAndStrip {

    private static final double LEAST_SECTION = 170;
    private static final double LEAST_HEIGHT = 200;
    /** A strip lower than this is lettered smaller. */
    private static final double LOW_STRIP = 110;
    /** Under it a strip says nothing any more: its figures would lie on each other. */
    private static final double LEAST_STRIP = 60;

    private static final double GAP = 14;
    /** Of the width of the sheet. */
    private static final double MOST_COLUMNS = 0.36;

    /** Draws the section into its room; the scale is the strip's. */
    interface SectionDrawing {
        void draw(Box room, StripScale scale);
    }

    private SectionAndStrip() {}

    /** The strip alone: where it gets low, with smaller letters down to the smallest of a screen. */
    static void strip(SizePicture picture, Drawing drawing) {
        Frame whole = drawing.frame();
        double least = Math.min(1, whole.textScale());
        double text = Math.max(least, Math.min(whole.textScale(), whole.height() / LOW_STRIP));
        if (whole.height() >= LEAST_STRIP * least) {
            Drawing own = drawing.inset(new Point(0, 0), whole.lettered(text));
            new Strip(picture, own, own.frame().box(), StripLane.width(picture, own), false).draw();
        }
    }

    /** @param detail whether the section marks the spot that the strip magnifies */
    static void draw(SizePicture picture, Drawing drawing, boolean detail, SectionDrawing section) {
        Box frame = drawing.frame().box();
        double weight = Math.min(1, drawing.frame().lineScale());
        double lane = StripLane.width(picture, drawing);
        double both = frame.width() - lane - Strip.ticksWidth(drawing) - GAP;
        StripColumns columns = new StripColumns(picture, drawing);
        double most = Math.min(MOST_COLUMNS * frame.width(), both - LEAST_SECTION * weight);
        double width = both - columns.width(most);
        boolean shown = width >= LEAST_SECTION * weight
                && frame.height() >= drawing.lettered(LEAST_HEIGHT)
                && columns.showsTheLastCut(most);
        if (!shown) {
            strip(picture, drawing);
            return;
        }
        Strip strip = new Strip(
                picture, drawing, new Box(width + GAP, frame.top(), frame.right(), frame.bottom()), lane, detail);
        section.draw(new Box(1, frame.top(), width, frame.bottom()), strip.scale());
        strip.draw();
    }
}
