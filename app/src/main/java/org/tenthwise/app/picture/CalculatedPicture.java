package org.tenthwise.app.picture;

import java.util.List;

/**
 * What goes into a size that is worked out, each with its figure and where it is from; beside it the strip with the
 * least and the greatest that come out.
 *
 * @param strip with a column for the least and one for the greatest
 */
public record CalculatedPicture(SizePicture strip, List<Part> parts, String spoken) implements Picture {

    private static final double TEXT = 24;
    private static final double SMALL = 18;
    private static final double LEAD = 1.3;

    /**
     * One line.
     *
     * @param figures empty while it is open
     * @param from number and name of its check
     */
    public record Part(String name, String figures, String from, boolean open) {}

    public CalculatedPicture {
        parts = List.copyOf(parts);
    }

    @Override
    public void draw(Drawing drawing) {
        SectionAndStrip.draw(strip, drawing, false, false, (on, room, scale) -> lines(on, room));
    }

    /** As many parts as there is room for. */
    private void lines(Drawing drawing, Box room) {
        double y = room.top() + drawing.lettered(TEXT);
        for (Part part : parts) {
            y = part(part, drawing, room, y);
        }
    }

    private static double part(Part part, Drawing drawing, Box room, double y) {
        Label name = Label.of(part.name() + " = " + part.figures(), TEXT, part.open() ? Role.INK2 : Role.INK)
                .bold();
        Label from = Label.of(part.from(), SMALL, Role.INK2);
        double below = y + drawing.lettered(TEXT) * LEAD;
        double next = below + drawing.lettered(TEXT) * LEAD * LEAD;
        if (next - drawing.lettered(SMALL) > room.bottom() || !fits(drawing, room, name)) {
            return y;
        }
        drawing.text(name, new Point(room.left(), y), Anchor.LEFT);
        if (fits(drawing, room, from)) {
            drawing.text(from, new Point(room.left(), below), Anchor.LEFT);
        }
        return next;
    }

    private static boolean fits(Drawing drawing, Box room, Label label) {
        return drawing.width(label) <= room.width();
    }
}
