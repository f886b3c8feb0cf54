package org.tenthwise.checklists.format;

import java.math.BigDecimal;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Message;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * Makes raw tables of what was parsed. The parser hands a decimal out as {@code double}, so the figure is taken from
 * the text, and is odd where it is not the one that the parser saw.
 */
final class RawTables {

    /** How many figures a binary fraction of 64 bits is sure to keep. */
    private static final int BINARY_PLACES = 15;

    private final WrittenNumbers numbers;

    RawTables(WrittenNumbers numbers) {
        this.numbers = numbers;
    }

    /** The parser keeps its tables sorted by name; here their keys stand in the order of the text. */
    RawTable table(TomlTable parsed, Spot spot) {
        List<Map.Entry<String, RawValue>> read = new ArrayList<>();
        for (String key : parsed.keySet()) {
            List<String> path = List.of(key);
            read.add(Map.entry(key, value(parsed.get(path), spot(parsed.inputPositionOf(path), spot))));
        }
        read.sort(Map.Entry.comparingByValue(Comparator.comparing(RawValue::spot)));
        Map<String, RawValue> ordered = new LinkedHashMap<>();
        read.forEach(entry -> ordered.put(entry.getKey(), entry.getValue()));
        return new RawTable(spot, ordered);
    }

    private RawList list(TomlArray parsed, Spot spot) {
        List<RawValue> read = new ArrayList<>();
        for (int i = 0; i < parsed.size(); i++) {
            read.add(value(parsed.get(i), spot(parsed.inputPositionOf(i), spot)));
        }
        return new RawList(spot, read);
    }

    private RawValue value(Object parsed, Spot spot) {
        if (parsed instanceof TomlTable table) {
            return table(table, spot);
        }
        if (parsed instanceof TomlArray array) {
            return list(array, spot);
        }
        if (parsed instanceof String text) {
            return new RawValue.Text(spot, text);
        }
        if (parsed instanceof Boolean truth) {
            return new RawValue.Truth(spot, truth);
        }
        return parsed instanceof Temporal ? new RawValue.Odd(spot, Message.of("toml.moment")) : number(parsed, spot);
    }

    /** @param parsed what the parser made of it, perhaps infinite or no number at all */
    private RawValue number(Object parsed, Spot spot) {
        String written = numbers.at(spot);
        if (!Written.isPlainDecimal(written)) {
            return new RawValue.Odd(spot, Message.of("as-said", written));
        }
        BigDecimal figure = new BigDecimal(written);
        return isAsParsed(figure, new BigDecimal(parsed.toString()))
                ? new RawValue.Number(spot, figure)
                : new RawValue.Odd(spot, Message.of("toml.ambiguous"));
    }

    /** Whether both are one number, as well as the binary fraction of the parser can tell. */
    private static boolean isAsParsed(BigDecimal figure, BigDecimal parsed) {
        BigDecimal apart = figure.subtract(parsed).abs();
        return apart.compareTo(figure.abs().scaleByPowerOfTen(-BINARY_PLACES)) <= 0;
    }

    private static Spot spot(TomlPosition position, Spot otherwise) {
        return position == null ? otherwise : new Spot(position.line(), position.column());
    }
}
