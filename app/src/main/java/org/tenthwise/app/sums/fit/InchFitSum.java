package org.tenthwise.app.sums.fit;

import java.math.BigDecimal;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.fit.Clearance;
import org.tenthwise.model.compute.fit.FitKind;
import org.tenthwise.model.compute.zone.InchFit;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** Limits and play of an inch size with a class of fit behind it. */
public final class InchFitSum implements Sum {

    public static final Input<BigDecimal> DIAMETER = ZoneInputs.DIAMETER.bounded("in-inches");
    public static final Input<String> CLASS = Input.name("class").bounded("bound");
    public static final Output<Length> HOLE_GREATEST = Output.length("hole_greatest");
    public static final Output<Length> HOLE_LEAST = Output.length("hole_least");
    public static final Output<Length> SHAFT_GREATEST = Output.length("shaft_greatest");
    public static final Output<Length> SHAFT_LEAST = Output.length("shaft_least");
    public static final Output<Length> CLEARANCE_GREATEST =
            Output.length("clearance_greatest").withSign();
    public static final Output<Length> CLEARANCE_LEAST =
            Output.length("clearance_least").withSign();
    public static final Output<FitKind> KIND = Output.word("kind", FitKind.values());
    private static final SumDescription DESCRIPTION = SumDescription.named("inch-fit")
            .takes(DIAMETER, CLASS)
            .gives(HOLE_GREATEST, HOLE_LEAST, SHAFT_GREATEST, SHAFT_LEAST, CLEARANCE_GREATEST, CLEARANCE_LEAST, KIND);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        given.refuse(Unit.MILLIMETRE, "inch-fit");
        Length diameter = Length.of(given.get(ZoneInputs.DIAMETER), Unit.INCH);
        InchFit fit = given.about(CLASS, () -> InchFit.read(given.text(CLASS)));
        PartSizes hole = given.about(ZoneInputs.DIAMETER, () -> PartSizes.of(fit.hole(diameter)));
        PartSizes shaft = given.about(ZoneInputs.DIAMETER, () -> PartSizes.of(fit.shaft(diameter)));
        Clearance clearance = hole.with(shaft);
        return shaft.write(
                        hole.write(DESCRIPTION.in(Unit.INCH), HOLE_GREATEST, HOLE_LEAST), SHAFT_GREATEST, SHAFT_LEAST)
                .put(CLEARANCE_GREATEST, clearance.greatest())
                .put(CLEARANCE_LEAST, clearance.least())
                .put(KIND, clearance.kind())
                .done();
    }
}
