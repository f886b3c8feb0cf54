package org.tenthwise.model.record;

import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.compute.temperature.AtTwenty;
import org.tenthwise.model.compute.temperature.WorstCorrection;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.TemperatureAsked;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.Degrees;
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

    /**
     * Absent where the plan says nothing of heat, for a kind of check it does not touch, and for a range of readings,
     * which heat changes by next to nothing.
     */
    static Optional<TemperatureEffect> of(Plan plan, Step step, Pass pass) {
        return plan.climate().flatMap(climate -> step.check()
                .asSize()
                .flatMap(CheckOfSize::limitsOfASize)
                .map(limits -> {
                    Length most = limits.upper()
                            .or(limits::lower)
                            .map(Written::length)
                            .orElseThrow();
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
