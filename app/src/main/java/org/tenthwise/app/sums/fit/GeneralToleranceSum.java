package org.tenthwise.app.sums.fit;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.tolerance.GeneralClass;
import org.tenthwise.model.words.Word;

/** How far off either way a dimension without a tolerance of its own may be. */
public final class GeneralToleranceSum implements Sum {

    public static final String NAME = "general-tolerance";
    public static final Input<GeneralClass> CLASS = Input.choice("class", classes());
    public static final Input<GeneralClass.Kind> KIND = Input.choice("kind", GeneralClass.Kind.values());
    public static final Input<BigDecimal> NOMINAL =
            Input.positive("nominal").in(Quantity.LENGTH).bounded("in-millimetres");
    public static final Output<BigDecimal> TOLERANCE = Output.exact("tolerance");
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takes(CLASS, KIND, NOMINAL)
            .gives(TOLERANCE)
            .on("linear", "radius", "angle");

    private static Map<String, GeneralClass> classes() {
        Map<String, GeneralClass> byLetter = new LinkedHashMap<>();
        for (GeneralClass known : GeneralClass.values()) {
            byLetter.put(known.letter(), known);
        }
        return byLetter;
    }

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        given.refuse(Unit.INCH, "general");
        GeneralClass classOf = given.get(CLASS);
        GeneralClass.Kind kind = given.get(KIND);
        BigDecimal nominal = given.get(NOMINAL);
        BigDecimal tolerance = given.about(NOMINAL, () -> classOf.at(kind, nominal));
        return DESCRIPTION
                .in(Unit.MILLIMETRE)
                .put(TOLERANCE, tolerance)
                .note("outside")
                .on(Word.of(kind));
    }
}
