package org.tenthwise.checklists.format;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tenthwise.model.quantity.Written;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Lays the values of one parser over the positions of the other. Where the two differ the value is odd. */
final class TwoReadings {

    private final WrittenNumbers numbers;

    TwoReadings(WrittenNumbers numbers) {
        this.numbers = numbers;
    }

    RawTable table(TomlTable positions, JsonNode values, Spot spot) {
        Map<String, RawValue> read = new LinkedHashMap<>();
        for (String key : positions.keySet()) {
            List<String> path = List.of(key);
            read.put(key, value(positions.get(path), values.path(key), spot(positions.inputPositionOf(path), spot)));
        }
        values.fieldNames().forEachRemaining(key -> read.computeIfAbsent(key, k -> readDifferently(spot)));
        return new RawTable(spot, inOrderOfTheText(read));
    }

    /** The parser with the positions keeps its tables sorted by name. */
    private static Map<String, RawValue> inOrderOfTheText(Map<String, RawValue> read) {
        Map<String, RawValue> ordered = new LinkedHashMap<>();
        read.entrySet().stream()
                .sorted(Map.Entry.comparingByValue((one, other) -> one.spot().compareTo(other.spot())))
                .forEach(entry -> ordered.put(entry.getKey(), entry.getValue()));
        return ordered;
    }

    private RawList list(TomlArray positions, JsonNode values, Spot spot) {
        List<RawValue> read = new ArrayList<>();
        for (int i = 0; i < Math.max(positions.size(), values.size()); i++) {
            read.add(
                    i < positions.size()
                            ? value(positions.get(i), values.path(i), spot(positions.inputPositionOf(i), spot))
                            : readDifferently(spot));
        }
        return new RawList(spot, read);
    }

    private RawValue value(Object seen, JsonNode value, Spot spot) {
        if (seen instanceof TomlTable table && value.isObject()) {
            return table(table, value, spot);
        }
        if (seen instanceof TomlArray array && value.isArray()) {
            return list(array, value, spot);
        }
        if (seen instanceof String && value.isTextual()) {
            return new RawValue.Text(spot, value.textValue());
        }
        if (seen instanceof Boolean && value.isBoolean()) {
            return new RawValue.Truth(spot, value.booleanValue());
        }
        if (seen instanceof Long || seen instanceof Double) {
            return number(value, spot);
        }
        return seen instanceof Temporal && value.isTextual()
                ? new RawValue.Odd(spot, "a date or time")
                : readDifferently(spot);
    }

    private RawValue number(JsonNode value, Spot spot) {
        String written = numbers.at(spot);
        if (!Written.isPlainDecimal(written)) {
            return new RawValue.Odd(spot, written);
        }
        return value.isNumber() && value.decimalValue().equals(new BigDecimal(written))
                ? new RawValue.Number(spot, value.decimalValue())
                : readDifferently(spot);
    }

    private static RawValue readDifferently(Spot spot) {
        return new RawValue.Odd(spot, "something that can be read in two ways");
    }

    private static Spot spot(TomlPosition position, Spot otherwise) {
        return position == null ? otherwise : new Spot(position.line(), position.column());
    }
}
