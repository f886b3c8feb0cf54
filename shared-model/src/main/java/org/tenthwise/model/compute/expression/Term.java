package org.tenthwise.model.compute.expression;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A part of an expression. Two are equal where they are built alike. */
sealed interface Term {

    /**
     * What it comes to.
     *
     * @throws org.tenthwise.model.words.Refused where a part of it has no answer; the sentence names the part
     */
    <T> T in(Arithmetic<T> arithmetic, Names<T> names);

    /** As it is read, with what {@code names} makes of each name. */
    String text(UnaryOperator<String> names);

    /** All names in it, each as often as it stands there. */
    Stream<String> names();

    /** The same names, but only those an angle must stand for: what sine, cosine and tangent are of. */
    default Stream<String> angles() {
        return Stream.empty();
    }

    /** How firmly it holds together: a part that holds less than what it stands in goes into brackets. */
    default int hold() {
        return ALONE;
    }

    int SUM = 1;
    int PRODUCT = 2;
    int SIGNED = 3;
    int ALONE = 4;

    /** A figure as it was typed. */
    record Figure(BigDecimal value) implements Term {

        @Override
        public <T> T in(Arithmetic<T> arithmetic, Names<T> names) {
            return arithmetic.figure(value);
        }

        @Override
        public String text(UnaryOperator<String> names) {
            return value.toPlainString();
        }

        @Override
        public Stream<String> names() {
            return Stream.empty();
        }
    }

    /** The circumference of a circle over its diameter. */
    record Pi() implements Term {

        @Override
        public <T> T in(Arithmetic<T> arithmetic, Names<T> names) {
            return arithmetic.pi();
        }

        @Override
        public String text(UnaryOperator<String> names) {
            return "π";
        }

        @Override
        public Stream<String> names() {
            return Stream.empty();
        }
    }

    /** A size by its name. */
    record Name(String name) implements Term {

        @Override
        public <T> T in(Arithmetic<T> arithmetic, Names<T> names) {
            return names.size(name);
        }

        @Override
        public String text(UnaryOperator<String> names) {
            return names.apply(name);
        }

        @Override
        public Stream<String> names() {
            return Stream.of(name);
        }
    }

    /** The least, the greatest or the mean of the sizes one name has at its places. */
    record OverPlaces(Function function, String name) implements Term {

        @Override
        public <T> T in(Arithmetic<T> arithmetic, Names<T> names) {
            return names.over(function, name);
        }

        @Override
        public String text(UnaryOperator<String> names) {
            return function.word() + "(" + names.apply(name) + ")";
        }

        @Override
        public Stream<String> names() {
            return Stream.of(name);
        }
    }

    /** With the other sign. */
    record Negated(Term of) implements Term {

        @Override
        public <T> T in(Arithmetic<T> arithmetic, Names<T> names) {
            return arithmetic.negated(of.in(arithmetic, names));
        }

        @Override
        public String text(UnaryOperator<String> names) {
            return "−" + bracketed(of, SIGNED, names);
        }

        @Override
        public Stream<String> names() {
            return of.names();
        }

        @Override
        public Stream<String> angles() {
            return of.angles();
        }

        @Override
        public int hold() {
            return SIGNED;
        }
    }

    /** Two parts with a sign between them. */
    record Both(Term left, Sign sign, Term right) implements Term {

        @Override
        public <T> T in(Arithmetic<T> arithmetic, Names<T> names) {
            if (sign == Sign.TIMES && left.equals(right)) {
                return new Power(left, 2).in(arithmetic, names);
            }
            T one = left.in(arithmetic, names);
            T other = right.in(arithmetic, names);
            return switch (sign) {
                case PLUS -> told(this, () -> arithmetic.plus(one, other));
                case MINUS -> told(this, () -> arithmetic.minus(one, other));
                case TIMES -> told(this, () -> arithmetic.times(one, other));
                case OVER -> told(right, () -> arithmetic.over(one, other));
            };
        }

        @Override
        public String text(UnaryOperator<String> names) {
            return bracketed(left, hold(), names) + " " + sign.text() + " " + bracketed(right, hold() + 1, names);
        }

        @Override
        public Stream<String> names() {
            return Stream.concat(left.names(), right.names());
        }

        @Override
        public Stream<String> angles() {
            return Stream.concat(left.angles(), right.angles());
        }

        @Override
        public int hold() {
            return sign.isOfSum() ? SUM : PRODUCT;
        }
    }

    /** Times itself, {@code exponent} of it in all. */
    record Power(Term of, int exponent) implements Term {

        @Override
        public <T> T in(Arithmetic<T> arithmetic, Names<T> names) {
            T base = of.in(arithmetic, names);
            return told(this, () -> arithmetic.power(base, exponent));
        }

        @Override
        public String text(UnaryOperator<String> names) {
            return bracketed(of, ALONE, names) + "^" + exponent;
        }

        @Override
        public Stream<String> names() {
            return of.names();
        }

        @Override
        public Stream<String> angles() {
            return of.angles();
        }
    }

    /** A function of what stands in its brackets. */
    record Call(Function function, List<Term> of) implements Term {

        @Override
        public <T> T in(Arithmetic<T> arithmetic, Names<T> names) {
            List<T> values = of.stream().map(each -> each.in(arithmetic, names)).toList();
            return function.ofSeveral()
                    ? told(this, () -> arithmetic.of(function, values))
                    : told(of.get(0), () -> arithmetic.of(function, values.get(0)));
        }

        @Override
        public String text(UnaryOperator<String> names) {
            return of.stream()
                    .map(each -> each.text(names))
                    .collect(Collectors.joining(", ", function.word() + "(", ")"));
        }

        @Override
        public Stream<String> names() {
            return of.stream().flatMap(Term::names);
        }

        @Override
        public Stream<String> angles() {
            return switch (function) {
                case SIN, COS, TAN -> of.get(0).outsideOfArcs();
                default -> of.stream().flatMap(Term::angles);
            };
        }
    }

    /** All names in it but those an arc function makes an angle of. */
    private Stream<String> outsideOfArcs() {
        if (this instanceof Call call) {
            return switch (call.function) {
                case ASIN, ACOS, ATAN -> angles();
                default -> call.of.stream().flatMap(Term::outsideOfArcs);
            };
        }
        if (this instanceof Both both) {
            return Stream.concat(both.left.outsideOfArcs(), both.right.outsideOfArcs());
        }
        return this instanceof Negated negated ? negated.of.outsideOfArcs() : names();
    }

    private static String bracketed(Term part, int hold, UnaryOperator<String> names) {
        String text = part.text(names);
        return part.hold() < hold ? "(" + text + ")" : text;
    }

    private static <T> T told(Term part, Supplier<T> asked) {
        try {
            return asked.get();
        } catch (Undefined e) {
            throw e.of(part.text(UnaryOperator.identity()));
        }
    }
}
