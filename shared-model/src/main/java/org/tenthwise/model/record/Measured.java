package org.tenthwise.model.record;

import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.compute.comparison.FromMaster;
import org.tenthwise.model.compute.temperature.AtTwenty;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Nanometres;
import org.tenthwise.model.run.Pass;

/**
 * One reading and what it means.
 *
 * @param value the size it stands for, with every correction
 * @param forTemperature what of the correction brings it to 20 °C; absent where nothing was corrected for temperature
 * @param forContact what of the correction is for how the gauge touched the work; absent where that changes nothing,
 *     and where nobody has said yet how it touched
 */
public record Measured(
        Pass.Reading reading, Slot slot, Length value, Optional<Length> forTemperature, Optional<Length> forContact) {

    /** The reading as the size, however the gauge touched. */
    public Measured(Pass.Reading reading, Slot slot, Length value, Optional<Length> forTemperature) {
        this(reading, slot, value, forTemperature, Optional.empty());
    }

    /** As it was read, at whatever temperature. */
    public Measured(Pass.Reading reading, Slot slot, Length value) {
        this(reading, slot, value, Optional.empty());
    }

    /**
     * The size a reading stands for, whether it still counts or not: as typed, or compared with the master it was set
     * on.
     */
    public static Measured of(Pass.Reading reading, Slot slot) {
        Length read = reading.typed().length();
        Optional<Setting> compared =
                reading.setting().filter(setting -> setting.zero().isPresent());
        return new Measured(
                reading,
                slot,
                compared.map(setting -> FromMaster.size(
                                setting.certified().orElseThrow().length(),
                                setting.gauge().sense().orElseThrow(),
                                read,
                                setting.zero().orElseThrow().length()))
                        .orElse(read));
    }

    /** The same at 20 °C; the correction is rounded to 1 nm. */
    public Measured corrected(AtTwenty sum) {
        Length correction = Nanometres.round(sum.correction(value));
        return new Measured(reading, slot, value.plus(correction), Optional.of(correction));
    }

    /** The same for how the gauge touched the work; as it is while nobody has said how. */
    public Measured corrected(Touch touch) {
        return touch.correction(value)
                .map(correction ->
                        new Measured(reading, slot, value.plus(correction), forTemperature, Optional.of(correction)))
                .orElse(this);
    }

    /** As typed. */
    public Length raw() {
        return reading.typed().length();
    }

    /**
     * What the size was corrected by, for temperature and for how the gauge touched. What a gauge was set on and the
     * constant of wires make a size of a reading; they correct nothing (JCGM 200:2012, 2.53, from memory).
     */
    public Length correction() {
        return Stream.of(forTemperature, forContact).flatMap(Optional::stream).reduce(value.zero(), Length::plus);
    }

    /** What the gauge showed the size to be, before any correction. */
    public Length uncorrected() {
        return value.minus(correction());
    }

    /** Whether the size is the figure as typed. */
    public boolean isAsRead() {
        return value.equals(raw());
    }
}
