package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Letters sizes into a section, the deciding one first, as far as there is room. */
final class SectionLabels {

    private static final double TEXT = 20;

    private record Wanted(Label label, List<Point> places) {}

    private final Drawing drawing;
    private final FreeRoom free;
    private final List<Wanted> wanted = new ArrayList<>();

    SectionLabels(Drawing drawing, FreeRoom free) {
        this.drawing = drawing;
        this.free = free;
    }

    void size(SizePicture.Sized size, boolean decides, Point... places) {
        Label label =
                Label.of(size.figures(), TEXT, decides ? Role.ACCENT : Role.INK).onGround();
        if (decides) {
            wanted.add(0, new Wanted(label.bold(), List.of(places)));
        } else {
            wanted.add(new Wanted(label, List.of(places)));
        }
    }

    void letter() {
        for (Wanted one : wanted) {
            double width = drawing.width(one.label()) + 8;
            double height = drawing.height(one.label()) + 8;
            Optional<Box> box = free.place(width, height, one.places());
            box.ifPresent(at -> drawing.text(one.label(), at));
        }
    }
}
