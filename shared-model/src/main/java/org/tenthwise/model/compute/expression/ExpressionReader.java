package org.tenthwise.model.compute.expression;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.Supplier;
import org.tenthwise.model.words.Refused;

/**
 * Reads an expression from its first character to its last, or says at which one it cannot go on.
 *
 * <p>Sums of products of powers; a sign before a part counts after its power, as −a^2 is −(a^2).
 */
final class ExpressionReader {

    private static final int MOST_CHARACTERS = 300;
    private static final int MOST_DEPTH = 30;
    private static final int MOST_FIGURES = 30;
    private static final String EXPONENTS = "23456789";
    private static final List<String> PI = List.of("pi", "π");

    private final String text;
    private int at;
    private int depth;

    private ExpressionReader(String text) {
        this.text = text;
    }

    static Term read(String text) {
        if (text.isBlank()) {
            throw new Refused("model.expression.empty");
        }
        if (text.length() > MOST_CHARACTERS) {
            throw new Refused("model.expression.too-long", MOST_CHARACTERS, text.length());
        }
        ExpressionReader reader = new ExpressionReader(text);
        Term all = reader.sum();
        reader.skipBlanks();
        if (reader.sees(')')) {
            throw new Refused("model.expression.closes-none", reader.place());
        }
        if (!reader.isAtEnd()) {
            throw new Refused("model.expression.no-sign", reader.place(), reader.here());
        }
        return all;
    }

    /** Whether {@code word} may name a size: letters, digits and low lines, a letter first, and no word of its own. */
    static boolean isName(String word) {
        return !word.isEmpty()
                && word.length() <= MOST_FIGURES
                && Character.isLetter(word.charAt(0))
                && word.chars().allMatch(ExpressionReader::isOfName)
                && Function.of(word).isEmpty()
                && !PI.contains(word);
    }

    private static boolean isOfName(int character) {
        return Character.isLetter(character) || isDigit(character) || character == '_';
    }

    private static boolean isDigit(int character) {
        return character >= '0' && character <= '9';
    }

    private Term sum() {
        if (++depth > MOST_DEPTH) {
            throw new Refused("model.expression.too-deep", MOST_DEPTH);
        }
        Term all = chain(true, () -> chain(false, this::signed));
        depth--;
        return all;
    }

    private Term chain(boolean ofSum, Supplier<Term> part) {
        Term all = part.get();
        for (Optional<Sign> sign = sign(ofSum); sign.isPresent(); sign = sign(ofSum)) {
            at++;
            all = new Term.Both(all, sign.get(), part.get());
        }
        return all;
    }

    private Optional<Sign> sign(boolean ofSum) {
        skipBlanks();
        return isAtEnd() ? Optional.empty() : Sign.of(text.charAt(at)).filter(sign -> sign.isOfSum() == ofSum);
    }

    private Term signed() {
        boolean negative = false;
        for (Optional<Sign> sign = sign(true); sign.isPresent(); sign = sign(true)) {
            negative ^= sign.get() == Sign.MINUS;
            at++;
        }
        Term part = power();
        return negative ? new Term.Negated(part) : part;
    }

    private Term power() {
        Term base = part();
        skipBlanks();
        if (!sees('^')) {
            return base;
        }
        at++;
        skipBlanks();
        String exponent = taken(ExpressionReader::isOfName);
        if (exponent.length() != 1 || !EXPONENTS.contains(exponent)) {
            throw new Refused("model.expression.exponent", place() - exponent.length());
        }
        return new Term.Power(base, Integer.parseInt(exponent));
    }

    private Term part() {
        skipBlanks();
        if (isAtEnd()) {
            throw new Refused("model.expression.ends");
        }
        char first = text.charAt(at);
        if (first == '(') {
            return in(this::sum);
        }
        if (isDigit(first) || first == '.') {
            return figure();
        }
        if (Character.isLetter(first)) {
            return word();
        }
        throw new Refused("model.expression.no-part", place(), here());
    }

    /** What {@code inside} reads between a bracket here and the one that closes it. */
    private <T> T in(Supplier<T> inside) {
        int opened = place();
        at++;
        T read = inside.get();
        skipBlanks();
        if (isAtEnd()) {
            throw new Refused("model.expression.not-closed", opened);
        }
        if (!sees(')')) {
            throw new Refused("model.expression.no-sign", place(), here());
        }
        at++;
        return read;
    }

    private Term figure() {
        int begun = place();
        String figure = taken(character -> isDigit(character) || character == '.');
        boolean isOne = figure.chars().filter(character -> character == '.').count() <= 1
                && figure.length() <= MOST_FIGURES
                && !figure.equals(".");
        if (!isOne) {
            throw new Refused("model.expression.no-figure", begun, figure);
        }
        return new Term.Figure(new BigDecimal(figure));
    }

    private Term word() {
        int begun = place();
        String word = taken(ExpressionReader::isOfName);
        Optional<Function> function = Function.of(word);
        skipBlanks();
        if (PI.contains(word)) {
            return new Term.Pi();
        }
        if (function.isPresent()) {
            return call(function.get(), begun);
        }
        if (sees('(')) {
            throw new Refused("model.expression.no-function", begun, word, Function.words());
        }
        return new Term.Name(word);
    }

    private Term call(Function function, int begun) {
        if (!sees('(')) {
            throw new Refused("model.expression.no-bracket", begun, function.word());
        }
        List<Term> of = in(this::several);
        if (of.size() > 1 && !function.ofSeveral()) {
            throw new Refused("model.expression.one-only", begun, function.word(), of.size());
        }
        return function.ofSeveral() && of.size() == 1 && of.get(0) instanceof Term.Name alone
                ? new Term.OverPlaces(function, alone.name())
                : new Term.Call(function, of);
    }

    private List<Term> several() {
        List<Term> all = new ArrayList<>(List.of(sum()));
        for (skipBlanks(); sees(','); skipBlanks()) {
            at++;
            all.add(sum());
        }
        return all;
    }

    private String taken(IntPredicate as) {
        int from = at;
        while (!isAtEnd() && as.test(text.charAt(at))) {
            at++;
        }
        return text.substring(from, at);
    }

    private void skipBlanks() {
        taken(Character::isWhitespace);
    }

    private boolean isAtEnd() {
        return at == text.length();
    }

    private boolean sees(char character) {
        return !isAtEnd() && text.charAt(at) == character;
    }

    /** Counted from one. */
    private int place() {
        return at + 1;
    }

    private String here() {
        return new String(Character.toChars(text.codePointAt(at)));
    }
}
