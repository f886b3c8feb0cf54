package org.tenthwise.app.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.tenthwise.app.picture.SizePicture;
import org.tenthwise.app.text.Figures;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Words;

/** Puts the figures of an answer into the figures and words a person reads. */
public final class AnswerFormat {

    private static final int LEAST_PLACES_MM = 3;
    private static final int MOST_PLACES_MM = 5;
    private static final int LEAST_PLACES_INCH = 4;
    private static final int MOST_PLACES_INCH = 6;
    private static final int PLACES_OF_AN_ANGLE = 3;

    private final Words words;
    private final Unit unit;

    public AnswerFormat(Words words, Unit unit) {
        this.words = words;
        this.unit = unit;
    }

    Unit unit() {
        return unit;
    }

    public Words words() {
        return words;
    }

    /**
     * A length to a hundredth of a micrometre or a millionth of an inch, zeros at the end left out as far as is usual.
     */
    public String length(Length length) {
        int least = unit == Unit.INCH ? LEAST_PLACES_INCH : LEAST_PLACES_MM;
        int most = unit == Unit.INCH ? MOST_PLACES_INCH : MOST_PLACES_MM;
        int places = Math.max(
                least,
                length.in(unit)
                        .setScale(most, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .scale());
        return Figures.plain(length, unit, places);
    }

    /** A depth, without zeros at its end. */
    String depth(Length length) {
        return Figures.number(length.in(unit)
                .setScale(LEAST_PLACES_INCH, RoundingMode.HALF_UP)
                .stripTrailingZeros());
    }

    public String signed(Length length) {
        return (length.signum() > 0 ? "+" : "") + length(length);
    }

    String withUnit(Length length) {
        return length(length) + " " + unit.symbol();
    }

    String signedWithUnit(Length length) {
        return signed(length) + " " + unit.symbol();
    }

    String angle(BigDecimal degrees) {
        BigDecimal figure =
                degrees.setScale(PLACES_OF_AN_ANGLE, RoundingMode.HALF_UP).stripTrailingZeros();
        return Figures.number(figure.signum() == 0 ? BigDecimal.ZERO : figure);
    }

    SizePicture.Sized sized(Length length) {
        return new SizePicture.Sized(length, length(length));
    }
}
