package org.tenthwise.model.record;

import java.util.Optional;
import org.tenthwise.model.compute.drilling.DrillPoint;
import org.tenthwise.model.compute.thread.AcrossGrooves;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.run.Pass;

/**
 * How the gauge touched the work in one pass of a size, and what that takes off its readings.
 *
 * <p>The readings are brought to 20 °C first and corrected for contact after that: the pitch and the drill of a plan
 * are those at 20 °C, as the wires of a thread are. The other way round comes to the same within (P² / 4D) times the
 * growth: 0.04 µm on Tr 40×7 at 30 °C.
 *
 * @param contact what the plan says of the work
 * @param said what the person at the machine says, where that is asked; absent until it is answered
 */
public record Touch(Contact contact, Optional<Answer> said) {

    public static Touch of(CheckOfSize check, Pass pass) {
        return new Touch(
                check.contact(),
                check.questions().isEmpty() ? Optional.empty() : pass.answer(Question.GROOVES_TOUCHED));
    }

    /** Answers still to come. */
    int missing() {
        return contact instanceof Contact.InGrooves grooves && grooves.standsAskew() && said.isEmpty() ? 1 : 0;
    }

    /**
     * What is added to a size as read; absent where contact changes nothing, and while it is not said. A reading too
     * small for the grooves it was read in comes to zero, which no size is.
     */
    Optional<Length> correction(Length read) {
        if (contact instanceof Contact.InGrooves grooves) {
            return said.map(answer -> answer == Answer.OPPOSITE_GROOVES ? askew(read, grooves) : Length.ZERO);
        }
        Length off = most(contact);
        return off.signum() == 0 ? Optional.empty() : Optional.of(off.negated());
    }

    private Length askew(Length read, Contact.InGrooves grooves) {
        return read.isAbove(most(contact))
                ? AcrossGrooves.diameter(read, grooves.pitch(), grooves.starts())
                        .minus(read)
                : read.negated();
    }

    /**
     * What a reading cannot be less than: what is taken off for the point of the drill, or how far points stand askew.
     */
    public static Length most(Contact contact) {
        if (contact instanceof Contact.InGrooves grooves) {
            return AcrossGrooves.askew(grooves.pitch(), grooves.starts());
        }
        return contact instanceof Contact.DrilledHole hole && hole.readTo() == Contact.ReadTo.POINT
                ? DrillPoint.length(hole.diameter().length(), hole.pointAngle())
                : Length.ZERO;
    }
}
