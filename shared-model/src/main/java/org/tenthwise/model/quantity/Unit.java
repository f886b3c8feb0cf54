package org.tenthwise.model.quantity;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.tenthwise.model.words.Refused;

/**
 * The unit a drawing, a gauge or a record is written in. An angle is written in decimals of a degree, in degrees and
 * minutes, or in degrees, minutes and seconds; the unit of its figure is the last of these, so that a figure is one
 * exact decimal: 29°30′ is 1770 minutes. What is neither a length nor an angle is counted on a scale of any name: µm of
 * roughness, HRC, N·m, bar.
 */
public final class Unit {

    public static final Unit MILLIMETRE = new Unit("mm", QuantityKind.LENGTH, "1");

    /** 25.4 mm exactly, by definition (international yard and pound agreement, 1959). */
    public static final Unit INCH = new Unit("in", QuantityKind.LENGTH, "25.4");

    /** 3600 seconds of arc; ISO 80000-3, from memory. */
    public static final Unit DEGREE = new Unit("°", QuantityKind.ANGLE, "3600");

    public static final Unit MINUTE_OF_ARC = new Unit("° ′", QuantityKind.ANGLE, "60");

    public static final Unit SECOND_OF_ARC = new Unit("° ′ ″", QuantityKind.ANGLE, "1");

    /** Of lengths and of angles; those of angles from the coarsest to the finest. */
    private static final List<Unit> KNOWN = List.of(MILLIMETRE, INCH, DEGREE, MINUTE_OF_ARC, SECOND_OF_ARC);

    /** The name of a scale: what stands behind a figure on a drawing, one word, no figure itself. */
    private static final Pattern NAME_OF_A_SCALE = Pattern.compile("[^\\s\\d+\\-.,][^\\s]{0,15}");

    /** Two letters that look the same. */
    private static final char GREEK_MU = '\u03bc';

    private static final char MICRO = '\u00b5';

    /** A degree is 3600 seconds. */
    private static final int MOST_PLACES_BETWEEN = 4;

    private final String symbol;
    private final QuantityKind kind;
    private final BigDecimal size;

    private Unit(String symbol, QuantityKind kind, String size) {
        this.symbol = symbol;
        this.kind = kind;
        this.size = new BigDecimal(size);
    }

    /**
     * The unit with that name: one of lengths or angles, or else that of a scale.
     *
     * @param name as it stands behind a figure; of a scale one word of at most 16 letters that begins with no digit
     * @throws IllegalArgumentException if no unit can be called so
     */
    public static Unit named(String name) {
        return ofSymbol(name).orElseGet(() -> {
            if (!NAME_OF_A_SCALE.matcher(name).matches()) {
                throw new Refused("model.unit.name", name);
            }
            String one = name.replace(GREEK_MU, MICRO);
            return new Unit(one, QuantityKind.ofScale(one), "1");
        });
    }

    /** How the unit is named on screens, in plans and in records: {@code mm}, {@code in}, or the marks of an angle. */
    public String symbol() {
        return symbol;
    }

    public QuantityKind kind() {
        return kind;
    }

    public boolean isOfAngle() {
        return kind.equals(QuantityKind.ANGLE);
    }

    public boolean isOfScale() {
        return kind.isScale();
    }

    public boolean isOfLength() {
        return kind.equals(QuantityKind.LENGTH);
    }

    /** In millimetres, or in seconds of arc; a scale in itself. */
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
        return equals(MINUTE_OF_ARC) || equals(SECOND_OF_ARC);
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

    /** The units that figures of the same kind can be in; those of angles from the coarsest to the finest. */
    public List<Unit> ofSameKind() {
        return isOfScale() ? List.of(this) : of(kind);
    }

    /** The units of lengths, or of angles. */
    public static List<Unit> of(QuantityKind kind) {
        return KNOWN.stream().filter(unit -> unit.kind.equals(kind)).toList();
    }

    /** The unit of lengths or of angles with that symbol. */
    public static Optional<Unit> ofSymbol(String symbol) {
        return KNOWN.stream().filter(unit -> unit.symbol.equals(symbol)).findFirst();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Unit unit && unit.symbol.equals(symbol);
    }

    @Override
    public int hashCode() {
        return symbol.hashCode();
    }

    @Override
    public String toString() {
        return symbol;
    }
}
