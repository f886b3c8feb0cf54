package org.tenthwise.app.sums.thread;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.thread.MeasurementOverWires;
import org.tenthwise.model.compute.thread.OneWire;
import org.tenthwise.model.quantity.Length;

/** Pitch diameter from a measurement over one wire and the crest. */
final class OneWireSum implements Sum {

    @Override
    public String name() {
        return "one-wire";
    }

    @Override
    public Set<String> keys() {
        Set<String> keys = new TreeSet<>(ThreadInputs.KEYS);
        keys.addAll(Set.of("diameter", "wire", "over_one_wire", "major_diameter", "minor_diameter"));
        return keys;
    }

    @Override
    public SumResult of(SumInput given) {
        ThreadInputs thread = ThreadInputs.of(given);
        Length wire = given.positiveLength("wire");
        WiresWriting writing = new WiresWriting(given, thread, wire);
        Length major = given.positiveLength("major_diameter");
        Length over = OneWire.overWires(given.positiveLength("over_one_wire"), major);
        Optional<Length> basic = given.ifGiven("diameter", given::positiveLength);
        Length ofTheLead = basic.orElse(major)
                .minus(thread.form().majorLessPitchDiameter(thread.groove().pitch()));
        MeasurementOverWires sum = new MeasurementOverWires(thread.groove(), wire, ofTheLead);
        Length pitchDiameter = given.about(
                "over_one_wire",
                "with that wire and crest it leaves no room for a thread",
                () -> sum.pitchDiameter(over));
        SumResult.Writing answer = writing.answer().length("over_wires", over).length("pitch_diameter", pitchDiameter);
        writing.write(sum, pitchDiameter, over, Optional.of(major), ofTheLead);
        answer.note("One wire counts on a crest that runs true to the thread: turn the part half round, measure again, "
                + "and take the mean.");
        basic.filter(major::isAbove)
                .ifPresent(size ->
                        answer.note("major_diameter is above the basic diameter of %s: look for a burr on the crest."
                                .formatted(WiresWriting.plain(size, given.inUnit()))));
        return answer.on(
                "Over wires = 2 × over one wire − measured major diameter, geometry and common practice; then as "
                        + "over wires");
    }
}
