package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Words of a move that stand nearer to another jaw than to their own: read there, the wrong jaw is moved. */
public final class OwnJaw {

    /** A jaw as it was drawn. */
    private record Drawn(RunOutPicture.Jaw jaw, Point middle) {}

    private OwnJaw() {}

    /** Each with the jaw it stands at; empty where none is drawn. */
    public static List<String> strayed(Picture picture, RecordingPen pen) {
        RunOutPicture ring =
                picture instanceof RunOutSections both ? both.sections().get(0).ring() : (RunOutPicture) picture;
        List<Drawn> jaws = drawn(ring, pen);
        List<String> strayed = new ArrayList<>();
        pen.lettered().stream()
                .filter(text -> ring.jaws().stream().anyMatch(jaw -> isOf(jaw, text)))
                .forEach(text -> jaws.stream()
                        .filter(at -> !isOf(at.jaw(), text) && isNearest(at, text.box(), text, jaws))
                        .forEach(at -> strayed.add("\"%s\" stands at jaw %s"
                                .formatted(text.text(), at.jaw().number()))));
        return strayed;
    }

    private static boolean isOf(RunOutPicture.Jaw jaw, RecordingPen.Lettered text) {
        return text.text().equals(jaw.words()) || jaw.words().startsWith(text.text() + " ");
    }

    /** Nearer than every jaw the text is of, by its middle or by the end that reaches furthest. */
    private static boolean isNearest(Drawn at, Box box, RecordingPen.Lettered text, List<Drawn> jaws) {
        return Stream.of(box, new Box(box.centreX(), box.centreY(), box.centreX(), box.centreY()))
                .anyMatch(spot -> jaws.stream()
                        .filter(own -> isOf(own.jaw(), text))
                        .allMatch(own -> gap(spot, at.middle()) < gap(spot, own.middle()) - 1));
    }

    private static double gap(Box box, Point point) {
        double across = Math.max(0, Math.max(box.left() - point.x(), point.x() - box.right()));
        double down = Math.max(0, Math.max(box.top() - point.y(), point.y() - box.bottom()));
        return Math.hypot(across, down);
    }

    private static List<Drawn> drawn(RunOutPicture ring, RecordingPen pen) {
        List<Point> middles = pen.drawn().stream()
                .filter(mark -> mark.width() == 0
                        && mark.shape() instanceof Shape.Polyline
                        && (mark.role() == Role.PAPER || mark.role() == Role.ACCENTFILL))
                .map(mark -> mark.shape().bounds())
                .map(box -> new Point(box.centreX(), box.centreY()))
                .toList();
        return ring.jaws().stream()
                .flatMap(jaw -> middles.stream()
                        .filter(middle -> pen.lettered().stream()
                                .anyMatch(text -> text.text().equals(jaw.number()) && gap(text.box(), middle) == 0))
                        .map(middle -> new Drawn(jaw, middle)))
                .toList();
    }
}
