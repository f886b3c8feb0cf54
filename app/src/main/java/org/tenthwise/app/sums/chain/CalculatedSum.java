package org.tenthwise.app.sums.chain;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.expression.Dimension;
import org.tenthwise.model.compute.expression.Expression;
import org.tenthwise.model.compute.expression.Reach;
import org.tenthwise.model.quantity.Length;

/** A size worked out of others by an expression, with its least and its greatest in the worst case. */
public final class CalculatedSum implements Sum {

    public static final Input<Expression> EXPRESSION =
            Input.name("expression").as(Expression::of).bounded("bound");
    public static final Input<Map<String, List<BigDecimal>>> NAMES =
            Input.byName("names").bounded("bound");
    public static final Input<Map<String, List<BigDecimal>>> UNCERTAINTIES =
            Input.byName("uncertainties").bounded("bound").optional();
    public static final Output<Length> VALUE = Output.length("value");
    public static final Output<Length> LEAST = Output.length("least");
    public static final Output<Length> GREATEST = Output.length("greatest");
    public static final Output<Length> EXPANDED = Output.length("expanded").sometimes();
    private static final int PLACES_OF_A_FIGURE = 12;
    private static final SumDescription DESCRIPTION = SumDescription.named("calculated")
            .takes(EXPRESSION, NAMES, UNCERTAINTIES)
            .gives(VALUE, LEAST, GREATEST, EXPANDED);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Expression expression = given.get(EXPRESSION);
        Map<String, List<BigDecimal>> sizes = given.get(NAMES);
        given.about(EXPRESSION, () -> {
            expression.expect(sizes.keySet());
            return expression;
        });
        Dimension made = given.about(EXPRESSION, () -> expression.dimension(dimensions(expression)));
        Reach reach = given.about(EXPRESSION, () -> expression.over(sizes));
        SumResult.Writing answer = DESCRIPTION.in(given.inUnit());
        put(answer, given, made, VALUE, reach.value());
        put(answer, given, made, LEAST, reach.least());
        put(answer, given, made, GREATEST, reach.greatest());
        if (given.has(UNCERTAINTIES)) {
            uncertain(answer, given, made, expression, sizes);
        }
        notes(answer, made, expression, sizes);
        return answer.done();
    }

    private static Map<String, Dimension> dimensions(Expression expression) {
        Map<String, Dimension> dimensions = new LinkedHashMap<>();
        Set<String> angles = expression.angles();
        expression
                .names()
                .forEach(name -> dimensions.put(name, angles.contains(name) ? Dimension.ANGLE : Dimension.LENGTH));
        return dimensions;
    }

    private static void put(
            SumResult.Writing answer, SumInput given, Dimension made, Output<Length> output, BigDecimal figure) {
        if (made.isLike(Dimension.LENGTH)) {
            answer.put(output, Length.of(figure, given.inUnit()));
        } else {
            answer.put(Output.full(output.key()), figure.setScale(PLACES_OF_A_FIGURE, RoundingMode.HALF_EVEN));
        }
    }

    private static void uncertain(
            SumResult.Writing answer,
            SumInput given,
            Dimension made,
            Expression expression,
            Map<String, List<BigDecimal>> sizes) {
        Map<String, BigDecimal> uncertainties = new LinkedHashMap<>();
        given.get(UNCERTAINTIES).forEach((name, figures) -> uncertainties.put(name, one(sizes, name, figures)));
        expression
                .expanded(sizes, uncertainties)
                .ifPresentOrElse(
                        expanded -> {
                            put(answer, given, made, EXPANDED, expanded);
                            answer.note("independent");
                        },
                        () -> answer.note("no-slope"));
        Set<String> without = new TreeSet<>(sizes.keySet());
        without.removeAll(uncertainties.keySet());
        if (!without.isEmpty()) {
            answer.note("exact", List.copyOf(without));
        }
    }

    private static BigDecimal one(Map<String, List<BigDecimal>> sizes, String name, List<BigDecimal> figures) {
        if (!sizes.containsKey(name)) {
            throw new CannotAnswer(UNCERTAINTIES, "no-name", name);
        }
        if (figures.size() != 1 || figures.get(0).signum() < 0) {
            throw new CannotAnswer(UNCERTAINTIES, "not-one", name);
        }
        return figures.get(0);
    }

    private static void notes(
            SumResult.Writing answer, Dimension made, Expression expression, Map<String, List<BigDecimal>> sizes) {
        if (!expression.angles().isEmpty()) {
            answer.note("angles", List.copyOf(expression.angles()));
        }
        if (made.isLike(Dimension.ANGLE)) {
            answer.note("angle");
        } else if (!made.isLike(Dimension.LENGTH)) {
            answer.note("number");
        }
        if (sizes.values().stream().anyMatch(each -> each.size() > 1)) {
            answer.note("between");
        }
    }
}
