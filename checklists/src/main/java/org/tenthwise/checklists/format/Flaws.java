package org.tenthwise.checklists.format;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.model.words.Message;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;

/**
 * What a parser found wrong, in words for the person who wrote the text; the slips that are made every day have words
 * of their own.
 */
final class Flaws {

    private static final Pattern NOTHING_BEFORE_THE_POINT = Pattern.compile("(?<![\\d.])([+-]?)(\\.\\d+)(?![\\d.eE_])");
    private static final Pattern NOTHING_AFTER_THE_POINT = Pattern.compile("(?<![\\d.])([+-]?\\d+)\\.$");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("\\d,\\d");

    private static final String BAD_ESCAPE = "Invalid unicode escape";

    private final String[] lines;

    Flaws(String text) {
        lines = text.split("\n", -1);
    }

    List<TomlReading.Flaw> of(TomlParseResult parsed) {
        return parsed.errors().stream().map(this::flaw).toList();
    }

    private TomlReading.Flaw flaw(TomlParseError error) {
        Spot spot = new Spot(error.position().line(), error.position().column());
        return new TomlReading.Flaw(spot, slip(spot, error.getMessage()));
    }

    private Message slip(Spot spot, String message) {
        String line = spot.line() <= lines.length ? lines[spot.line() - 1] : "";
        if (line.codePointCount(0, line.length()) < spot.column()) {
            return write(line, line.length(), message);
        }
        int at = line.offsetByCodePoints(0, spot.column() - 1);
        if (DECIMAL_COMMA
                .matcher(line)
                .region(Math.max(0, at - 1), line.length())
                .lookingAt()) {
            return Message.of("toml.comma");
        }
        Matcher bare = NOTHING_BEFORE_THE_POINT
                .matcher(line)
                .region(signBefore(line, at), line.length())
                .useTransparentBounds(true);
        if (bare.lookingAt()) {
            return Message.of("toml.bare-before", bare.group(1) + "0" + bare.group(2));
        }
        return line.charAt(at) == '.'
                ? write(line, at + 1, message)
                : at > 0 && line.charAt(at - 1) == '.' ? write(line, at, message) : plain(message);
    }

    /** Where the sign before the point stands, which the parser may have taken for itself. */
    private static int signBefore(String line, int at) {
        return at > 0 && (line.charAt(at - 1) == '-' || line.charAt(at - 1) == '+') ? at - 1 : at;
    }

    /** About the figure whose point is the last sign before {@code end}. */
    private static Message write(String line, int end, String message) {
        Matcher open = NOTHING_AFTER_THE_POINT.matcher(line.substring(0, end));
        return open.find() ? Message.of("toml.bare-after", open.group(1)) : plain(message);
    }

    /** Its first line, in the words of the parser. */
    static Message plain(String message) {
        String line = message == null ? "" : message.lines().findFirst().orElse("");
        return line.isEmpty()
                ? Message.of("toml.none")
                : Message.of(line.startsWith(BAD_ESCAPE) ? "toml.escape" : "toml.parser", line);
    }
}
