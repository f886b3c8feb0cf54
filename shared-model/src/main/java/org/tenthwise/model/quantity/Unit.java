package org.tenthwise.model.quantity;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;

/** The unit a drawing, a gauge or a record is written in. */
public enum Unit {
    MILLIMETRE("mm", "1"),

    /** 25.4 mm exactly, by definition (international yard and pound agreement, 1959). */
    INCH("in", "25.4");

    private final String symbol;
    private final BigDecimal millimetres;

    Unit(String symbol, String millimetres) {
        this.symbol = symbol;
        this.millimetres = new BigDecimal(millimetres);
    }

    /** {@code mm} or {@code in}: how the unit is written on screens, in plans and in records. */
    public String symbol() {
        return symbol;
    }

    BigDecimal millimetres() {
        return millimetres;
    }

    public static Optional<Unit> ofSymbol(String symbol) {
        return Arrays.stream(values())
                .filter(unit -> unit.symbol.equals(symbol))
                .findFirst();
    }
}
