package org.tenthwise.model.compute.taper;

import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.words.Refused;

/**
 * An inside taper, from how deep a small and a large ball lie in it, one after the other.
 *
 * <p>With R and r the radii, T and t the depths of their tops below the face: the middles lie c = (t + r) − (T + R)
 * apart; sin h = (R − r) / c, with h half the angle of the whole cone. At the face the diameter is 2 [(T + R) tan h + R
 * / cos h].
 *
 * <p>Angles in degrees, the mouth to 1 nm. A depth is below the face; a ball that stands proud has a depth less than
 * zero.
 *
 * <p>Refused are balls of which the larger does not lie higher, balls too near each other for any cone, and a large
 * ball that rests on the edge of the mouth: the taper is touched below the face only where T + R + R sin h is more than
 * zero.
 *
 * <p>Source: geometry of a circle that touches a line; common practice.
 *
 * @param largeBall diameter, more than that of the small one
 */
public record TaperByBalls(Length largeBall, Length smallBall, Length largeDepth, Length smallDepth) {

    public TaperByBalls {
        if (!largeBall.isAbove(smallBall)) {
            throw new Refused("model.taper-by-balls.not-larger");
        }
        Length apart = middle(smallBall, smallDepth).minus(middle(largeBall, largeDepth));
        if (!apart.isAbove(largeBall.minus(smallBall).half())) {
            throw new Refused("model.taper-by-balls.no-cone");
        }
        double contact = Nanometres.of(middle(largeBall, largeDepth))
                + Nanometres.of(largeBall.half()) * sine(largeBall, smallBall, apart);
        if (Nanometres.round(contact).signum() <= 0) {
            throw new Refused("model.taper-by-balls.on-the-edge");
        }
    }

    private static Length middle(Length ball, Length depth) {
        return depth.plus(ball.half());
    }

    private static double sine(Length largeBall, Length smallBall, Length apart) {
        return Nanometres.of(largeBall.minus(smallBall).half()) / Nanometres.of(apart);
    }

    public Taper taper() {
        double sine = sine();
        return new Taper(sine / Math.sqrt((1 - sine) * (1 + sine)));
    }

    /** Diameter of the taper at the face; its chamfer is not in it. */
    public Length mouth() {
        double tangent = taper().tangent();
        return Nanometres.round(2
                * (Nanometres.of(middle(largeBall, largeDepth)) * tangent
                        + Nanometres.of(largeBall.half()) * Math.hypot(1, tangent)));
    }

    private double sine() {
        return sine(largeBall, smallBall, middle(smallBall, smallDepth).minus(middle(largeBall, largeDepth)));
    }
}
