package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is wrong with the figures of a strip, judged by what the pen left. */
final class StripOracle {

    /** From a line to the middle of a size that stands at it, in heights of its letters. */
    private static final double REACH = 1.5;

    private final SizePicture picture;
    private final RecordingPen pen;
    private final Frame frame;

    StripOracle(SizePicture picture, RecordingPen pen, Frame frame) {
        this.picture = picture;
        this.pen = pen;
        this.frame = frame;
    }

    List<String> faults() {
        List<String> faults = new ArrayList<>(pen.faults(frame));
        Stream.of(picture.upper(), picture.lower(), picture.judged())
                .flatMap(Optional::stream)
                .filter(size -> atTheRight(size.figures()).isEmpty())
                .forEach(size -> faults.add(size.figures() + " is missing"));
        faults.addAll(order());
        faults.addAll(reach());
        faults.addAll(importance());
        faults.addAll(sides());
        return faults;
    }

    private Optional<RecordingPen.Lettered> atTheRight(String text) {
        return pen.lettered().stream()
                .filter(written -> written.text().equals(text))
                .max(Comparator.comparingDouble(written -> written.box().right()));
    }

    private List<SizePicture.Sized> sizes() {
        return Stream.of(
                        picture.upper(),
                        picture.lower(),
                        picture.judged(),
                        picture.cut().map(SizePicture.Cut::aim))
                .flatMap(Optional::stream)
                .filter(size -> atTheRight(size.figures()).isPresent())
                .toList();
    }

    /** A greater size stands higher. */
    private List<String> order() {
        List<String> faults = new ArrayList<>();
        for (SizePicture.Sized one : sizes()) {
            for (SizePicture.Sized other : sizes()) {
                if (one.size().isAbove(other.size()) && middle(one.figures()) >= middle(other.figures())) {
                    faults.add(one.figures() + " does not stand above " + other.figures());
                }
            }
        }
        return faults;
    }

    private double middle(String figures) {
        return atTheRight(figures).orElseThrow().box().centreY();
    }

    /** Its own line runs over, under or into a size, or leads to it; and no other does. */
    private List<String> reach() {
        List<String> faults = new ArrayList<>();
        picture.upper().filter(this::written).ifPresent(limit -> faults.addAll(reach(limit, Role.INK, 3)));
        picture.lower().filter(this::written).ifPresent(limit -> faults.addAll(reach(limit, Role.INK, 3)));
        picture.judged().filter(this::written).ifPresent(judged -> faults.addAll(reach(judged, Role.ACCENT, 1.5)));
        return faults;
    }

    private boolean written(SizePicture.Sized size) {
        return atTheRight(size.figures()).isPresent();
    }

    private List<String> reach(SizePicture.Sized size, Role role, double width) {
        Box box = atTheRight(size.figures()).orElseThrow().box();
        boolean reached = pen.drawnIn(role).stream()
                .filter(mark -> mark.width() > 0)
                .map(mark -> mark.shape().bounds())
                .anyMatch(line -> line.right() > box.left() - 8
                        && line.height() < 0.01
                        && Math.abs(line.centreY() - box.centreY()) < REACH * box.height());
        return reached ? List.of() : List.of(size.figures() + " is far from its line");
    }

    /** No word that only helps is there where something that counts more found no place. */
    private List<String> importance() {
        boolean captions = Stream.of(picture.said().above(), picture.said().below())
                .anyMatch(words -> !words.isEmpty() && pen.texts().contains(words));
        Optional<String> figure = picture.cut().map(SizePicture.Cut::figures).or(() -> picture.distance()
                .filter(distance -> distance.length().signum() > 0)
                .map(SizePicture.Distance::figures));
        return captions
                        && figure.filter(wanted -> !pen.texts().contains(wanted))
                                .isPresent()
                ? List.of("a caption stands where " + figure.orElseThrow() + " is missing")
                : List.of();
    }

    /** A size in its column stands on the same side of each limit as its surface. */
    private List<String> sides() {
        List<Box> lines = pen.drawnIn(Role.INK).stream()
                .filter(mark -> mark.width() > 2)
                .map(mark -> mark.shape().bounds())
                .filter(line -> line.height() < 0.01)
                .sorted(Comparator.comparingDouble(Box::width).reversed())
                .limit(picture.limits().size())
                .sorted(Comparator.comparingDouble(Box::top))
                .toList();
        List<SizePicture.Sized> limits = Stream.of(picture.upper(), picture.lower())
                .flatMap(Optional::stream)
                .toList();
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < Math.min(lines.size(), limits.size()); i++) {
            Box line = lines.get(i);
            SizePicture.Sized limit = limits.get(i);
            picture.columns().stream()
                    .filter(column -> !column.decides())
                    .flatMap(column -> column.size().stream())
                    .filter(size -> pen.lettered().stream()
                            .filter(written -> written.text().equals(size.figures()))
                            .map(RecordingPen.Lettered::box)
                            .filter(box -> box.left() > line.left() && box.right() < line.right())
                            .anyMatch(box -> size.size().compareTo(limit.size()) * (box.centreY() - line.top()) > 0))
                    .forEach(size -> faults.add(size.figures() + " stands beyond " + limit.figures()));
        }
        return faults;
    }
}
