package org.tenthwise.app.sums.profile;

import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.radius.Arc;
import org.tenthwise.model.compute.radius.ArcByChord;
import org.tenthwise.model.compute.radius.ArcOverRolls;
import org.tenthwise.model.quantity.Length;

/** A radius from chord and height or over two rolls, or the height from chord and radius. */
public final class RadiusSum implements Sum {

    public static final String NAME = "radius";

    public static final Input<Length> CHORD = Input.positiveLength("chord");
    public static final Input<Length> ROLLS = Input.positiveLength("rolls");
    public static final Input<Length> OVER = Input.positiveLength("over").optional();
    public static final Input<Length> HEIGHT = Input.positiveLength("height").optional();
    public static final Input<Length> RADIUS = Input.positiveLength("radius").optional();
    public static final Output<Length> RADIUS_FOUND = Output.length("radius");
    public static final Output<Length> HEIGHT_FOUND = Output.length("height");
    public static final Output<Length> ARC_LENGTH = Output.length("arc_length");
    public static final Output<Double> ARC_ANGLE = Output.figure("arc_angle").in(Quantity.ANGLE);
    public static final Output<Double> SENSITIVITY =
            Output.figure("sensitivity").withSign();
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takesOneOf(CHORD, ROLLS)
            .takes(OVER, HEIGHT, RADIUS)
            .gives(RADIUS_FOUND, HEIGHT_FOUND, ARC_LENGTH, ARC_ANGLE, SENSITIVITY);

    private static final double HALF_TURN = 180;

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        if (given.has(CHORD) == given.has(ROLLS)) {
            throw given.has(CHORD)
                    ? new CannotAnswer(CHORD, "both", given.text(CHORD), given.text(ROLLS))
                    : new CannotAnswer(CHORD, "neither");
        }
        Arc arc = given.has(CHORD) ? byChord(given) : overRolls(given);
        SumResult.Writing answer = DESCRIPTION
                .in(given.inUnit())
                .put(RADIUS_FOUND, arc.radius())
                .put(HEIGHT_FOUND, arc.height())
                .put(ARC_LENGTH, arc.length())
                .put(ARC_ANGLE, arc.angle())
                .put(SENSITIVITY, arc.sensitivity());
        if (arc.angle() > HALF_TURN) {
            answer.note("more-than-half");
        }
        return answer.note(given.has(CHORD) ? "contacts" : "rolls").done();
    }

    private static Arc byChord(SumInput given) {
        if (given.has(OVER)) {
            throw new CannotAnswer(OVER, "without-rolls", given.text(OVER));
        }
        if (given.has(HEIGHT) == given.has(RADIUS)) {
            throw given.has(HEIGHT)
                    ? new CannotAnswer(HEIGHT, "both", given.text(HEIGHT), given.text(RADIUS))
                    : new CannotAnswer(HEIGHT, "neither");
        }
        Length chord = given.get(CHORD);
        return given.find(HEIGHT)
                .map(height -> given.about(HEIGHT, () -> ArcByChord.ofHeight(chord, height)))
                .orElseGet(() -> given.about(RADIUS, () -> ArcByChord.ofRadius(chord, given.get(RADIUS))));
    }

    private static Arc overRolls(SumInput given) {
        if (given.has(RADIUS)) {
            throw new CannotAnswer(RADIUS, "with-rolls", given.text(RADIUS));
        }
        Length rolls = given.get(ROLLS);
        Length over = given.get(OVER);
        Arc convex = given.about(OVER, () -> ArcOverRolls.convex(rolls, over));
        return given.find(HEIGHT)
                .map(height -> given.about(HEIGHT, () -> ArcOverRolls.concave(rolls, over, height)))
                .orElse(convex);
    }
}
