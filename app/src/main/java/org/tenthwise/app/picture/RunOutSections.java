package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;

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
    /** Room narrower than it is tall by more than this is parted the other way. */
    private static final double UPRIGHT = 1.1;

    public RunOutSections {
        sections = List.copyOf(sections);
    }

    @Override
    public void draw(Drawing drawing) {
        LetterSize.draw(drawing, this::side);
    }

    /** @return how much could be shown */
    private int side(Drawing drawing) {
        Frame whole = drawing.frame();
        boolean upright = whole.height() > UPRIGHT * whole.width();
        double gap = drawing.lettered(GAP);
        double width = upright ? whole.width() : (whole.width() - gap * (sections.size() - 1)) / sections.size();
        double height = upright ? (whole.height() - gap * (sections.size() - 1)) / sections.size() : whole.height();
        if (height < drawing.lettered(2 * LINE + 3)) {
            return 0;
        }
        List<Drawing> rooms = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            Point corner = upright ? new Point(0, i * (height + gap)) : new Point(i * (width + gap), 0);
            rooms.add(headed(sections.get(i), drawing, corner, width, height));
            if (i > 0 && !upright) {
                double x = corner.x() - gap / 2;
                drawing.down(x, 0, height, Stroke.RULE, Role.RULE);
            }
        }
        return new RunOutLayout(sections.stream().map(SectionRing::ring).toList(), rooms).draw();
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
