package org.tenthwise.app.sums.thread;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.thread.MeasurementOverWires;
import org.tenthwise.model.compute.thread.RootClearance;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Message;

/** Writes down how the wire stands to the root: to the one measured, or else to that of the basic form. */
final class RootWriting {

    /** Deeper below its basic root, on radius and in pitches, than any of the forms is cut. */
    private static final BigDecimal MOST_CLEARANCE = new BigDecimal("0.1");

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private final SumInput given;
    private final ThreadInputs thread;
    private final Length wire;
    private final SumResult.Writing answer;

    RootWriting(SumInput given, ThreadInputs thread, Length wire, SumResult.Writing answer) {
        this.given = given;
        this.thread = thread;
        this.wire = wire;
        this.answer = answer;
    }

    /** @throws CannotAnswer if the root lies above the pitch line, or the wire is lost in it */
    void write(MeasurementOverWires sum, Length pitchDiameter, Length over, Length crest) {
        Optional<Length> minor = given.find(WireInputs.MINOR_DIAMETER);
        if (minor.isPresent()) {
            measured(minor.get(), pitchDiameter, over);
        } else {
            basic(sum.contact(pitchDiameter), over, crest);
        }
    }

    private void measured(Length minor, Length pitchDiameter, Length over) {
        if (!minor.isBelow(pitchDiameter)) {
            throw new CannotAnswer(WireInputs.MINOR_DIAMETER, "too-large", plain(minor), plain(pitchDiameter));
        }
        Length clearance = RootClearance.of(over, wire, minor);
        answer.put(WireInputs.ROOT_CLEARANCE, clearance);
        if (clearance.signum() <= 0) {
            answer.note(Message.of("sum.wires.bottoms", plain(clearance.abs())));
        }
    }

    private void basic(Length contact, Length over, Length crest) {
        Length root =
                crest.minus(thread.form().majorLessMinorDiameter(thread.groove().pitch()));
        Length deepest =
                root.minus(thread.groove().pitch().times(MOST_CLEARANCE).times(TWO));
        if (contact.isBelow(deepest)) {
            throw new CannotAnswer(WireInputs.WIRE, "on-the-root", plain(wire), plain(root));
        }
        Length lowest = over.minus(wire.times(TWO));
        if (lowest.isBelow(root)) {
            answer.note(Message.of("sum.wires.below-root", plain(lowest), plain(root)));
        }
    }

    private Message plain(Length length) {
        return WiresWriting.plain(length, given.inUnit());
    }
}
