package org.tenthwise.app.picture.chart;

import java.util.ArrayList;
import java.util.List;
import org.tenthwise.app.picture.Anchor;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Label;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;

/** A sentence where there is nothing to draw. */
final class EmptyPicture {

    private static final double TEXT = 20;
    private static final double LINE = 28;

    private EmptyPicture() {}

    static void draw(Drawing drawing, String sentence) {
        List<String> lines = lines(drawing, sentence);
        double middle = drawing.frame().box().centreY();
        double step = drawing.lettered(LINE);
        for (int i = 0; i < lines.size(); i++) {
            double y = middle + (i - (lines.size() - 1) / 2.0) * step;
            drawing.text(
                    Label.of(lines.get(i), TEXT, Role.INK2),
                    new Point(drawing.frame().box().centreX(), y),
                    Anchor.CENTRE);
        }
    }

    private static List<String> lines(Drawing drawing, String sentence) {
        List<String> lines = new ArrayList<>();
        for (String word : sentence.split(" ")) {
            int last = lines.size() - 1;
            String longer = last < 0 ? word : lines.get(last) + " " + word;
            if (last >= 0
                    && drawing.width(Label.of(longer, TEXT, Role.INK2))
                            <= drawing.frame().width() - 16) {
                lines.set(last, longer);
            } else {
                lines.add(word);
            }
        }
        return lines;
    }
}
