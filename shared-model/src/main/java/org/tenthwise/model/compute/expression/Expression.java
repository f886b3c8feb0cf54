package org.tenthwise.model.compute.expression;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.tenthwise.model.words.Refused;

/**
 * A size worked out of others, as it is written on paper: {@code (od − id) ÷ 2 − e}.
 *
 * <p>Figures and names; + − × ÷ (also * and /), brackets, a sign before a part, {@code ^} with 2 to 9; {@code sqrt},
 * {@code abs}, {@code sin}, {@code cos}, {@code tan}, {@code asin}, {@code acos}, {@code atan} in degrees; {@code min},
 * {@code max} and {@code mean} of several parts, or of one name over its places; {@code pi}.
 *
 * <p>In the unit of the sizes. Exact decimals with + − × and a division that comes out; else to 34 figures, with sines
 * and the like to 15.
 *
 * <p>A name with sizes at several places counts with any size between the least and the greatest of them, independent
 * of all other names: the least and the greatest of the expression are those of the worst of all cases.
 *
 * <p>Source: arithmetic; uncertainty by JCGM 100:2008 (GUM), 5.1.2, for sources that do not depend on one another.
 */
public final class Expression {

    private final String text;
    private final Term term;

    private Expression(String text, Term term) {
        this.text = text;
        this.term = term;
    }

    /** @throws Refused with the character where it cannot be read on */
    public static Expression of(String text) {
        return new Expression(text, ExpressionReader.read(text));
    }

    /** Whether an expression can have {@code word} as a name. */
    public static boolean isName(String word) {
        return ExpressionReader.isName(word);
    }

    /** As they stand in it. */
    public Set<String> names() {
        return term.names().collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Those that stand for an angle: only in what a sine, a cosine or a tangent is of. */
    public Set<String> angles() {
        return term.angles().collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** @throws Refused where it has a name that is not {@code given}, or one given is not in it, or cannot be a name */
    public void expect(Set<String> given) {
        refuse("model.expression.bad-name", given, name -> !isName(name));
        refuse("model.expression.unknown-name", names(), name -> !given.contains(name));
        refuse("model.expression.unused-name", given, name -> !names().contains(name));
    }

    private static void refuse(String key, Set<String> names, Predicate<String> wrong) {
        new TreeSet<>(names).stream().filter(wrong).findFirst().ifPresent(name -> {
            throw new Refused(key, name);
        });
    }

    /**
     * A length, an angle or a plain number.
     *
     * @param names of what kind each is
     * @throws Refused where kinds do not go together, or something else comes out
     */
    public Dimension dimension(Map<String, Dimension> names) {
        Dimension found = term.in(new DimensionArithmetic(), new Names<>() {
            @Override
            public Dimension size(String name) {
                return names.get(name);
            }

            @Override
            public Dimension over(Function function, String name) {
                return names.get(name);
            }
        });
        if (found.isAny()) {
            return Dimension.LENGTH;
        }
        if (found.lengths() < 0 || found.lengths() > 1) {
            throw new Refused("model.expression.no-size", found.said());
        }
        return found;
    }

    /**
     * What it comes to with the mean size of each name, and at the least and the most.
     *
     * @param sizes one or more of each name
     * @throws Refused if it has no answer there, or nowhere near
     */
    public Reach over(Map<String, List<BigDecimal>> sizes) {
        Ranges ranges = Ranges.of(sizes);
        return new Reach(
                Ranges.ofMeans(sizes).inTheMiddle(term),
                Least.of(term, ranges),
                Least.of(new Term.Negated(term), ranges).negate());
    }

    /**
     * U = √(Σ (c·U)²), c the change of the expression for one unit of each name at its mean size, for sizes that do not
     * depend on one another. The least, the greatest and the mean of a name over its places count as sizes of their
     * own.
     *
     * @param uncertainties expanded, at one coverage factor, of names that have one
     * @return at the same coverage factor; absent where the expression has an edge there and no such change
     */
    public Optional<BigDecimal> expanded(Map<String, List<BigDecimal>> sizes, Map<String, BigDecimal> uncertainties) {
        return expanded(parts(sizes, uncertainties), String::valueOf);
    }

    /**
     * The same where sizes that are measured in one way are out to the same side: their |c|·U are added up in full
     * before they are squared (JCGM 100:2008, 5.2.2).
     *
     * @param ways in which way each name is measured
     */
    public Optional<BigDecimal> expanded(
            Map<String, List<BigDecimal>> sizes, Map<String, BigDecimal> uncertainties, Map<String, String> ways) {
        List<String> names = List.copyOf(sizes.keySet());
        return expanded(parts(sizes, uncertainties), slot -> ways.get(names.get(slot % names.size())));
    }

    private static Optional<BigDecimal> expanded(List<Double> parts, IntFunction<String> way) {
        Map<String, Double> byWay = new HashMap<>();
        for (int slot = 0; slot < parts.size(); slot++) {
            byWay.merge(way.apply(slot), parts.get(slot), Double::sum);
        }
        double squares =
                byWay.values().stream().mapToDouble(part -> part * part).sum();
        return Double.isFinite(squares)
                ? Optional.of(new BigDecimal(Math.sqrt(squares), MathContext.DECIMAL64))
                : Optional.empty();
    }

    /** |c|·U of each name, then of each over its places. */
    private List<Double> parts(Map<String, List<BigDecimal>> sizes, Map<String, BigDecimal> uncertainties) {
        List<Span> changes = Ranges.ofMeans(sizes).slope(term).with();
        List<String> names = List.copyOf(sizes.keySet());
        List<Double> parts = new ArrayList<>();
        for (int slot = 0; slot < changes.size(); slot++) {
            BigDecimal expanded = uncertainties.getOrDefault(names.get(slot % names.size()), BigDecimal.ZERO);
            parts.add(changes.get(slot).absolute().high() * expanded.doubleValue());
        }
        return parts;
    }

    /** As it is printed, with what {@code names} makes of each name. */
    public String with(UnaryOperator<String> names) {
        return term.text(names);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Expression expression && text.equals(expression.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    /** As it was typed. */
    @Override
    public String toString() {
        return text;
    }
}
