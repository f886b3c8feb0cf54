package org.tenthwise.app.sums.fit;

import java.util.List;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.fit.Clearance;
import org.tenthwise.model.compute.fit.SizeAtTemperature;
import org.tenthwise.model.compute.zone.ZoneLimits;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Message;

/** A greatest and a least size of one part of a fit, at 20 °C. */
record PartSizes(Length greatest, Length least) {

    static PartSizes of(ZoneLimits zone) {
        return new PartSizes(zone.greatest(), zone.least());
    }

    static PartSizes of(SumInput given, Input<Length> greatest, Input<Length> least) {
        PartSizes sizes = new PartSizes(given.get(greatest), given.get(least));
        if (sizes.greatest.isBelow(sizes.least)) {
            throw new CannotAnswer(
                    greatest,
                    Message.of("given.wrong-way-round", greatest, given.text(greatest), least, given.text(least)));
        }
        return sizes;
    }

    PartSizes at(SizeAtTemperature warmth) {
        return new PartSizes(warmth.now(greatest), warmth.now(least));
    }

    /** The play of this bore with a plug. */
    Clearance with(PartSizes plug) {
        return Clearance.of(List.of(greatest, least), List.of(plug.greatest, plug.least));
    }

    SumResult.Writing write(SumResult.Writing answer, Output<Length> most, Output<Length> fewest) {
        return answer.put(most, greatest).put(fewest, least);
    }
}
