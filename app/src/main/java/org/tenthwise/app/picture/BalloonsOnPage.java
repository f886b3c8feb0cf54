package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Numbered rings over a page of a drawing, each at its spot. One that would lie on another stands beside it, with a
 * line to its spot.
 */
public final class BalloonsOnPage implements Picture {

    private static final double LETTERS = 16;
    private static final double RIM = 6;
    private static final double LEAST_RADIUS = 14;
    private static final double APART = 3;
    private static final double DOT = 3;
    private static final double SLACK = 0.01;
    private static final int WAYS = 12;
    private static final int ROUNDS = 4;
    private static final double ONCE_ROUND = 360;

    /**
     * A balloon.
     *
     * @param across share of the room's width
     * @param down share of the room's height
     * @param inHand whether it is drawn as the one in hand
     */
    public record Placed(String number, double across, double down, boolean inHand) {

        boolean isSeen() {
            return across >= 0 && across <= 1 && down >= 0 && down <= 1;
        }
    }

    /** Where a ring came to stand. */
    record Ring(Placed balloon, Point spot, Point centre, double radius) {

        boolean meets(Point other, double otherRadius) {
            return centre.distanceTo(other) < radius + otherRadius + APART;
        }

        boolean isMoved() {
            return centre.distanceTo(spot) > radius;
        }
    }

    private final List<Placed> balloons;
    private final String spoken;

    public BalloonsOnPage(List<Placed> balloons, String spoken) {
        this.balloons = balloons.stream().filter(Placed::isSeen).toList();
        this.spoken = spoken;
    }

    @Override
    public String spoken() {
        return spoken;
    }

    @Override
    public void draw(Drawing drawing) {
        List<Ring> rings = rings(drawing);
        rings.stream().filter(Ring::isMoved).forEach(ring -> {
            drawing.line(ring.spot(), ring.centre(), Stroke.NEIGHBOUR, Role.ACCENT);
            drawing.disc(ring.spot(), DOT, Role.ACCENT);
        });
        rings.forEach(ring -> draw(ring, drawing));
    }

    private static void draw(Ring ring, Drawing drawing) {
        boolean inHand = ring.balloon().inHand();
        drawing.disc(ring.centre(), ring.radius(), inHand ? Role.ACCENTFILL : Role.SHEET);
        drawing.circle(ring.centre(), ring.radius(), Stroke.NEIGHBOUR, Role.ACCENT);
        Label number = label(ring.balloon());
        drawing.text(number, ring.centre(), Anchor.CENTRE);
    }

    private static Label label(Placed balloon) {
        return Label.of(balloon.number(), LETTERS, balloon.inHand() ? Role.ONACCENT : Role.INK)
                .bold();
    }

    /** The rings in the order of the balloons, none of them on another while there is room. */
    List<Ring> rings(Drawing drawing) {
        List<Ring> rings = new ArrayList<>();
        for (Placed balloon : balloons) {
            double radius = Math.max(drawing.lettered(LEAST_RADIUS), drawing.width(label(balloon)) / 2 + RIM);
            Point spot = new Point(
                    balloon.across() * drawing.frame().width(),
                    balloon.down() * drawing.frame().height());
            rings.add(new Ring(balloon, spot, free(spot, radius, rings, drawing.frame()), radius));
        }
        return rings;
    }

    /** The nearest place where no ring stands yet; the spot itself where all round it is taken. */
    private static Point free(Point spot, double radius, List<Ring> taken, Frame frame) {
        Point inside = new Point(
                within(spot.x(), radius, frame.width() - radius), within(spot.y(), radius, frame.height() - radius));
        if (isFree(inside, radius, taken)) {
            return inside;
        }
        Box room = frame.box().grown(SLACK - radius);
        Optional<Point> beside = IntStream.rangeClosed(2, ROUNDS * (taken.size() + 1))
                .boxed()
                .flatMap(round -> IntStream.range(0, WAYS)
                        .mapToObj(way -> inside.polar(round * (radius + APART), way * ONCE_ROUND / WAYS)))
                .filter(point -> room.holds(new Box(point.x(), point.y(), point.x(), point.y())))
                .filter(point -> isFree(point, radius, taken))
                .findFirst();
        return beside.orElse(inside);
    }

    private static boolean isFree(Point centre, double radius, List<Ring> taken) {
        return taken.stream().noneMatch(ring -> ring.meets(centre, radius));
    }

    private static double within(double at, double least, double most) {
        return Math.max(least, Math.min(most, at));
    }
}
