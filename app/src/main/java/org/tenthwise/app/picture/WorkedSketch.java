package org.tenthwise.app.picture;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How something is read that a size is worked out of, drawn once for every such work and not to its sizes: the work cut
 * open, what lies against it, and a dimension for each reading. In lengths of its own, y downwards.
 *
 * @param metal the work, each of its parts by its outlines
 * @param neighbours plate, blocks, bar, anvils
 * @param pins pins, rolls, balls, plugs
 * @param axes lines of centre
 * @param dimensions as many as there are readings, in their order
 */
record WorkedSketch(
        List<List<List<Point>>> metal,
        List<List<Point>> neighbours,
        List<Pin> pins,
        List<List<Point>> axes,
        List<SketchedSize> dimensions) {

    /** Something round. */
    record Pin(Point centre, double radius) {}

    /**
     * What is read.
     *
     * @param from where its line begins
     * @param to where its line ends
     * @param edge what is touched at {@code from}; {@code otherEdge} at {@code to}
     * @param figure as it was read; absent until it is
     */
    record SketchedSize(Point from, Point to, Point edge, Point otherEdge, Optional<String> figure) {

        /** A level one at {@code y} between two points. */
        static SketchedSize level(double y, Point edge, Point otherEdge, Optional<String> figure) {
            return new SketchedSize(new Point(edge.x(), y), new Point(otherEdge.x(), y), edge, otherEdge, figure);
        }

        /** An upright one at {@code x} between two points. */
        static SketchedSize upright(double x, Point edge, Point otherEdge, Optional<String> figure) {
            return new SketchedSize(new Point(x, edge.y()), new Point(x, otherEdge.y()), edge, otherEdge, figure);
        }
    }

    WorkedSketch {
        metal = List.copyOf(metal);
        neighbours = List.copyOf(neighbours);
        pins = List.copyOf(pins);
        axes = List.copyOf(axes);
        dimensions = List.copyOf(dimensions);
    }

    /** What all of it takes. */
    Box bounds() {
        List<Point> all = Stream.of(
                        metal.stream().flatMap(List::stream).flatMap(List::stream),
                        neighbours.stream().flatMap(List::stream),
                        axes.stream().flatMap(List::stream),
                        dimensions.stream().flatMap(line -> Stream.of(line.from(), line.to())),
                        pins.stream()
                                .flatMap(pin -> Stream.of(
                                        pin.centre().plus(-pin.radius(), -pin.radius()),
                                        pin.centre().plus(pin.radius(), pin.radius()))))
                .flatMap(points -> points)
                .toList();
        return new Shape.Polyline(all, false).bounds();
    }
}
