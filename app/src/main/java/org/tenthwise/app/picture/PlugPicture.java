package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.model.quantity.Length;

/**
 * A plug in its bore, the play between them drawn large; beside it the strip, with the plug's surface at the bottom and the
 * wall of the bore above it at the least and at the most play.
 *
 * @param strip clearances, wanted and found
 * @param play  what the section is drawn with: the middle of what was found, otherwise of what is wanted; less than nought
 *              where the plug is the bigger
 * @param full  the play that is drawn as wide as there is room, more than nought
 * @param notes lines under the section: sizes of bore and plug, what the hand felt
 */
public record PlugPicture(SizePicture strip, Length play, Length full, List<String> notes, String spoken) implements Picture {

    private static final double SMALL_TEXT = 18;
    /** Pixels of the full play, on each side. */
    private static final double GAP = 22;

    public PlugPicture {
        notes = List.copyOf(notes);
    }

    @Override
    public void draw(Drawing drawing) {
        SectionAndStrip.draw(strip, drawing, false, (room, scale) -> section(drawing, room));
    }

    private void section(Drawing drawing, Box room) {
        double line = drawing.lettered(26);
        double top = room.top() + drawing.lettered(34);
        double bottom = room.bottom() - 8 - line * notes.size();
        double thickness = (bottom - top) * 0.2;
        double left = room.left() + 4;
        double mouth = left + (room.width() - 8) * 0.66;
        double share = Math.max(-0.6, Math.min(1.5, play.millimetres().doubleValue() / full.millimetres().doubleValue()));
        double gap = Math.min(GAP, thickness * 0.5) * share;
        wall(drawing, left, mouth, top, top + thickness, true);
        wall(drawing, left, mouth, bottom - thickness, bottom, false);
        plug(drawing, new Box(left + (mouth - left) * 0.16, top + thickness + gap, room.right() - 26, bottom - thickness - gap));
        drawing.line(new Point(left, (top + bottom) / 2), new Point(room.right() - 4, (top + bottom) / 2), Stroke.CENTRE, Role.LINE);
        double y = bottom + drawing.lettered(21);
        for (String note : notes) {
            Label label = Label.of(note, SMALL_TEXT, Role.INK2);
            if (drawing.width(label) <= room.width()) {
                drawing.text(label, new Point(room.left(), y), Anchor.LEFT);
                y += line;
            }
        }
    }

    private static void wall(Drawing drawing, double left, double mouth, double top, double bottom, boolean above) {
        double inner = above ? bottom : top;
        double outer = above ? top : bottom;
        List<Point> broken = List.of(new Point(left + 6, outer), new Point(left + 13, outer + (inner - outer) * 0.35),
                new Point(left + 2, outer + (inner - outer) * 0.7), new Point(left + 8, inner));
        List<Point> ring = new ArrayList<>(broken);
        ring.add(new Point(mouth, inner));
        ring.add(new Point(mouth, outer));
        drawing.metal(List.of(ring));
        drawing.chain(broken, Stroke.THIN, Role.LINE);
        drawing.chain(List.of(broken.get(0), new Point(mouth, outer), new Point(mouth, inner), broken.get(3)), Stroke.OUTLINE, Role.LINE);
    }

    private static void plug(Drawing drawing, Box plug) {
        double chamfer = Math.min(10, plug.height() * 0.1);
        List<Point> outline = List.of(new Point(plug.left(), plug.top() + chamfer), new Point(plug.left() + chamfer, plug.top()),
                new Point(plug.right(), plug.top()), new Point(plug.right(), plug.bottom()),
                new Point(plug.left() + chamfer, plug.bottom()), new Point(plug.left(), plug.bottom() - chamfer));
        drawing.otherMetal(outline);
        drawing.ring(outline, Stroke.OUTLINE, Role.ACCENT);
    }
}
