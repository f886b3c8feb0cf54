package org.tenthwise.model.gauge;

import java.util.Optional;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Refused;

/**
 * A gauge as it was set for a check.
 *
 * @param reference mark of the master or of the set of wires; present where {@code certified} is
 * @param certified certified size of the master, or certified diameter of the wires; present where the kind needs it
 * @param zero what the gauge read on the master; present for a kind that compares with one
 */
public record Setting(Gauge gauge, Optional<String> reference, Optional<Written> certified, Optional<Written> zero) {

    public Setting {
        boolean referred = gauge.kind().reference() != GaugeKind.Reference.NONE;
        boolean compared = gauge.kind().reference() == GaugeKind.Reference.MASTER;
        if (certified.isPresent() != referred || reference.isPresent() != referred || zero.isPresent() != compared) {
            throw new Refused(
                    "model.setting.setting-does", gauge.id(), gauge.kind().key());
        }
        if (certified.isPresent() && certified.get().length().signum() <= 0) {
            throw new Refused("model.setting.certified-size", certified.get());
        }
    }

    /** A gauge that reads the size itself. */
    public static Setting direct(Gauge gauge) {
        return new Setting(gauge, Optional.empty(), Optional.empty(), Optional.empty());
    }

    public static Setting onMaster(Gauge gauge, String master, Written certified, Written zero) {
        return new Setting(gauge, Optional.of(master), Optional.of(certified), Optional.of(zero));
    }

    public static Setting overWires(Gauge gauge, String wires, Written certified) {
        return new Setting(gauge, Optional.of(wires), Optional.of(certified), Optional.empty());
    }
}
