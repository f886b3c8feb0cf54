package org.tenthwise.app.device;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Whether windows can be opened here at all. Asked before anything of the screen is touched. */
public final class Windowing {

    private final Map<String, String> environment;
    private final String system;
    private final Optional<String> glass;

    /**
     * @param environment of this process
     * @param system name of the operating system
     * @param glass how windows are made, where whoever started the process has said so
     */
    public Windowing(Map<String, String> environment, String system, Optional<String> glass) {
        this.environment = Map.copyOf(environment);
        this.system = system.toLowerCase(Locale.ROOT);
        this.glass = glass;
    }

    /** Windows and macOS always have a display; elsewhere an X server must be named, or another way be given. */
    public boolean hasDisplay() {
        boolean always = system.startsWith("windows") || system.startsWith("mac");
        return glass.map(way -> !way.endsWith("Headless"))
                .orElseGet(
                        () -> always || !environment.getOrDefault("DISPLAY", "").isBlank());
    }
}
