package org.tenthwise.app.picture.chart;

import org.tenthwise.app.picture.Anchor;
import org.tenthwise.app.picture.Box;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Label;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;

/** What stands over a scale from limit to limit; a word that has no room is left out. */
public record ShareHead(String lower, String middle, String upper) implements Picture {

    private static final double TEXT = 18;

    @Override
    public void draw(Drawing drawing) {
        draw(drawing, drawing.frame().box());
    }

    /** @param scale across which the scale runs, its words half a line under the top of the room */
    void draw(Drawing drawing, Box scale) {
        double y = drawing.lettered(13);
        String[] texts = {lower, middle, upper};
        double[] at = {-100, 0, 100};
        double left = 1;
        for (int i = 0; i < texts.length; i++) {
            Label label = Label.of(texts[i], TEXT, Role.INK2);
            double half = drawing.width(label) / 2;
            double wanted = Math.max(half + 2, ShareBand.x(scale, at[i]));
            double x = Math.min(wanted, drawing.frame().width() - half - 2);
            if (x - half >= left) {
                drawing.text(label, new Point(x, y), Anchor.CENTRE);
                left = x + half + 10;
            }
        }
    }

    @Override
    public String spoken() {
        return String.join(", ", lower, middle, upper);
    }
}
