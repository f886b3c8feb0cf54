package org.tenthwise.app.drafting;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.model.words.Refused;

/**
 * The limits of a characteristic of a QIF document, in figures.
 *
 * @param unit as a list has it: {@code mm}, {@code in}, {@code °}, or that of a scale
 */
record QifLimits(Optional<BigDecimal> nominal, Optional<BigDecimal> lower, Optional<BigDecimal> upper, String unit) {

    boolean isEmpty() {
        return lower.isEmpty() && upper.isEmpty();
    }

    /**
     * Of what has limits or deviations about a target.
     *
     * @param tolerance with {@code MaxValue}, {@code MinValue} and {@code DefinedAsLimit}
     * @param target as wanted; absent where none is named
     * @param units the unit of a figure as a list has it
     * @throws Refused if they are told by another element, or deviate from nothing
     */
    static QifLimits of(XmlTree tolerance, Optional<XmlTree> target, Function<XmlTree, String> units) {
        Optional<XmlTree> upper = tolerance.at("MaxValue");
        Optional<XmlTree> lower = tolerance.at("MinValue");
        XmlTree any = upper.or(() -> lower).orElseThrow(() -> new Refused("list.qif.no-limits"));
        String unit = units.apply(any);
        Optional<BigDecimal> nominal = target.map(QifLimits::figure);
        for (Optional<XmlTree> other : List.of(lower, target)) {
            other.map(units).filter(own -> !own.equals(unit)).ifPresent(own -> {
                throw new Refused("list.qif.two-units", unit, own);
            });
        }
        boolean asLimits = tolerance
                .said("DefinedAsLimit")
                .map(said -> said.equals("true") || said.equals("1"))
                .orElseThrow(() -> new Refused("list.qif.no-limits"));
        if (asLimits) {
            return new QifLimits(nominal, lower.map(QifLimits::figure), upper.map(QifLimits::figure), unit);
        }
        BigDecimal from = nominal.orElseThrow(() -> new Refused("list.qif.no-target"));
        return new QifLimits(
                nominal,
                lower.map(QifLimits::figure).map(from::add),
                upper.map(QifLimits::figure).map(from::add),
                unit);
    }

    /** Of a zone: nothing is below zero. */
    static QifLimits atMost(XmlTree zone, QifUnits units) {
        return new QifLimits(Optional.empty(), Optional.empty(), Optional.of(figure(zone)), units.of(zone));
    }

    /** Of what is only said. */
    static QifLimits none() {
        return new QifLimits(Optional.empty(), Optional.empty(), Optional.empty(), "");
    }

    /** With the places that the document names, which a writer of it may have dropped from the figure. */
    private static BigDecimal figure(XmlTree of) {
        if (!of.text().matches("[+-]?(\\d{1,15}(\\.\\d{0,15})?|\\.\\d{1,15})")) {
            throw new Refused("list.qif.no-figure", of.text());
        }
        BigDecimal figure = new BigDecimal(of.text().endsWith(".") ? of.text() + "0" : of.text());
        int places = of.attribute("decimalPlaces")
                .filter(text -> text.matches("\\d{1,2}"))
                .map(Integer::valueOf)
                .orElse(0);
        return figure.scale() < places ? figure.setScale(places) : figure;
    }
}
