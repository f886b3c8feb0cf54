package org.tenthwise.app.sums.fit;

import java.util.Locale;
import java.util.Set;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.fit.Clearance;
import org.tenthwise.model.compute.zone.InchFit;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;

/** Limits and play of an inch size with a class of fit behind it. */
final class InchFitSum implements Sum {

    private static final String CLASS = "class";

    @Override
    public String name() {
        return "inch-fit";
    }

    @Override
    public Set<String> keys() {
        return Set.of(ZoneInputs.DIAMETER, CLASS);
    }

    @Override
    public SumResult of(SumInput given) {
        if (given.unit().filter(unit -> unit == Unit.MILLIMETRE).isPresent()) {
            throw new CannotAnswer(
                    "unit",
                    "unit is mm: the classes of ANSI B4.1 stand behind a size in inches, so give diameter in in");
        }
        Length diameter = Length.of(given.positive(ZoneInputs.DIAMETER), Unit.INCH);
        InchFit fit = given.about(CLASS, () -> InchFit.read(given.text(CLASS)));
        PartSizes hole = given.about(ZoneInputs.DIAMETER, () -> PartSizes.of(fit.hole(diameter)));
        PartSizes shaft = given.about(ZoneInputs.DIAMETER, () -> PartSizes.of(fit.shaft(diameter)));
        Clearance clearance = hole.with(shaft);
        return shaft.write(hole.write(SumResult.in(Unit.INCH), "hole"), "shaft")
                .length("clearance_greatest", clearance.greatest())
                .length("clearance_least", clearance.least())
                .word("kind", clearance.kind().name().toLowerCase(Locale.ROOT))
                .on("ANSI B4.1-1967 (R2009), tables of preferred fits");
    }
}
