package org.tenthwise.model.quantity;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The unit a drawing, a gauge or a record is written in. An angle is written in decimals of a degree, in degrees and
 * minutes, or in degrees, minutes and seconds; the unit of its figure is the last of these, so that a figure is one
 * exact decimal: 29°30′ is 1770 minutes.
 */
public enum Unit {
    MILLIMETRE("mm", QuantityKind.LENGTH, "1"),

    /** 25.4 mm exactly, by definition (international yard and pound agreement, 1959). */
    INCH("in", QuantityKind.LENGTH, "25.4"),

    /** 3600 seconds of arc; ISO 80000-3, from memory. */
    DEGREE("°", QuantityKind.ANGLE, "3600"),

    MINUTE_OF_ARC("° ′", QuantityKind.ANGLE, "60"),

    SECOND_OF_ARC("° ′ ″", QuantityKind.ANGLE, "1");

    /** A degree is 3600 seconds. */
    private static final int MOST_PLACES_BETWEEN = 4;

    private final String symbol;
    private final QuantityKind kind;
    private final BigDecimal size;

    Unit(String symbol, QuantityKind kind, String size) {
        this.symbol = symbol;
        this.kind = kind;
        this.size = new BigDecimal(size);
    }

    /** How the unit is named on screens, in plans and in records: {@code mm}, {@code in}, or the marks of an angle. */
    public String symbol() {
        return symbol;
    }

    public QuantityKind kind() {
        return kind;
    }

    public boolean isOfAngle() {
        return kind == QuantityKind.ANGLE;
    }

    /** In millimetres, or in seconds of arc. */
    BigDecimal size() {
        return size;
    }

    /** A figure in this unit as it is read: minutes and seconds with degrees before them, everything else plain. */
    public String text(BigDecimal figure) {
        return hasMarksInside() ? DegreesAndMinutes.text(figure, this) : figure.toPlainString();
    }

    /**
     * A figure in words of this unit: {@code 35.010 mm}, {@code 29.5°}; minutes and seconds have their marks in them.
     */
    public String behind(String figure) {
        return hasMarksInside() ? figure : figure + (isOfAngle() ? "" : " ") + symbol;
    }

    /** Whether figures are written with degrees before them. */
    public boolean hasMarksInside() {
        return this == MINUTE_OF_ARC || this == SECOND_OF_ARC;
    }

    /**
     * About how many places more a figure needs in this unit than in {@code other} to be as fine; fewer if below zero.
     */
    public int placesMoreThan(Unit other) {
        return IntStream.rangeClosed(-MOST_PLACES_BETWEEN, MOST_PLACES_BETWEEN)
                .filter(places -> other.size.scaleByPowerOfTen(places).compareTo(size) >= 0)
                .findFirst()
                .orElseThrow();
    }

    public static List<Unit> of(QuantityKind kind) {
        return Arrays.stream(values()).filter(unit -> unit.kind == kind).toList();
    }

    public static Optional<Unit> ofSymbol(String symbol) {
        return Arrays.stream(values())
                .filter(unit -> unit.symbol.equals(symbol))
                .findFirst();
    }
}
