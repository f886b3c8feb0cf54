package org.tenthwise.checklists.format;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.dataformat.toml.TomlFactory;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;

/**
 * Reads TOML 1.0 twice: one parser keeps decimals exact but knows no positions, the other knows the position of every key
 * but hands decimals out as {@code double}. Values are taken from the first, spots from the second.
 */
public final class TomlText {

    /** A plan is some tens of kilobytes; anything beyond this is some other file. */
    private static final int MOST_CHARACTERS = 1_000_000;
    private static final int DEEPEST_NESTING = 32;
    private static final String TOO_DEEP = "lists or tables lie more than %d deep in each other".formatted(DEEPEST_NESTING);

    private final ObjectMapper exact = TomlMapper.builder(TomlFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(DEEPEST_NESTING).build())
                    .build())
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .configure(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES, false)
            .build();

    public TomlReading read(String written) {
        if (written.length() > MOST_CHARACTERS) {
            return unreadable(Spot.START, "longer than %d characters".formatted(MOST_CHARACTERS));
        }
        String text = written.startsWith("\uFEFF") ? written.substring(1) : written;
        JsonNode values;
        try {
            values = exact.readTree(text);
        } catch (StreamConstraintsException e) {
            return unreadable(Spot.START, TOO_DEEP);
        } catch (JsonProcessingException e) {
            List<TomlReading.Flaw> flaws = positions(text).map(p -> flaws(p, text)).orElse(List.of());
            return flaws.isEmpty() ? unreadable(spot(e), plain(e.getOriginalMessage())) : new TomlReading.Unreadable(flaws);
        }
        Optional<TomlParseResult> positions = positions(text);
        if (positions.isEmpty()) {
            return unreadable(Spot.START, TOO_DEEP);
        }
        List<TomlReading.Flaw> flaws = flaws(positions.get(), text);
        return flaws.isEmpty()
                ? new TomlReading.Readable(new TwoReadings(new WrittenNumbers(text)).table(positions.get(), values, Spot.START))
                : new TomlReading.Unreadable(flaws);
    }

    /** Absent where the second parser, which sets itself no bound, runs out of stack on nested brackets. */
    private static Optional<TomlParseResult> positions(String text) {
        try {
            return Optional.of(Toml.parse(text));
        } catch (StackOverflowError e) {
            return Optional.empty();
        }
    }

    private static List<TomlReading.Flaw> flaws(TomlParseResult parsed, String text) {
        String[] lines = text.split("\n", -1);
        return parsed.errors().stream().map(error -> flaw(error, lines)).toList();
    }

    private static TomlReading.Flaw flaw(TomlParseError error, String[] lines) {
        Spot spot = new Spot(error.position().line(), error.position().column());
        String line = spot.line() <= lines.length ? lines[spot.line() - 1] : "";
        boolean decimalComma = line.codePointCount(0, line.length()) >= spot.column()
                && line.substring(0, line.offsetByCodePoints(0, spot.column())).matches(".*\\d,")
                && line.substring(line.offsetByCodePoints(0, spot.column())).matches("\\d.*");
        return new TomlReading.Flaw(spot, decimalComma
                ? "decimals are written with a point, not with a comma" : plain(error.getMessage()));
    }

    private static TomlReading unreadable(Spot spot, String words) {
        return new TomlReading.Unreadable(List.of(new TomlReading.Flaw(spot, words)));
    }

    private static Spot spot(JsonProcessingException e) {
        JsonLocation at = e.getLocation();
        return at == null ? Spot.START : new Spot(Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()));
    }

    /** First line only, small first letter. */
    private static String plain(String message) {
        String line = message.lines().findFirst().orElse("not TOML");
        return line.substring(0, 1).toLowerCase(Locale.ROOT) + line.substring(1);
    }
}
