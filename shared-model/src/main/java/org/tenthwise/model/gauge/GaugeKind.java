package org.tenthwise.model.gauge;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tenthwise.model.table.Table;

/**
 * A kind of gauge: one of those that are known everywhere, or one of a shop's own.
 *
 * @param key how plan files name it; of a shop's own, its name
 * @param reference what it is read against
 */
public record GaugeKind(String key, Reference reference) {

    /** Those that are known everywhere. */
    public static final List<GaugeKind> KNOWN = Table.beside(GaugeKind.class, "gauge-kinds.csv").rows().stream()
            .map(row -> new GaugeKind(
                    row.get("kind"), Reference.valueOf(row.get("set-on").toUpperCase(Locale.ROOT))))
            .toList();

    public static final GaugeKind DIAL_INDICATOR = known("dial-indicator");
    public static final GaugeKind LEVER_INDICATOR = known("lever-indicator");
    public static final GaugeKind BORE_GAUGE = known("bore-gauge");
    public static final GaugeKind INSIDE_MICROMETER = known("inside-micrometer");
    public static final GaugeKind MICROMETER = known("micrometer");
    public static final GaugeKind CALIPER = known("caliper");
    public static final GaugeKind DEPTH_GAUGE = known("depth-gauge");
    public static final GaugeKind DEPTH_MICROMETER = known("depth-micrometer");
    public static final GaugeKind MICROMETER_OVER_WIRES = known("micrometer-over-wires");
    public static final GaugeKind LIMIT_GAUGE = known("limit-gauge");
    public static final GaugeKind BEVEL_PROTRACTOR = known("bevel-protractor");
    /** Set up with gauge blocks until an indicator shows the face level; the angle of the bar is read. */
    public static final GaugeKind SINE_BAR = known("sine-bar");

    /** What a gauge of the kind is read against. */
    public enum Reference {
        /** Reads the size itself. */
        NONE,
        /** Compares with a master of certified size; the reading on the master is the zero. */
        MASTER,
        /** Reads over three wires of certified diameter. */
        WIRES
    }

    private static GaugeKind known(String key) {
        return ofKey(key).orElseThrow();
    }

    /** The one that is known everywhere by that word. */
    public static Optional<GaugeKind> ofKey(String key) {
        return KNOWN.stream().filter(kind -> kind.key().equals(key)).findFirst();
    }

    /** Whether its direction is told by its plunger: pressed in by a finger, as a smaller bore presses it. */
    public boolean isToldByItsPlunger() {
        return equals(BORE_GAUGE);
    }

    /**
     * Which way its number goes, told by whether it rises: as the plunger of a bore gauge is pressed in, and of any
     * other as the size grows.
     */
    public ReadingDirection told(boolean rises) {
        return rises == isToldByItsPlunger() ? ReadingDirection.FALLS_WITH_SIZE : ReadingDirection.RISES_WITH_SIZE;
    }

    /** Whether it is known everywhere. */
    public boolean isKnown() {
        return KNOWN.contains(this);
    }
}
