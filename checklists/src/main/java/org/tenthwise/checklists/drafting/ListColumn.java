package org.tenthwise.checklists.drafting;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tenthwise.model.table.Table;
import org.tenthwise.model.words.Refused;
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

    /** The place of the first row that heads all columns that are needed; lists often have a title above. */
    public static OptionalInt headingsOf(List<List<String>> rows) {
        return IntStream.range(0, rows.size())
                .filter(place -> rows.get(place).stream()
                        .flatMap(cell -> headed(cell).stream())
                        .toList()
                        .containsAll(needed()))
                .findFirst();
    }

    /**
     * The column of every heading that has one, by its place.
     *
     * @throws Refused if two headings mean the same
     */
    static Map<ListColumn, Integer> of(List<String> headings) {
        Map<ListColumn, Integer> columns = new EnumMap<>(ListColumn.class);
        for (int place = 0; place < headings.size(); place++) {
            Optional<ListColumn> column = headed(headings.get(place));
            if (column.isPresent()) {
                Integer before = columns.putIfAbsent(column.get(), place);
                if (before != null) {
                    throw new Refused("draft.two-columns", headings.get(before), headings.get(place));
                }
            }
        }
        return columns;
    }
}
