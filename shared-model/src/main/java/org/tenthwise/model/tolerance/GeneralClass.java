package org.tenthwise.model.tolerance;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.table.Table;
import org.tenthwise.model.words.Refused;
import org.tenthwise.model.words.Word;

/**
 * A class of the general tolerances of ISO 2768-1:1989, finest first.
 *
 * <p>A row of the tables is over one size up to and including the next; sizes below 0.5 mm, and those the class has no
 * figure for, have none. Angles go by the length of the shorter of the two legs.
 */
public enum GeneralClass {
    FINE,
    MEDIUM,
    COARSE,
    VERY_COARSE;

    /** What a dimension is to the tables. */
    public enum Kind {
        /** Sizes, steps, distances; millimetres. */
        LINEAR,
        /** External radii and legs of chamfers; millimetres. */
        RADIUS,
        /** By the length of the shorter leg; minutes of arc. */
        ANGLE
    }

    private static final Table TABLE = Table.beside(GeneralClass.class, "general-tolerances.csv");

    /** {@code f}, {@code m}, {@code c}, {@code v}. */
    public String letter() {
        return name().substring(0, 1).toLowerCase(Locale.ROOT);
    }

    /** The class of a letter, small or capital. */
    public static Optional<GeneralClass> ofLetter(String letter) {
        return Arrays.stream(values())
                .filter(known -> known.letter().equalsIgnoreCase(letter))
                .findFirst();
    }

    /**
     * How far off either way: millimetres, of an angle minutes; absent where the standard has nothing.
     *
     * @param millimetres the size, of an angle the length of its shorter leg; more than zero
     */
    public Optional<BigDecimal> find(Kind kind, BigDecimal millimetres) {
        return TABLE.rows().stream()
                .filter(row -> row.get("kind").equals(Word.of(kind)) && isIn(row, millimetres))
                .map(row -> row.get(letter()))
                .filter(cell -> !cell.equals(Table.NOTHING))
                .map(BigDecimal::new)
                .findFirst();
    }

    /** @throws Refused where the standard has nothing */
    public BigDecimal at(Kind kind, BigDecimal millimetres) {
        return find(kind, millimetres)
                .orElseThrow(
                        () -> new Refused("model.general-class.nothing", letter(), millimetres.toPlainString(), kind));
    }

    /** The first row of a kind holds the size it begins with, which no row before it does. */
    private static boolean isIn(Map<String, String> row, BigDecimal size) {
        int over = size.compareTo(new BigDecimal(row.get("over")));
        boolean first = row.get("over").equals("0.5");
        return (first ? over >= 0 : over > 0)
                && (row.get("up-to").equals(Table.NOTHING) || size.compareTo(new BigDecimal(row.get("up-to"))) <= 0);
    }
}
