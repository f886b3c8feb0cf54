package org.tenthwise.model.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The rows of one table, in the order of its file.
 *
 * @param rows each with what stands under every heading, as it is written
 */
public record Table(List<Map<String, String>> rows) {

    /** Stands in a file where the standard has nothing. */
    public static final String NOTHING = "-";

    private static final String REMARK = "#";

    public Table {
        rows = rows.stream().map(Map::copyOf).toList();
    }

    /**
     * @param beside a class of the package the file lies in
     * @throws IllegalStateException if the file is not there or a row has not as many figures as there are headings
     */
    public static Table beside(Class<?> beside, String name) {
        List<String> lines = lines(beside, name);
        List<String> headings = cells(lines.get(0));
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            List<String> cells = cells(line);
            if (cells.size() != headings.size()) {
                throw new IllegalStateException(
                        "%s has %s figures under %s headings: %s".formatted(name, cells.size(), headings.size(), line));
            }
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < cells.size(); i++) {
                row.put(headings.get(i), cells.get(i));
            }
            rows.add(row);
        }
        return new Table(rows);
    }

    /** The figures of a cell that holds several, or none. */
    public static List<String> several(String cell) {
        return cell.equals(NOTHING) ? List.of() : List.of(cell.split(" "));
    }

    private static List<String> cells(String line) {
        return Arrays.stream(line.split(",")).map(String::strip).toList();
    }

    private static List<String> lines(Class<?> beside, String name) {
        try (InputStream in = beside.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("The table %s is not where it belongs".formatted(name));
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith(REMARK))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("The table %s cannot be read".formatted(name), e);
        }
    }
}
