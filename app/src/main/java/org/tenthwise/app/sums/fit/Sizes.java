package org.tenthwise.app.sums.fit;

import java.util.List;
import org.tenthwise.app.sums.Answer;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Given;
import org.tenthwise.model.compute.fit.Clearance;
import org.tenthwise.model.compute.fit.SizeAtTemperature;
import org.tenthwise.model.compute.zone.ZoneLimits;
import org.tenthwise.model.quantity.Length;

/** A greatest and a least size of one part of a fit, at 20 °C. */
record Sizes(Length greatest, Length least) {

    static Sizes of(ZoneLimits zone) {
        return new Sizes(zone.greatest(), zone.least());
    }

    /** @param part as the keys begin: {@code bore} or {@code plug} */
    static Sizes of(Given given, String part) {
        String greatest = part + "_greatest";
        String least = part + "_least";
        Sizes sizes = new Sizes(given.positiveLength(greatest), given.positiveLength(least));
        if (sizes.greatest.isBelow(sizes.least)) {
            throw new CannotAnswer(
                    greatest,
                    "%s %s is below %s %s: the limits are the wrong way round"
                            .formatted(greatest, given.text(greatest), least, given.text(least)));
        }
        return sizes;
    }

    Sizes at(SizeAtTemperature warmth) {
        return new Sizes(warmth.now(greatest), warmth.now(least));
    }

    /** The play of this bore with a plug. */
    Clearance with(Sizes plug) {
        return Clearance.of(List.of(greatest, least), List.of(plug.greatest, plug.least));
    }

    Answer.Writing write(Answer.Writing answer, String part) {
        return answer.length(part + "_greatest", greatest).length(part + "_least", least);
    }
}
