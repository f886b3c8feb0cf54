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
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;

/**
 * Reads TOML 1.0 twice: one parser keeps decimals exact but knows no positions, the other knows the position of every
 * key but hands decimals out as {@code double}. Values are taken from the first, spots from the second.
 */
public final class TomlText {

    /** A plan is some tens of kilobytes; anything beyond this is some other file. */
    public static final int MOST_CHARACTERS = 1_000_000;

    private final ObjectMapper exact = TomlMapper.builder(TomlFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(Depth.DEEPEST)
                            .build())
                    .build())
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .configure(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES, false)
            .build();

    /** Whatever the text is, it is read or said to be no TOML: a parser that gives up on it brings nobody down. */
    public TomlReading read(String written) {
        if (written.length() > MOST_CHARACTERS) {
            return unreadable(Spot.START, "longer than %d characters".formatted(MOST_CHARACTERS));
        }
        String text = written.startsWith("\uFEFF") ? written.substring(1) : written;
        if (Depth.isTooDeepAsWritten(text)) {
            return unreadable(Spot.START, Depth.TOO_DEEP);
        }
        try {
            return readTwice(text);
        } catch (StackOverflowError e) {
            return unreadable(Spot.START, Depth.TOO_DEEP);
        } catch (RuntimeException | AssertionError e) {
            return unreadable(Spot.START, "cannot be read as TOML: " + Flaws.plain(e.getMessage()));
        }
    }

    private TomlReading readTwice(String text) {
        JsonNode values;
        try {
            values = exact.readTree(text);
        } catch (StreamConstraintsException e) {
            return unreadable(Spot.START, Depth.TOO_DEEP);
        } catch (JsonProcessingException e) {
            List<TomlReading.Flaw> flaws = new Flaws(text).of(Toml.parse(text));
            return flaws.isEmpty()
                    ? unreadable(spot(e), Flaws.plain(e.getOriginalMessage()))
                    : new TomlReading.Unreadable(flaws);
        }
        if (Depth.isTooDeep(values)) {
            return unreadable(Spot.START, Depth.TOO_DEEP);
        }
        TomlParseResult positions = Toml.parse(text);
        List<TomlReading.Flaw> flaws = new Flaws(text).of(positions);
        return flaws.isEmpty()
                ? new TomlReading.Readable(
                        new TwoReadings(new WrittenNumbers(text)).table(positions, values, Spot.START))
                : new TomlReading.Unreadable(flaws);
    }

    private static TomlReading unreadable(Spot spot, String words) {
        return new TomlReading.Unreadable(List.of(new TomlReading.Flaw(spot, words)));
    }

    private static Spot spot(JsonProcessingException e) {
        JsonLocation at = e.getLocation();
        return at == null ? Spot.START : new Spot(Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()));
    }
}
