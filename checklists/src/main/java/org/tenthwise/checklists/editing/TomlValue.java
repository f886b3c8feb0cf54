package org.tenthwise.checklists.editing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Values as a person writes them in a plan file. TOML 1.0, toml.io. */
public final class TomlValue {

    private static final int FIRST_PRINTABLE = 0x20;
    private static final int DELETE = 0x7F;

    private TomlValue() {}

    /** In double quotes, or in single ones where it has double quotes or backslashes in it and nothing against them. */
    public static String text(String text) {
        boolean plain = text.chars().allMatch(sign -> sign >= FIRST_PRINTABLE && sign != DELETE);
        if (plain && text.indexOf('\'') < 0 && (text.indexOf('"') >= 0 || text.indexOf('\\') >= 0)) {
            return "'" + text + "'";
        }
        return '"' + text.codePoints().mapToObj(TomlValue::escaped).collect(Collectors.joining()) + '"';
    }

    private static String escaped(int sign) {
        return switch (sign) {
            case '"' -> "\\\"";
            case '\\' -> "\\\\";
            case '\n' -> "\\n";
            case '\t' -> "\\t";
            case '\r' -> "\\r";
            default -> sign < FIRST_PRINTABLE || sign == DELETE ? "\\u%04X".formatted(sign) : Character.toString(sign);
        };
    }

    /** With the places it has. */
    public static String number(BigDecimal figure) {
        return figure.toPlainString();
    }

    public static String number(int whole) {
        return Integer.toString(whole);
    }

    public static String truth(boolean truth) {
        return Boolean.toString(truth);
    }

    /** @param items as they are written */
    public static String list(List<String> items) {
        return "[" + String.join(", ", items) + "]";
    }

    /** @param values as they are written, by plain keys, in their order */
    public static String table(Map<String, String> values) {
        return values.entrySet().stream()
                .map(pair -> pair.getKey() + " = " + pair.getValue())
                .collect(Collectors.joining(", ", "{ ", " }"));
    }
}
