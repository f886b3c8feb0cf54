package org.tenthwise.app.export.qif;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** The number of a characteristic in its balloon, and how the drawing marks it. */
final class Designators {

    /**
     * How a drawing writes what the standard has a level for, in English or German.
     *
     * @param level of the standard
     * @param written on drawings
     */
    private record Level(String level, Pattern written) {}

    private static final List<Level> LEVELS = List.of(
            level("KEY", "key( characteristic)?s?|kc|\\(?kc\\)?|<kc>|schlüsselmerkmal"),
            level("CRITICAL", "critical( characteristic)?s?|cc|<cc>|kritisch(es merkmal)?"),
            level("MAJOR", "major( characteristic)?s?|hauptmerkmal"),
            level("MINOR", "minor( characteristic)?s?|nebenmerkmal"));

    private Designators() {}

    private static Level level(String level, String written) {
        return new Level(level, Pattern.compile(written));
    }

    /**
     * @param persistent id that stays with it from part to part
     * @param mark of the drawing, as it stands there; absent where it has none
     */
    static XmlElement of(String number, Optional<String> persistent, Optional<String> mark) {
        return new XmlElement("CharacteristicDesignator")
                .add("Designator", number)
                .add(persistent.map(id -> XmlElement.text("UUID", id)))
                .add(mark.filter(any -> !any.isBlank()).map(any -> new XmlElement("Criticality").add(level(any))));
    }

    /** One of the standard's levels, or the mark as it stands on the drawing. */
    private static XmlElement level(String mark) {
        String plain = mark.strip().toLowerCase(Locale.ROOT);
        return LEVELS.stream()
                .filter(level -> level.written().matcher(plain).matches())
                .findFirst()
                .map(level -> XmlElement.text("LevelEnum", level.level()))
                .orElseGet(() -> XmlElement.text("OtherLevel", mark));
    }
}
