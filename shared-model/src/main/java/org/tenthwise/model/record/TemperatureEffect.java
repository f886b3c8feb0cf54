package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.compute.temperature.AtTwenty;
import org.tenthwise.model.compute.temperature.CorrectionUncertainty;
import org.tenthwise.model.compute.temperature.WorstCorrection;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.TemperatureAsked;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.Celsius;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Expansion;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Pass;

/**
 * What heat means to one pass of a characteristic. Nothing is corrected without both temperatures, and no verdict is
 * given without them where they matter.
 *
 * @param asked what the plan says of asking for the temperatures
 * @param worst largest correction anywhere in the shop, at the greatest size that is allowed
 * @param tolerance absent where one limit is: then nothing is asked for unless the plan wants it always
 * @param part temperature of the part; absent until it is taken
 * @param gauge temperature of the gauge; absent until it is taken
 */
public record TemperatureEffect(
        ThermalData climate,
        TemperatureAsked asked,
        WorstCorrection worst,
        Optional<Length> tolerance,
        Optional<Degrees> part,
        Optional<Degrees> gauge) {

    private static final BigDecimal TENTH = new BigDecimal("0.1");
    private static final BigDecimal ROOT_OF_THREE = new BigDecimal("3").sqrt(MathContext.DECIMAL64);

    /**
     * Absent where the plan says nothing of heat, for a kind of check it does not touch, and for a range of readings,
     * which heat changes by next to nothing.
     */
    static Optional<TemperatureEffect> of(Plan plan, Step step, Pass pass) {
        return plan.climate().flatMap(climate -> step.check().underHeat().map(limits -> {
            Length most = limits.upper().or(limits::lower).map(Written::length).orElseThrow();
            WorstCorrection worst = WorstCorrection.of(
                    most,
                    climate.part().expansion(),
                    climate.shop(),
                    climate.gauge().expansion(),
                    climate.shop());
            return new TemperatureEffect(
                    climate,
                    step.temperatureAsked(),
                    worst,
                    limits.width(),
                    pass.temperature(MeasuredBody.PART),
                    pass.temperature(MeasuredBody.GAUGE));
        }));
    }

    /** Whether temperatures are to be taken at {@code step} at all. */
    public static boolean isNeeded(Plan plan, Step step) {
        return of(plan, step, Pass.NOTHING).filter(TemperatureEffect::needed).isPresent();
    }

    /** Whether the worst correction is above a twentieth of the tolerance. */
    public boolean matters() {
        return tolerance.filter(worst::mattersIn).isPresent();
    }

    /** Whether both temperatures must be taken. */
    public boolean needed() {
        return asked == TemperatureAsked.ALWAYS || asked == TemperatureAsked.WHERE_IT_MATTERS && matters();
    }

    public Optional<Degrees> of(MeasuredBody body) {
        return body == MeasuredBody.PART ? part : gauge;
    }

    /** The temperature still to be taken, that of the part first. */
    public Optional<MeasuredBody> wanted() {
        return needed()
                ? Stream.of(MeasuredBody.values())
                        .filter(body -> of(body).isEmpty())
                        .findFirst()
                : Optional.empty();
    }

    /** How many temperatures are still to be taken. */
    public int missing() {
        return needed()
                ? (int) Stream.of(MeasuredBody.values())
                        .filter(body -> of(body).isEmpty())
                        .count()
                : 0;
    }

    /**
     * Standard uncertainty of the correction of a size by how far the expansion of part and gauge may be off, each by a
     * tenth either way; zero where nothing is corrected. How sure the thermometer is, no plan says.
     *
     * <p>u² = Σ (L · (t − 20) · 0.1 α / √3)² over part and gauge.
     *
     * <p>Source: JCGM 100:2008 (GUM), H.1.3.2 and 4.3.7, any value between the bounds as likely as another; a tenth,
     * common practice: melts of one material differ by that.
     */
    public Length correctionUncertainty(Length size) {
        return correction()
                .map(at -> Length.rootOfSquares(
                        byExpansion(size, at.part(), at.partAt()), byExpansion(size, at.gauge(), at.gaugeAt())))
                .orElse(Length.ZERO);
    }

    private static Length byExpansion(Length size, Expansion expansion, Celsius at) {
        BigDecimal standard = expansion.millionths().abs().multiply(TENTH).divide(ROOT_OF_THREE, MathContext.DECIMAL64);
        return CorrectionUncertainty.of(size, expansion, at, BigDecimal.ZERO, standard);
    }

    /** The correction to be made; absent where none is needed or a temperature is missing. */
    public Optional<AtTwenty> correction() {
        return needed() && missing() == 0
                ? Optional.of(new AtTwenty(
                        climate.part().expansion(),
                        part.orElseThrow().celsius(),
                        climate.gauge().expansion(),
                        gauge.orElseThrow().celsius()))
                : Optional.empty();
    }
}
