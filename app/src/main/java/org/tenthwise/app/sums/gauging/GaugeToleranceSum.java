package org.tenthwise.app.sums.gauging;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.gauging.GaugeClass;
import org.tenthwise.model.compute.gauging.GaugeTolerance;
import org.tenthwise.model.quantity.Length;

/** The tolerance a plain plug or ring is made to, beside what it may take of the part's. */
public final class GaugeToleranceSum implements Sum {

    public static final String NAME = "gauge-tolerance";
    public static final Input<GaugeClass> CLASS = Input.choice("class", byName());
    public static final Input<Length> SIZE = Input.positiveLength("size");
    public static final Input<Length> PART_TOLERANCE =
            Input.positiveLength("part_tolerance").optional();
    public static final Output<Length> TOLERANCE = Output.length("tolerance");
    public static final Output<Length> EACH_MEMBER =
            Output.length("each_member").sometimes();
    private static final SumDescription DESCRIPTION =
            SumDescription.named(NAME).takes(CLASS, SIZE, PART_TOLERANCE).gives(TOLERANCE, EACH_MEMBER);

    private static Map<String, GaugeClass> byName() {
        Map<String, GaugeClass> names = new LinkedHashMap<>();
        for (GaugeClass each : GaugeClass.values()) {
            names.put(each.name(), each);
        }
        return names;
    }

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        GaugeClass gaugeClass = given.get(CLASS);
        Length size = given.get(SIZE);
        Length tolerance = given.about(SIZE, () -> GaugeTolerance.of(gaugeClass, size));
        SumResult.Writing answer =
                DESCRIPTION.in(given.inUnit()).put(TOLERANCE, tolerance).note("side");
        given.find(PART_TOLERANCE).ifPresent(part -> {
            Length most = GaugeTolerance.eachMember(part);
            answer.put(EACH_MEMBER, most);
            if (tolerance.isAbove(most)) {
                tooWide(answer, gaugeClass, GaugeTolerance.within(most, size));
            }
        });
        return answer.done();
    }

    private static void tooWide(SumResult.Writing answer, GaugeClass asked, Optional<GaugeClass> fits) {
        fits.ifPresentOrElse(
                other -> answer.note("too-wide", asked.name(), other.name()),
                () -> answer.note("none-fits", asked.name()));
    }
}
