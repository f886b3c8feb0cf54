package org.tenthwise.app.picture.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.tenthwise.app.picture.Anchor;
import org.tenthwise.app.picture.Box;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Label;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.Stroke;

/**
 * An index of capability as a bar over all it can be, with a line at what is asked for. Where the bar lies to the line
 * is what the parts show: behind it they support it, before it they contradict it, across it they are too few. The
 * third is the usual one and looks it.
 *
 * @param from least it can be; so {@code to}
 * @param observed of these parts
 * @param asked what is asked for
 */
public record CapabilityPicture(
        ChartFigure from, ChartFigure observed, ChartFigure to, ChartFigure asked, Shown shown, String spoken)
        implements Picture {

    /** What the parts show. */
    public enum Shown {
        SUPPORTS,
        CONTRADICTS,
        TOO_FEW
    }

    private static final double TEXT = 18;
    private static final double LINE = 25;
    private static final BigDecimal STEP = new BigDecimal("0.5");
    private static final double LEAST_END = 2;

    @Override
    public void draw(Drawing drawing) {
        Box frame = drawing.frame().box();
        double text = drawing.lettered(LINE);
        double side = drawing.lettered(TEXT) * 1.2;
        double axis = frame.bottom() - text - 2;
        double height = Math.max(8, Math.min(22, axis - 2 * text - 4));
        double top = Math.max(text + 4, axis - 12 - height);
        double bottom = Math.max(top + 6, Math.min(axis - 8, top + height));
        double least = Math.min(0, Math.floor(from.at() / STEP.doubleValue()) * STEP.doubleValue());
        double most = Math.max(LEAST_END, Math.ceil((Math.max(to.at(), asked.at()) + 0.1) / 0.5) * 0.5);
        Scale scale = new Scale(frame.left() + side, frame.right() - side, least, most);
        axis(drawing, scale, axis);
        double left = scale.x(from.at());
        double right = scale.x(to.at());
        double middle = scale.x(observed.at());
        Box bar = new Box(left, top, right, bottom);
        drawing.area(bar.corners(), ground());
        box(drawing, bar);
        drawing.down(middle, top - 3, bottom + 3, Stroke.OUTLINE, Role.INK);
        if (shown == Shown.CONTRADICTS) {
            drawing.down(
                    middle, top + 2, bottom - 2, Stroke.OUTLINE, drawing.frame().ground());
        }
        double line = scale.x(asked.at());
        drawing.down(line, text + 1, axis, Stroke.OUTLINE, Role.ACCENT);
        heads(drawing, scale, line, text / 2);
    }

    /** What speaks against the parts is filled as the mark of a failure is, and strikes the eye first. */
    private Role ground() {
        return switch (shown) {
            case SUPPORTS -> Role.ZONE;
            case CONTRADICTS -> Role.FAIL;
            case TOO_FEW -> Role.PRESSED;
        };
    }

    private static void box(Drawing drawing, Box bar) {
        drawing.across(bar.top(), bar.left(), bar.right(), Stroke.NEIGHBOUR, Role.INK);
        drawing.across(bar.bottom(), bar.left(), bar.right(), Stroke.NEIGHBOUR, Role.INK);
        drawing.down(bar.left(), bar.top(), bar.bottom(), Stroke.NEIGHBOUR, Role.INK);
        drawing.down(bar.right(), bar.top(), bar.bottom(), Stroke.NEIGHBOUR, Role.INK);
    }

    /** What is asked for stands over its line; what was observed beside it, where both have room. */
    private void heads(Drawing drawing, Scale scale, double line, double y) {
        Label wanted = Label.of(asked.text(), TEXT, Role.ACCENT).bold();
        double room = drawing.width(wanted);
        double left =
                Math.max(scale.left(), Math.min(line - room / 2, drawing.frame().width() - 4 - room));
        drawing.text(wanted, new Point(left, y), Anchor.LEFT);
        Label found = Label.of(observed.text(), TEXT, Role.INK).bold();
        double width = drawing.width(found);
        double at = Math.max(4, scale.x(observed.at()) - width / 2);
        double end = Math.min(at, left - 14 - width);
        double begin = Math.max(at, left + room + 14);
        boolean before = scale.x(observed.at()) <= line;
        double first = before ? end : begin;
        double second = before ? begin : end;
        for (double some : new double[] {first, second}) {
            if (some >= 4 && some + width <= drawing.frame().width() - 4) {
                drawing.text(found, new Point(some, y), Anchor.LEFT);
                return;
            }
        }
    }

    private static void axis(Drawing drawing, Scale scale, double y) {
        drawing.across(y, scale.left(), scale.right(), Stroke.THIN, Role.LINE);
        double apart = scale.x(1) - scale.x(0);
        BigDecimal every = apart / 2 >= drawing.lettered(44)
                ? STEP
                : apart >= drawing.lettered(44)
                        ? BigDecimal.ONE
                        : BigDecimal.valueOf(Math.ceil(drawing.lettered(44) / apart));
        BigDecimal at = BigDecimal.valueOf(scale.least())
                .divide(every, 0, RoundingMode.CEILING)
                .multiply(every);
        for (; at.doubleValue() <= scale.most(); at = at.add(every)) {
            double x = scale.x(at.doubleValue());
            drawing.down(x, y, y + 6, Stroke.THIN, Role.LINE);
            String figures =
                    at.setScale(1, RoundingMode.HALF_EVEN).toPlainString().replace('-', '\u2212');
            drawing.text(
                    Label.of(figures, TEXT, Role.INK2),
                    new Point(x, y + drawing.lettered(LINE) / 2 + 4),
                    Anchor.CENTRE);
        }
    }

    private record Scale(double left, double right, double least, double most) {

        double x(double value) {
            return left + (value - least) / (most - least) * (right - left);
        }
    }
}
