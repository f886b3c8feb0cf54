package org.tenthwise.app.picture;

/**
 * Shares a sheet between a section and the strip that magnifies it; on a sheet too small for both, the strip stands
 * alone, and on one too low for that nothing does.
 */
final class SectionAndStrip {

    private static final double LEAST_SECTION = 170;
    private static final double LEAST_HEIGHT = 200;
    /** Before there is any figure to write into the section. */
    private static final double LEAST_HEIGHT_UNREAD = 165;
    /** A strip lower than this is lettered smaller. */
    private static final double LOW_STRIP = 110;
    /** Under it a strip says nothing any more: its figures would lie on each other. */
    private static final double LEAST_STRIP = 60;

    private static final double GAP = 14;
    /** Of the width of the sheet. */
    private static final double MOST_COLUMNS = 0.36;

    /** Draws the section into its room; the scale is the strip's. */
    interface SectionDrawing {
        void draw(Drawing drawing, Box room, StripScale scale);
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

    /**
     * Before anything is read a strip has nothing to tell but its limits: then the section, which shows where to read,
     * counts more than the size of the letters.
     *
     * @param detail whether the section marks the spot that the strip magnifies
     * @param lettered whether the readings are written into it: with large letters it is left out unless all have room,
     *     as the strip by itself is wide enough for them
     */
    static void draw(SizePicture picture, Drawing drawing, boolean detail, boolean lettered, SectionDrawing section) {
        boolean unread =
                picture.columns().stream().noneMatch(column -> column.size().isPresent());
        if (unread) {
            LetterSize.draw(drawing, own -> both(picture, own, LEAST_HEIGHT_UNREAD, detail, lettered, section));
        } else {
            both(picture, drawing, LEAST_HEIGHT, detail, lettered, section);
        }
    }

    /** @param high the least height of both. @return how much could be shown: both before the strip alone */
    private static int both(
            SizePicture picture,
            Drawing drawing,
            double high,
            boolean detail,
            boolean lettered,
            SectionDrawing section) {
        Box frame = drawing.frame().box();
        double weight = Math.min(1, drawing.frame().lineScale());
        double lane = StripLane.width(picture, drawing);
        double both = frame.width() - lane - Strip.ticksWidth(drawing) - GAP;
        StripColumns columns = new StripColumns(picture, drawing);
        double least = Math.max(weight, lettered ? drawing.lettered(weight) : 0) * LEAST_SECTION;
        double most = Math.min(MOST_COLUMNS * frame.width(), both - least);
        double width = both - columns.width(most);
        boolean shown = width >= least && frame.height() >= drawing.lettered(high) && columns.showsTheLastCut(most);
        Strip strip = new Strip(
                picture, drawing, new Box(width + GAP, frame.top(), frame.right(), frame.bottom()), lane, detail);
        Box beside = new Box(1, frame.top(), width, frame.bottom());
        boolean large = lettered && drawing.frame().textScale() > 1;
        if (shown && (!large || writesAll(picture, drawing, section, beside, strip.scale()))) {
            section.draw(drawing, beside, strip.scale());
            strip.draw();
            return LetterSize.ALL;
        }
        strip(picture, drawing);
        return 0;
    }

    private static boolean writesAll(
            SizePicture picture, Drawing drawing, SectionDrawing section, Box room, StripScale scale) {
        NullPen pen = new NullPen();
        section.draw(drawing.rehearsal(pen), room, scale);
        return picture.taken()
                .flatMap(column -> column.size().stream())
                .map(SizePicture.Sized::figures)
                .allMatch(pen.written()::contains);
    }
}
