package org.tenthwise.app.picture;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Run-out in two sections: their rings side by side, the one nearer the jaws first, each under its name; nothing where
 * only the names would fit.
 *
 * @param sections one or two
 */
public record RunOutSections(List<SectionRing> sections, String spoken) implements Picture {

    /** @param name of the section, with how far it is from the jaws */
    public record SectionRing(String name, RunOutPicture ring) {}

    private static final double HEADING = 20;
    private static final double LINE = 27;
    private static final double GAP = 14;

    public RunOutSections {
        sections = List.copyOf(sections);
    }

    @Override
    public void draw(Drawing drawing) {
        LetterSize.draw(drawing, this::side);
    }

    /** Side by side or one over the other, as the rings can be larger. @return how much could be shown */
    private int side(Drawing drawing) {
        Frame whole = drawing.frame();
        double gap = drawing.lettered(GAP);
        Frame across = whole.sized((whole.width() - gap * (sections.size() - 1)) / sections.size(), whole.height());
        Frame down = whole.sized(whole.width(), (whole.height() - gap * (sections.size() - 1)) / sections.size());
        boolean upright = layout(drawing.rehearsal(), down, new Point(0, down.height() + gap))
                        .smallestRing()
                > layout(drawing.rehearsal(), across, new Point(across.width() + gap, 0))
                        .smallestRing();
        Frame each = upright ? down : across;
        if (each.height() < drawing.lettered(2 * LINE + 3)) {
            return 0;
        }
        for (int i = 1; i < sections.size() && !upright; i++) {
            double x = i * (each.width() + gap) - gap / 2;
            drawing.down(x, 0, each.height(), Stroke.RULE, Role.RULE);
        }
        return layout(drawing, each, upright ? new Point(0, each.height() + gap) : new Point(each.width() + gap, 0))
                .draw();
    }

    /** Letters the names. @param next from the corner of one section to that of the next */
    private RunOutLayout layout(Drawing drawing, Frame each, Point next) {
        return new RunOutLayout(
                sections.stream().map(SectionRing::ring).toList(),
                IntStream.range(0, sections.size())
                        .mapToObj(i -> headed(
                                sections.get(i),
                                drawing,
                                new Point(i * next.x(), i * next.y()),
                                each.width(),
                                each.height()))
                        .toList());
    }

    /** Letters the name. @return the room under it */
    private static Drawing headed(SectionRing section, Drawing drawing, Point corner, double width, double height) {
        Frame whole = drawing.frame();
        double heading = drawing.lettered(LINE);
        Label name = Label.of(section.name(), HEADING, Role.INK).bold();
        Label fitting = name.sized(Math.min(HEADING, HEADING * width / drawing.width(name)));
        drawing.text(fitting, corner.plus(0, heading / 2), Anchor.LEFT);
        Frame own = whole.sized(width, height - heading);
        return drawing.inset(corner.plus(0, heading), own);
    }
}
