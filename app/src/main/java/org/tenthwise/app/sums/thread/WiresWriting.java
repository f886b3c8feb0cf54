package org.tenthwise.app.sums.thread;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.thread.LeadAngle;
import org.tenthwise.model.compute.thread.LeadCorrection;
import org.tenthwise.model.compute.thread.MeasurementOverWires;
import org.tenthwise.model.compute.thread.WireSeat;
import org.tenthwise.model.compute.thread.WireSizes;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;

/** Writes down what is to be said about the wires and the lead, whichever way the sum went. */
final class WiresWriting {

    private static final MathContext EIGHT_FIGURES = new MathContext(8, RoundingMode.HALF_EVEN);
    private static final BigDecimal STEEP = BigDecimal.valueOf(5);

    private final SumInput given;
    private final ThreadInputs thread;
    private final Length wire;
    private final WireSizes sizes;
    private final SumResult.Writing answer;

    /** @throws CannotAnswer if the wire cannot touch the flanks */
    WiresWriting(SumInput given, SumResult.Writing answer, ThreadInputs thread, Length wire) {
        this.given = given;
        this.thread = thread;
        this.wire = wire;
        this.sizes = WireSizes.of(thread.form(), thread.groove());
        this.answer = answer;
        if (wire.isAbove(sizes.greatest())) {
            throw new CannotAnswer(
                    WireInputs.WIRE,
                    "on-the-crests",
                    given.text(WireInputs.WIRE),
                    plain(sizes.least()),
                    plain(sizes.greatest()));
        }
    }

    /**
     * @param diameter major diameter, if it is known
     * @param ofTheLead pitch diameter the lead angle is taken at
     * @throws CannotAnswer if the sizes do not go together
     */
    void write(
            MeasurementOverWires sum, Length pitchDiameter, Length over, Optional<Length> diameter, Length ofTheLead) {
        Length crest = diameter.orElseGet(() -> pitchDiameter.plus(
                thread.form().majorLessPitchDiameter(thread.groove().pitch())));
        if (!pitchDiameter.isBelow(crest)) {
            Input<Length> ofCrest =
                    given.has(OneWireSum.MAJOR_DIAMETER) ? OneWireSum.MAJOR_DIAMETER : WireInputs.DIAMETER;
            throw new CannotAnswer(
                    ofCrest, Message.of("given.not-above-pitch", ofCrest, plain(crest), plain(pitchDiameter)));
        }
        BigDecimal leadAngle = LeadAngle.degrees(thread.groove().lead(), ofTheLead);
        answer.put(WireInputs.LEAD_ANGLE, leadAngle.round(EIGHT_FIGURES))
                .put(WireInputs.BEST_WIRE, sizes.best())
                .put(WireInputs.WIRE_LEAST, sizes.least())
                .put(WireInputs.WIRE_GREATEST, sizes.greatest());
        new RootWriting(given, thread, wire, answer).write(sum, pitchDiameter, over, crest);
        seat(sum.seat(pitchDiameter, crest), sum, pitchDiameter, crest, over);
        lead(sum.leadCorrection(), leadAngle);
    }

    private void seat(WireSeat seat, MeasurementOverWires sum, Length pitchDiameter, Length crest, Length over) {
        if (seat == WireSeat.BELOW_THE_CREST) {
            answer.note(Message.of("sum.wires.below-crest", plain(over), plain(crest)));
        } else if (seat == WireSeat.ON_THE_CRESTS) {
            answer.note(Message.of("sum.wires.on-crests", plain(sum.contact(pitchDiameter)), plain(crest)));
        }
    }

    private void lead(Length correction, BigDecimal leadAngle) {
        if (LeadCorrection.matters(correction)) {
            answer.note(Message.of("sum.wires.lead", plain(correction)));
        }
        if (leadAngle.compareTo(STEEP) > 0) {
            answer.note(Message.of("sum.wires.steep"));
        }
    }

    /** To 0.1 µm, or a millionth of an inch. */
    private Message plain(Length length) {
        return WiresWriting.plain(length, given.inUnit());
    }

    static Message plain(Length length, Unit unit) {
        int places = unit == Unit.INCH ? 6 : 4;
        return Message.of("sum.wires.length", length.in(unit).setScale(places, RoundingMode.HALF_EVEN), unit.symbol());
    }
}
