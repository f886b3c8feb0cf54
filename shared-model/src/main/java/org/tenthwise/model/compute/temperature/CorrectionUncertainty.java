package org.tenthwise.model.compute.temperature;

import java.math.BigDecimal;
import java.math.MathContext;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.words.Refused;

/**
 * The standard uncertainty of a size at 20 °C that comes from the part's temperature and its expansion.
 *
 * <p>u² = (L·α·u(t))² + (L·(t − 20)·u(α))².
 *
 * <p>A length, zero or more. Thermometer and coefficient of the part alone are in it: those of the gauge are taken as
 * known.
 *
 * <p>At 20 °C the second term is zero, and a part that does not grow has no first. Two known exactly give zero.
 *
 * <p>Source: JCGM 100:2008, H.1.3 and H.1.4 (terms for temperature and expansion); D. A. Swyt, <em>Length and
 * dimensional measurements at NIST</em>, J. Res. NIST 99 (1994). First order, without the product of the two, which is
 * smaller by a thousand and more.
 */
public final class CorrectionUncertainty {

    private static final int MILLIONTH = 6;

    private CorrectionUncertainty() {}

    /**
     * @param temperature standard uncertainty of the part's temperature, in °C, zero or more
     * @param expansion standard uncertainty of its expansion, in 1e-6 per °C, zero or more
     */
    public static Length of(Length size, Expansion part, Celsius partAt, BigDecimal temperature, BigDecimal expansion) {
        if (temperature.signum() < 0 || expansion.signum() < 0) {
            throw new Refused(
                    "model.correction-uncertainty.uncertainties-c",
                    temperature.toPlainString(),
                    expansion.toPlainString());
        }
        BigDecimal ofTemperature = part.millionths().movePointLeft(MILLIONTH).multiply(temperature);
        BigDecimal ofExpansion = partAt.aboveReference().multiply(expansion.movePointLeft(MILLIONTH));
        BigDecimal squares = ofTemperature.multiply(ofTemperature).add(ofExpansion.multiply(ofExpansion));
        return size.abs().times(squares.sqrt(MathContext.DECIMAL64));
    }
}
