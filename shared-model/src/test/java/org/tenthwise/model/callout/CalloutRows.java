package org.tenthwise.model.callout;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The rows of {@code callouts.csv}, each by its headings; its column {@code source} says what the notation is from. */
final class CalloutRows {

    private CalloutRows() {}

    static List<Map<String, String>> all() {
        List<List<String>> lines = lines(text());
        List<String> headings = lines.get(0);
        List<Map<String, String>> rows = new ArrayList<>();
        for (List<String> line : lines.subList(1, lines.size())) {
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < headings.size(); i++) {
                row.put(headings.get(i), line.get(i));
            }
            rows.add(row);
        }
        return rows;
    }

    private static String text() {
        try (InputStream in = CalloutRows.class.getResourceAsStream("callouts.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** RFC 4180: a cell in quotes may have commas, line ends and doubled quotes in it. */
    private static List<List<String>> lines(String text) {
        List<List<String>> lines = new ArrayList<>();
        List<String> line = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            if (quoted && sign == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
                cell.append(text.charAt(++i));
            } else if (sign == '"') {
                quoted = !quoted;
            } else if (!quoted && (sign == ',' || sign == '\n')) {
                line.add(cell.toString());
                cell.setLength(0);
                if (sign == '\n') {
                    lines.add(line);
                    line = new ArrayList<>();
                }
            } else if (sign != '\r' || quoted) {
                cell.append(sign);
            }
        }
        return lines;
    }
}
