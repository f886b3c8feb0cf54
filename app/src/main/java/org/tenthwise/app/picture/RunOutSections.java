package org.tenthwise.app.picture;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Run-out in two sections: their rings side by side, the one nearer the jaws first, each under its name and what it
 * runs out by; nothing where only the names would fit.
 *
 * @param sections one or two
 */
public record RunOutSections(List<SectionRing> sections, String spoken) implements Picture {

    /** @param name of the section, with how far it is from the jaws */
    public record SectionRing(String name, RunOutPicture ring) {}

    private static final double HEADING = 20;
    private static final double LINE = 26;
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
        boolean told = sections.stream().allMatch(section -> movementFits(section, drawing, each.width()));
        return new RunOutLayout(
                sections.stream()
                        .map(section -> told ? section.ring().withoutMovement() : section.ring())
                        .toList(),
                IntStream.range(0, sections.size())
                        .mapToObj(i ->
                                headed(sections.get(i), drawing, new Point(i * next.x(), i * next.y()), each, told))
                        .toList());
    }

    /** Whether what it runs out by stands at the right of its name. */
    private static boolean movementFits(SectionRing section, Drawing drawing, double width) {
        return movement(section)
                .map(label -> drawing.width(name(section)) + drawing.lettered(GAP) + drawing.width(label) <= width)
                .orElse(true);
    }

    private static Optional<Label> movement(SectionRing section) {
        return section.ring().movement().map(found -> Label.of(found.words(), HEADING, Role.ACCENT)
                .bold());
    }

    private static Label name(SectionRing section) {
        return Label.of(section.name(), HEADING, Role.INK).bold();
    }

    /** Letters the name, and what it runs out by where that is {@code told} there. @return the room under it */
    private static Drawing headed(SectionRing section, Drawing drawing, Point corner, Frame each, boolean told) {
        Frame whole = drawing.frame();
        double width = each.width();
        double heading = drawing.lettered(LINE);
        Label name = name(section);
        Label fitting = name.sized(Math.min(HEADING, HEADING * width / drawing.width(name)));
        drawing.text(fitting, corner.plus(0, heading / 2), Anchor.LEFT);
        movement(section)
                .filter(label -> told)
                .ifPresent(label -> drawing.text(label, corner.plus(width, heading / 2), Anchor.RIGHT));
        Frame own = whole.sized(width, each.height() - heading);
        return drawing.inset(corner.plus(0, heading), own);
    }
}
