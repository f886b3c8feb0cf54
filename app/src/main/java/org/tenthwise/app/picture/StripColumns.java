package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * How the width of a strip is shared out: earlier cuts get what their sizes take, as many of them as have room and the
 * last one before all others; the readings in hand share the rest.
 */
final class StripColumns {

    private static final double WIDEST = 44;
    private static final double NARROWEST = 12;
    private static final double NARROWEST_STRIP = 70;
    /** Share of a struck-out one. */
    private static final double STRUCK = 0.5;

    private static final double AIR = 8;

    private final Drawing drawing;
    private final List<SizePicture.ReadingColumn> inHand;
    private final List<SizePicture.ReadingColumn> earlier;

    StripColumns(SizePicture picture, Drawing drawing) {
        this.drawing = drawing;
        this.earlier = picture.columns().stream()
                .filter(column -> column.kind() == SizePicture.Kind.EARLIER)
                .toList();
        this.inHand = picture.columns().stream()
                .filter(column -> column.kind() != SizePicture.Kind.EARLIER)
                .toList();
    }

    /** What they would fill, up to {@code most}. */
    double width(double most) {
        double scale = Math.max(0.6, drawing.frame().textScale());
        double cuts = earlierWidth() * earlierShown(most);
        double left = Math.max(0, most - cuts);
        double labelled = labelledWidth();
        double usual = parts() * Math.max(NARROWEST, Math.min(WIDEST * scale, left / parts()));
        return cuts
                + Math.max(NARROWEST_STRIP * Math.min(1, scale), labelled <= left ? Math.max(labelled, usual) : usual);
    }

    /** Whether nothing was cut before, or what the last cut came to has room. */
    boolean showsTheLastCut(double most) {
        return earlier.isEmpty() || earlierShown(most) > 0;
    }

    /** The columns that share {@code width}, earlier cuts first. */
    List<SizePicture.ReadingColumn> shown(double width) {
        List<SizePicture.ReadingColumn> shown =
                new ArrayList<>(earlier.subList(earlier.size() - earlierShown(width), earlier.size()));
        shown.addAll(inHand);
        return shown;
    }

    /** The boxes of those columns. */
    List<Box> boxes(Box strip) {
        int cuts = earlierShown(strip.width());
        double unit = (strip.width() - cuts * earlierWidth()) / parts();
        List<Box> boxes = new ArrayList<>();
        double x = strip.left();
        for (SizePicture.ReadingColumn column : shown(strip.width())) {
            double width = column.kind() == SizePicture.Kind.EARLIER ? earlierWidth() : part(column) * unit;
            boxes.add(new Box(x, strip.top(), x + width, strip.bottom()));
            x += width;
        }
        return boxes;
    }

    private double parts() {
        return Math.max(1, inHand.stream().mapToDouble(StripColumns::part).sum());
    }

    private static double part(SizePicture.ReadingColumn column) {
        return column.kind() == SizePicture.Kind.STRUCK_OUT ? STRUCK : 1;
    }

    private double labelledWidth() {
        return parts()
                * inHand.stream()
                        .mapToDouble(column ->
                                (drawing.width(StripLabels.label(column.label()).bold()) + 6) / part(column))
                        .max()
                        .orElse(0);
    }

    private double earlierWidth() {
        return earlier.stream()
                        .mapToDouble(column -> Math.max(
                                drawing.width(ColumnFigures.label(column)),
                                drawing.width(StripLabels.label(column.label()))))
                        .max()
                        .orElse(0)
                + drawing.lettered(AIR);
    }

    /** The last one as long as the readings can be told apart, further ones only where they keep their labels. */
    private int earlierShown(double width) {
        int fit = (int) Math.floor((width - labelledWidth()) / earlierWidth());
        boolean last = width - earlierWidth() >= parts() * NARROWEST;
        return earlier.isEmpty() ? 0 : Math.min(earlier.size(), Math.max(fit, last ? 1 : 0));
    }
}
