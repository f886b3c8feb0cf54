package org.tenthwise.app.sums.taper;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.taper.Taper;
import org.tenthwise.model.compute.taper.TaperOverRollers;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;

/** A taper in every way it is written, from one of them, from two diameters, or from readings over rollers. */
public final class TaperSum implements Sum {

    /** Which end of the taper stands on the plate. */
    public enum End {
        SMALL_DOWN,
        LARGE_DOWN
    }

    public static final String NAME = "taper";
    public static final Input<BigDecimal> INCLUDED = Input.figure("included").in(Quantity.ANGLE);
    public static final Input<BigDecimal> HALF = Input.figure("half").in(Quantity.ANGLE);
    public static final Input<List<BigDecimal>> RATIO = Input.figures("ratio").bounded("bound");
    public static final Input<BigDecimal> PER_FOOT = Input.positive("per_foot");
    public static final Input<BigDecimal> PER_UNIT = Input.positive("per_unit");
    public static final Input<Length> LARGE = Input.positiveLength("large");
    public static final Input<Length> SMALL = Input.lengthNotNegative("small").optional();
    public static final Input<Length> LENGTH = Input.positiveLength("length").optional();
    public static final Input<Length> OVER_LOW = Input.positiveLength("over_low");
    public static final Input<Length> OVER_HIGH =
            Input.positiveLength("over_high").optional();
    public static final Input<Length> HEIGHT = Input.positiveLength("height").optional();
    public static final Input<Length> ROLLER = Input.positiveLength("roller").optional();
    public static final Input<End> END = Input.choice("end", End.values()).optional();
    public static final Output<Double> INCLUDED_FOUND =
            Output.figure("included").in(Quantity.ANGLE);
    public static final Output<Double> HALF_FOUND = Output.figure("half").in(Quantity.ANGLE);
    public static final Output<Double> PER_UNIT_FOUND = Output.figure("per_unit");
    public static final Output<Double> PER_FOOT_FOUND = Output.figure("per_foot");
    public static final Output<Double> ONE_IN = Output.figure("one_in");
    public static final Output<Length> SMALL_FOUND = Output.length("small").sometimes();
    public static final Output<Length> LARGE_FOUND = Output.length("large").sometimes();
    private static final SumDescription DESCRIPTION = SumDescription.named(NAME)
            .takesOneOf(INCLUDED, HALF, RATIO, PER_FOOT, PER_UNIT, LARGE, OVER_LOW)
            .takes(SMALL, LENGTH, OVER_HIGH, HEIGHT, ROLLER, END)
            .gives(INCLUDED_FOUND, HALF_FOUND, PER_UNIT_FOUND, PER_FOOT_FOUND, ONE_IN, SMALL_FOUND, LARGE_FOUND);

    private static final MathContext FIGURES = new MathContext(3);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Input<?> way = given.oneOf(INCLUDED, HALF, RATIO, PER_FOOT, PER_UNIT, LARGE, OVER_LOW);
        given.refuseWithout(LARGE, SMALL, LENGTH);
        given.refuseWithout(OVER_LOW, OVER_HIGH, HEIGHT, ROLLER, END);
        if (way.equals(OVER_LOW)) {
            return overRollers(given);
        }
        if (way.equals(LARGE)) {
            Length large = given.get(LARGE);
            Length small = given.get(SMALL);
            Length length = given.get(LENGTH);
            Taper taper = given.about(LARGE, () -> Taper.ofDiameters(large, small, length));
            return write(given.inUnit(), taper).done();
        }
        return write(given.anyUnit(), taper(given, way)).done();
    }

    private static Taper taper(SumInput given, Input<?> way) {
        return given.about(way, () -> {
            if (way.equals(INCLUDED)) {
                return Taper.ofIncluded(given.get(INCLUDED));
            }
            if (way.equals(HALF)) {
                return Taper.ofHalf(given.get(HALF));
            }
            if (way.equals(RATIO)) {
                return ratio(given.get(RATIO));
            }
            return way.equals(PER_FOOT) ? Taper.ofPerFoot(given.get(PER_FOOT)) : Taper.ofPerUnit(given.get(PER_UNIT));
        });
    }

    private static Taper ratio(List<BigDecimal> ratio) {
        if (ratio.size() != 2) {
            throw new CannotAnswer(RATIO, "not-two", ratio.size());
        }
        return Taper.ofRatio(ratio.get(0), ratio.get(1));
    }

    private static SumResult overRollers(SumInput given) {
        Length low = given.get(OVER_LOW);
        Length high = given.get(OVER_HIGH);
        Length height = given.get(HEIGHT);
        TaperOverRollers over = given.about(OVER_HIGH, () -> new TaperOverRollers(low, high, height));
        End end = over.smallEndDown() ? End.SMALL_DOWN : End.LARGE_DOWN;
        given.find(END).filter(said -> said != end).ifPresent(said -> {
            throw new CannotAnswer(END, "not-so", given.text(END), given.text(OVER_LOW), given.text(OVER_HIGH));
        });
        SumResult.Writing answer = write(given.inUnit(), over.taper());
        given.find(ROLLER).ifPresent(roller -> {
            Length diameter = given.about(ROLLER, () -> over.atThePlate(roller));
            answer.put(end == End.SMALL_DOWN ? SMALL_FOUND : LARGE_FOUND, diameter)
                    .note("sharp");
        });
        Length slip = Length.of(given.inUnit() == Unit.INCH ? "0.001" : "0.01", given.inUnit());
        return answer.note(Message.ofValue("sum.taper.end", end))
                .note(
                        "sensitivity",
                        slip.in(given.inUnit()),
                        given.inUnit().symbol(),
                        BigDecimal.valueOf(over.turnsBy(slip)).round(FIGURES))
                .note("two-heights")
                .done();
    }

    private static SumResult.Writing write(Unit unit, Taper taper) {
        return DESCRIPTION
                .in(unit)
                .put(INCLUDED_FOUND, taper.included())
                .put(HALF_FOUND, taper.half())
                .put(PER_UNIT_FOUND, taper.perUnit())
                .put(PER_FOOT_FOUND, taper.perFoot())
                .put(ONE_IN, taper.oneIn());
    }
}
