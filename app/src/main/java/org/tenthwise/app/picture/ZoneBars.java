package org.tenthwise.app.picture;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;

/**
 * Tolerance zones side by side as bars, all to one scale, each measured from a line of its own that all have in common;
 * and beside them what lies between two of them.
 *
 * @param line words at the common line; absent where it is not drawn
 */
public record ZoneBars(List<Bar> bars, Optional<String> line, List<Between> between, String spoken) implements Picture {

    /**
     * A zone.
     *
     * @param inside whether the metal is on the side of greater sizes
     * @param from the size that lies on the common line
     * @param greatest absent where only the other limit is set; so {@code least}
     */
    public record Bar(
            String name,
            boolean inside,
            Length from,
            Optional<SizePicture.Sized> greatest,
            Optional<SizePicture.Sized> least) {}

    /** A distance from one size to another of the first bar's kind. */
    public record Between(String name, Length from, Length to, String figures) {}

    private static final double TEXT = 20;
    private static final double NAME_TEXT = 18;
    /** Of its column: a bar at the most. */
    private static final double WIDEST = 0.5;

    private static final double NARROWEST = 14;
    private static final double LINE = 26;
    private static final double LEAST_LINES = 7;

    public ZoneBars {
        bars = List.copyOf(bars);
        between = List.copyOf(between);
    }

    @Override
    public void draw(Drawing drawing) {
        new Laid(drawing).draw();
    }

    /** The bars in their room. */
    private final class Laid {

        private final Drawing drawing;
        private final Box frame;
        /** What lies between gives way where there is little height. */
        private final List<Between> shown;

        private final double lane;
        private final double column;
        private final double top;
        private final double bottom;
        private final double most;
        private final double least;

        Laid(Drawing drawing) {
            this.drawing = drawing;
            this.frame = drawing.frame().box();
            this.lane = line.map(words -> drawing.width(Label.of(words, NAME_TEXT, Role.INK2)) + 12)
                    .orElse(4.0);
            this.shown = frame.height() < LEAST_LINES * drawing.lettered(LINE) ? List.of() : between;
            this.column = (frame.width() - lane) / (bars.size() + shown.size());
            this.top = drawing.lettered(LINE) * 0.6;
            this.bottom = frame.bottom() - drawing.lettered(LINE) * (shown.isEmpty() ? 1.5 : 2.6);
            double high = offsets().max(Double::compare).orElse(0.0);
            double low = offsets().min(Double::compare).orElse(0.0);
            double span = high > low ? high - low : 1;
            this.most = high + span * 0.12;
            this.least = low - span * 0.12;
        }

        private Stream<Double> offsets() {
            Stream<Double> sizes = bars.stream().flatMap(bar -> Stream.of(bar.greatest(), bar.least())
                    .flatMap(Optional::stream)
                    .map(sized -> offset(bar.from(), sized.size())));
            return line.isPresent() ? Stream.concat(sizes, Stream.of(0.0)) : sizes;
        }

        private double offset(Length from, Length size) {
            return Nanometres.of(size.minus(from));
        }

        private double y(Length from, Length size) {
            return bottom - (offset(from, size) - least) / (most - least) * (bottom - top);
        }

        void draw() {
            line.ifPresent(words -> {
                double zero = bottom + least / (most - least) * (bottom - top);
                drawing.across(zero, lane, frame.right() - 2, Stroke.CENTRE, Role.LINE);
                drawing.text(
                        Label.of(words, NAME_TEXT, Role.INK2), new Point(2, Math.min(zero, bottom - 4)), Anchor.LEFT);
            });
            for (Between found : shown) {
                double end = dimensionAt(shown.indexOf(found)) + 8;
                for (Length size : List.of(found.from(), found.to())) {
                    double y = y(bars.get(0).from(), size);
                    drawing.across(y, lane + 8, end, Stroke.RULE, Role.RULE);
                }
            }
            for (int i = 0; i < bars.size(); i++) {
                bar(bars.get(i), new Box(lane + i * column, top, lane + (i + 1) * column, bottom));
            }
            for (int i = 0; i < shown.size(); i++) {
                double left = lane + (bars.size() + i) * column;
                between(shown.get(i), new Box(left, top, left + column, bottom));
            }
        }

        private double barWidth(Bar bar, Box room) {
            double figures = Stream.of(bar.greatest(), bar.least())
                    .flatMap(Optional::stream)
                    .mapToDouble(sized -> drawing.width(figures(sized)))
                    .max()
                    .orElse(0);
            return Math.max(NARROWEST, Math.min(WIDEST * room.width(), room.width() - figures - 24));
        }

        private Label figures(SizePicture.Sized sized) {
            Label full = Label.of(sized.figures(), TEXT, Role.INK).bold();
            return drawing.width(full) + NARROWEST + 24 <= column ? full : full.sized(NAME_TEXT);
        }

        private void bar(Bar bar, Box room) {
            double width = barWidth(bar, room);
            double left = room.left() + 8;
            double right = left + width;
            double upper =
                    bar.greatest().map(sized -> y(bar.from(), sized.size())).orElse(top - 8);
            double lower = bar.least().map(sized -> y(bar.from(), sized.size())).orElse(bottom + 8);
            List<Point> zone = new Box(left, upper, right, lower).corners();
            drawing.area(zone, Role.ZONE);
            if (bar.inside()) {
                drawing.metal(List.of(zone));
            } else {
                drawing.otherMetal(zone);
            }
            for (double side : new double[] {left, right}) {
                drawing.down(side, upper, lower, Stroke.NEIGHBOUR, Role.LINE);
            }
            double half = drawing.lettered(LINE) / 2;
            double middle = (upper + lower) / 2;
            double under = Math.min(Math.max(lower, middle + half), bottom);
            double over = Math.max(half, Math.min(Math.min(upper, middle - half), under - 2 * half));
            bar.greatest().ifPresent(sized -> limit(sized, left, right, upper, over));
            bar.least().ifPresent(sized -> limit(sized, left, right, lower, Math.max(under, over + 2 * half)));
            name(Label.of(bar.name(), NAME_TEXT, Role.INK2), room, left, 1);
        }

        private void limit(SizePicture.Sized sized, double left, double right, double at, double textAt) {
            drawing.across(at, left, right + 8, Stroke.OUTLINE, Role.LINE);
            if (Math.abs(textAt - at) > 1) {
                drawing.line(new Point(right + 8, at), new Point(right + 14, textAt), Stroke.THIN, Role.LINE);
            }
            drawing.text(figures(sized).onGround(), new Point(right + 14, textAt), Anchor.LEFT);
        }

        private double dimensionAt(int index) {
            return lane + (bars.size() + index) * column + Math.min(24, column / 4);
        }

        private void between(Between found, Box room) {
            Length from = bars.get(0).from();
            double x = dimensionAt(shown.indexOf(found));
            drawing.dimension(new Point(x, y(from, found.from())), new Point(x, y(from, found.to())), Role.ACCENT);
            name(Label.of(found.name(), NAME_TEXT, Role.INK2), room, room.left() + 8, 1);
            name(Label.of(found.figures(), TEXT, Role.ACCENT).bold(), room, room.left() + 8, 2);
        }

        private void name(Label label, Box room, double left, int row) {
            double widest = room.width() - 10;
            Label fitted =
                    drawing.width(label) <= widest ? label : label.sized(label.size() * widest / drawing.width(label));
            drawing.text(fitted, new Point(left, bottom + drawing.lettered(LINE) * (row - 0.1)), Anchor.LEFT);
        }
    }
}
