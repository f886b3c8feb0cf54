package org.tenthwise.checklists.drafting;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tenthwise.model.table.Table;
import org.tenthwise.model.words.Word;

/** A column of a list of characteristics. Only the number and the requirement are needed. */
public enum ListColumn {
    NUMBER,
    REQUIREMENT,
    SHEET,
    ZONE,
    DESIGNATOR,
    UNIT,
    NOMINAL,
    PLUS,
    MINUS,
    LOWER,
    UPPER,
    COUNT,
    METHOD,
    GAUGE,
    OPERATION,
    /** Where it is proven, if not at this machine. */
    WHERE,
    NOTE;

    private static final Map<String, ListColumn> BY_NAME = names();

    private static Map<String, ListColumn> names() {
        return Table.beside(ListColumn.class, "list-columns.csv").rows().stream()
                .flatMap(row -> Table.several(row.get("names")).stream()
                        .map(name -> Map.entry(
                                name,
                                Word.find(ListColumn.class, row.get("column")).orElseThrow())))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    /** What a heading stands for, in English or German, whatever its capitals, blanks and hyphens. */
    public static Optional<ListColumn> headed(String heading) {
        String plain = heading.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_/()\\u00A0\\uFEFF]", "");
        return Optional.ofNullable(BY_NAME.get(plain))
                .or(() -> Optional.ofNullable(BY_NAME.get(plain.replace("-", ""))));
    }

    /** Those that a list cannot do without. */
    static List<ListColumn> needed() {
        return List.of(NUMBER, REQUIREMENT);
    }

    /** The column of every heading that has one, by its place; the first of two alike. */
    static Map<ListColumn, Integer> of(List<String> headings) {
        return Arrays.stream(values())
                .filter(column -> place(column, headings) >= 0)
                .collect(Collectors.toMap(Function.identity(), column -> place(column, headings)));
    }

    private static int place(ListColumn column, List<String> headings) {
        for (int place = 0; place < headings.size(); place++) {
            if (headed(headings.get(place)).filter(column::equals).isPresent()) {
                return place;
            }
        }
        return -1;
    }
}
