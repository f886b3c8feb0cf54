package org.tenthwise.checklists.editing;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.checklists.format.TomlReading;
import org.tenthwise.checklists.format.TomlText;
import org.tenthwise.model.quantity.Written;

/** What a person reads of a value of a plan, and how what a person types is written there. */
public final class ValueText {

    /** Between the things of a list. */
    private static final String BETWEEN = "; ";

    private static final String PLACES = "places";
    private static final Set<String> LISTS = Set.of(PLACES, "hold", "angles", "at", "changes", SpotText.KEY);
    /** Text, though it may look like a number. */
    private static final Set<String> WORDS = Set.of(
            "part",
            "revision",
            "issue",
            "name",
            "material",
            "drawing",
            "drawing_number",
            "drawing_revision",
            "drawing_file",
            "route",
            "remark",
            "requirement",
            "tolerance",
            "balloon",
            "sheet",
            "drawing_zone",
            "designator",
            "method",
            "caution",
            "gauge",
            "what",
            "go",
            "not_go",
            "zone");
    /** An angle round the part, alone or at the end of the name of a place. */
    private static final Pattern ANGLE = Pattern.compile("(?:.*[ ,])?(\\d{1,3}(?:\\.\\d{1,4})?)°");

    private ValueText() {}

    /** The value as a person says it: text without its quotes, the things of a list one after the other. */
    public static String reads(String written) {
        return value(written).map(ValueText::said).orElse(written);
    }

    private static Optional<RawValue> value(String written) {
        return new TomlText().read("it = " + written) instanceof TomlReading.Readable read
                ? Optional.ofNullable(read.top().values().get("it"))
                : Optional.empty();
    }

    private static String said(RawValue value) {
        if (value instanceof RawValue.Text text) {
            return text.text();
        }
        if (value instanceof RawValue.Number number) {
            return number.figure().toPlainString();
        }
        if (value instanceof RawValue.Truth truth) {
            return TomlValue.truth(truth.truth());
        }
        if (value instanceof RawList list) {
            return list.items().stream().map(ValueText::said).collect(Collectors.joining(BETWEEN));
        }
        if (value instanceof RawTable table) {
            return Optional.ofNullable(table.values().get("name"))
                    .map(ValueText::said)
                    .orElseGet(() -> table.values().entrySet().stream()
                            .map(pair -> pair.getKey() + " " + said(pair.getValue()))
                            .collect(Collectors.joining(", ")));
        }
        return "";
    }

    /**
     * What was typed, as the plan has it under a key: a figure with the places it was typed with, the things of a list
     * parted by semicolons, a place that is called by an angle with that angle.
     */
    public static String written(String key, String typed) {
        String text = typed.strip();
        if (LISTS.contains(key)) {
            return TomlValue.list(Arrays.stream(text.split(";"))
                    .map(String::strip)
                    .filter(item -> !item.isEmpty())
                    .map(item -> key.equals(PLACES) ? place(item) : single(item))
                    .toList());
        }
        return WORDS.contains(key) ? TomlValue.text(text) : single(text);
    }

    private static String single(String text) {
        boolean isTruth = List.of(TomlValue.truth(true), TomlValue.truth(false)).contains(text);
        return isTruth || isFigure(text) ? text : TomlValue.text(text);
    }

    /** TOML has no zero in front of other figures. */
    private static boolean isFigure(String text) {
        return Written.isPlainDecimal(text) && !text.matches("[+-]?0\\d.*");
    }

    private static String place(String name) {
        Matcher angle = ANGLE.matcher(name);
        if (!angle.matches()) {
            return TomlValue.text(name);
        }
        Map<String, String> place = new LinkedHashMap<>();
        place.put("name", TomlValue.text(name));
        place.put("angle", isFigure(angle.group(1)) ? angle.group(1) : TomlValue.text(angle.group(1)));
        return TomlValue.table(place);
    }
}
