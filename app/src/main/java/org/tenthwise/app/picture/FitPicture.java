package org.tenthwise.app.picture;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/**
 * A plug in its bore, where they are closest and where they are furthest apart: the wall of the bore over the plug, and
 * between them the clearance, magnified, both to one scale. Where the plug is the larger the two lie over one another.
 *
 * @param line the size they have in common; absent where it is not drawn
 */
public record FitPicture(Side closest, Side widest, Optional<SizePicture.Sized> line, String spoken)
        implements Picture {

    /**
     * One bore and one plug.
     *
     * @param figures of the clearance
     */
    public record Side(String name, SizePicture.Sized bore, SizePicture.Sized plug, String figures) {}

    private static final double TEXT = 22;
    private static final double NAME_TEXT = 18;
    private static final double LINE = 28;
    private static final double APART = 28;
    /** Of the height over the names: a block of metal at the least. */
    private static final double BLOCK = 0.24;

    @Override
    public void draw(Drawing drawing) {
        LetterSize.draw(drawing, own -> new Laid(own).draw());
    }

    private final class Laid {

        private final Drawing drawing;
        private final double foot;
        private final double bottom;
        private final double block;
        private final double lane;
        private final double highest;
        private final double lowest;
        private int shown;

        Laid(Drawing drawing) {
            this.drawing = drawing;
            Box frame = drawing.frame().box();
            this.foot = drawing.lettered(LINE);
            this.bottom = frame.bottom() - foot;
            this.block = Math.max(BLOCK * bottom, Math.min(drawing.lettered(LINE) * 1.1, 0.34 * bottom));
            this.lane = line.map(size -> drawing.width(lineWords(size)) + 12).orElse(2.0);
            List<Double> sizes = Stream.concat(
                            Stream.of(closest, widest).flatMap(side -> Stream.of(side.bore(), side.plug())),
                            line.stream())
                    .map(sized -> offset(sized.size()))
                    .toList();
            this.highest = sizes.stream().max(Double::compare).orElseThrow();
            this.lowest = sizes.stream().min(Double::compare).orElseThrow();
        }

        private double offset(Length size) {
            return Nanometres.of(size.minus(closest.bore().size()));
        }

        /** A greater size lies higher. */
        private double y(Length size) {
            double share = highest > lowest ? (offset(size) - lowest) / (highest - lowest) : 0.5;
            return bottom - block - share * (bottom - 2 * block);
        }

        /** How many figures there was room for. */
        int draw() {
            double width = (drawing.frame().width() - lane - APART - 2) / 2;
            line.ifPresent(size -> {
                double at = y(size.size());
                drawing.across(at, lane, drawing.frame().width() - 2, Stroke.CENTRE, Role.LINE);
                drawing.text(lineWords(size), new Point(2, at), Anchor.LEFT);
            });
            side(closest, new Box(lane, 1, lane + width, bottom));
            side(widest, new Box(lane + width + APART, 1, lane + 2 * width + APART, bottom));
            return shown;
        }

        private static Label lineWords(SizePicture.Sized size) {
            return Label.of(size.figures(), NAME_TEXT, Role.INK2);
        }

        private void side(Side side, Box room) {
            double bore = y(side.bore().size());
            double plug = y(side.plug().size());
            drawing.metal(List.of(new Box(room.left(), room.top(), room.right(), bore).corners()));
            drawing.otherMetal(new Box(room.left(), plug, room.right(), room.bottom()).corners());
            drawing.across(bore, room.left(), room.right(), Stroke.OUTLINE, Role.LINE);
            drawing.across(plug, room.left(), room.right(), Stroke.OUTLINE, Role.ACCENT);
            double arrow = room.right() - Math.min(40, room.width() * 0.2);
            drawing.dimension(new Point(arrow, bore), new Point(arrow, plug), Role.ACCENT);
            size(side.bore(), Role.INK, new Point(room.left() + 12, room.top() + block / 2));
            size(side.plug(), Role.ACCENT, new Point(room.left() + 12, room.bottom() - block / 2));
            words(side, room, bore, plug, arrow);
        }

        private void size(SizePicture.Sized sized, Role role, Point at) {
            Label label = Label.of(sized.figures(), TEXT, role).bold().onGround();
            if (drawing.height(label) + 10 <= block) {
                drawing.text(label, at, Anchor.LEFT);
                shown++;
            }
        }

        /** The clearance in the gap where there is room for it, else beside its name. */
        private void words(Side side, Box room, double bore, double plug, double arrow) {
            Label figures = Label.of(side.figures(), TEXT, Role.ACCENT).bold();
            Label name = Label.of(side.name(), NAME_TEXT, Role.INK2);
            double row = room.bottom() + foot / 2;
            boolean inside =
                    plug - bore >= drawing.height(figures) + 14 && drawing.width(figures) + 20 <= arrow - room.left();
            if (inside) {
                drawing.text(figures.onGround(), new Point(arrow - 14, (bore + plug) / 2), Anchor.RIGHT);
            }
            double named = drawing.width(name);
            boolean both = named + 10 + drawing.width(figures) <= room.width();
            if (inside ? named <= room.width() : both) {
                drawing.text(name, new Point(room.left(), row), Anchor.LEFT);
                shown++;
            }
            if (!inside) {
                drawing.text(figures, new Point(both ? room.left() + named + 10 : room.left(), row), Anchor.LEFT);
            }
        }
    }
}
