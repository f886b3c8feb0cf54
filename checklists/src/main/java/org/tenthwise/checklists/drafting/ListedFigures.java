package org.tenthwise.checklists.drafting;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.callout.CalloutKind;
import org.tenthwise.model.callout.CalloutPart;
import org.tenthwise.model.words.Refused;

/**
 * Limits that a list gives in figures of their own, by limits or by a nominal size and deviations.
 *
 * <p>A deviation in the column of the lower one that has no sign is below the nominal size; common practice.
 */
record ListedFigures(Optional<BigDecimal> nominal, Optional<BigDecimal> lower, Optional<BigDecimal> upper) {

    /** @throws Refused if something there is no figure, or they contradict one another */
    static ListedFigures of(ListLine line) {
        Optional<BigDecimal> nominal = figure(line, ListColumn.NOMINAL);
        Optional<BigDecimal> plus = figure(line, ListColumn.PLUS);
        Optional<BigDecimal> minus = figure(line, ListColumn.MINUS).map(value -> below(line, value));
        Optional<BigDecimal> least = nominal.flatMap(size -> minus.map(size::add));
        Optional<BigDecimal> greatest = nominal.flatMap(size -> plus.map(size::add));
        Optional<BigDecimal> lower = figure(line, ListColumn.LOWER);
        Optional<BigDecimal> upper = figure(line, ListColumn.UPPER);
        agree(line, lower, least);
        agree(line, upper, greatest);
        ListedFigures both = new ListedFigures(nominal, lower.or(() -> least), upper.or(() -> greatest));
        if (both.lower.isPresent() && both.upper.isPresent() && both.lower.get().compareTo(both.upper.get()) > 0) {
            throw new Refused("draft.crossed", both.lower.get(), both.upper.get());
        }
        return both;
    }

    private static BigDecimal below(ListLine line, BigDecimal value) {
        String written = line.at(ListColumn.MINUS).orElseThrow();
        return Character.isDigit(written.charAt(0)) || written.charAt(0) == '.' ? value.negate() : value;
    }

    private static Optional<BigDecimal> figure(ListLine line, ListColumn column) {
        return line.at(column).map(text -> {
            String plain = text.replace('\u2212', '-').replaceAll("[\\s\u00A0]", "");
            String pointed = plain.indexOf('.') < 0 ? plain.replace(',', '.') : plain;
            if (!pointed.matches("[+-]?(\\d{1,10}(\\.\\d{0,10})?|\\.\\d{1,10})")) {
                throw new Refused("draft.no-figure", column, text);
            }
            return new BigDecimal(pointed.endsWith(".") ? pointed + "0" : pointed);
        });
    }

    private static void agree(ListLine line, Optional<BigDecimal> limit, Optional<BigDecimal> made) {
        if (limit.isPresent() && made.isPresent() && limit.get().compareTo(made.get()) != 0) {
            throw new Refused("draft.figures-differ", made.get(), limit.get());
        }
    }

    boolean isEmpty() {
        return lower.isEmpty() && upper.isEmpty();
    }

    /**
     * Where the list has limits and no nominal size, the size drawn has to lie within them: else they may be of another
     * line. A thread is drawn by its outside diameter and read as its pitch diameter: only its limits are compared.
     *
     * @throws Refused if the words of the drawing have another size or other limits
     */
    void mustAgreeWith(CalloutPart part) {
        if (part.kind() != CalloutKind.THREAD) {
            part.nominal().ifPresent(this::mustBeOf);
        }
        if (part.hasLimits() && (differ(lower, part.lower()) || differ(upper, part.upper()))) {
            throw new Refused("draft.text-differs", said(part.lower(), part.upper()), said(lower, upper));
        }
    }

    private void mustBeOf(BigDecimal size) {
        if (nominal.filter(listed -> listed.compareTo(size) != 0).isPresent()) {
            throw new Refused("draft.text-differs", size, nominal.get());
        }
        boolean isBelow = lower.filter(limit -> size.compareTo(limit) < 0).isPresent();
        boolean isAbove = upper.filter(limit -> size.compareTo(limit) > 0).isPresent();
        if (nominal.isEmpty() && (isBelow || isAbove)) {
            throw new Refused("draft.text-differs", size, said(lower, upper));
        }
    }

    private static boolean differ(Optional<BigDecimal> listed, Optional<BigDecimal> drawn) {
        return listed.isPresent()
                && drawn.filter(limit -> limit.compareTo(listed.get()) == 0).isEmpty();
    }

    private static String said(Optional<BigDecimal> lower, Optional<BigDecimal> upper) {
        return lower.map(BigDecimal::toPlainString).orElse("-")
                + " / "
                + upper.map(BigDecimal::toPlainString).orElse("-");
    }
}
