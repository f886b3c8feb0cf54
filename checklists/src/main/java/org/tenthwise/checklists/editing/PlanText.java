package org.tenthwise.checklists.editing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tenthwise.checklists.format.TomlReading;
import org.tenthwise.checklists.format.TomlText;
import org.tenthwise.model.quantity.Unit;

/**
 * A plan file as it is written, to be changed a table or a key at a time. What is not touched stays byte for byte,
 * comments with it; a comment right above a table goes where the table goes.
 */
public final class PlanText {

    private final List<TableText> tables;

    private PlanText(List<TableText> tables) {
        this.tables = List.copyOf(tables);
    }

    /** Absent where the text is no TOML: there is nothing that could be changed without guessing. */
    public static Optional<PlanText> of(String text) {
        return new TomlText().read(text) instanceof TomlReading.Readable
                ? Optional.of(new PlanText(withInner(new TomlPieces(text).tables())))
                : Optional.empty();
    }

    /** The tables inside a list of tables go with the one they stand in. */
    private static List<TableText> withInner(List<TableText> tables) {
        List<TableText> outer = new ArrayList<>();
        for (TableText table : tables) {
            int last = outer.size() - 1;
            if (last > 0
                    && outer.get(last).isListed()
                    && table.isInside(outer.get(last).name())) {
                outer.set(last, outer.get(last).holding(table));
            } else {
                outer.add(table);
            }
        }
        return outer;
    }

    public String text() {
        return tables.stream().map(TableText::text).collect(Collectors.joining());
    }

    /** What stands before the first table. */
    public TableText head() {
        return tables.get(0);
    }

    public PlanText withHead(UnaryOperator<TableText> change) {
        return replaced(0, List.of(change.apply(head())));
    }

    /** The unit of its lengths; millimetres until the head says one that there is. */
    public Unit unit() {
        return head().says("unit").flatMap(Unit::ofSymbol).orElse(Unit.MILLIMETRE);
    }

    /** The tables of {@code [[name]]}, in their order. */
    public List<TableText> list(String name) {
        return places(name).stream().map(tables::get).toList();
    }

    /**
     * Which table of {@code [[name]]} a line of the text is in, a comment right above it being of the table; absent for
     * a line that is in none.
     *
     * @param line from 1
     */
    public OptionalInt at(String name, int line) {
        int index = 0;
        long before = 0;
        for (TableText table : tables) {
            before += table.text().chars().filter(sign -> sign == '\n').count();
            if (before >= line) {
                return table.isOf(name) ? OptionalInt.of(index) : OptionalInt.empty();
            }
            index += table.isOf(name) ? 1 : 0;
        }
        return index > 0 && tables.get(tables.size() - 1).isOf(name) ? OptionalInt.of(index - 1) : OptionalInt.empty();
    }

    /** The table {@code [name]}. */
    public Optional<TableText> table(String name) {
        return tables.stream().filter(table -> table.isNamed(name)).findFirst();
    }

    /** With another in the place of the table {@code [name]}; one that is new stands right after the head. */
    public PlanText withTable(String name, UnaryOperator<TableText> change) {
        return IntStream.range(0, tables.size())
                .filter(place -> tables.get(place).isNamed(name))
                .mapToObj(place -> replaced(place, List.of(change.apply(tables.get(place)))))
                .findFirst()
                .orElseGet(() -> insertedAt(1, change.apply(TableText.named(name))));
    }

    /** With another in the place of the table at {@code index} of {@code [[name]]}. */
    public PlanText with(String name, int index, UnaryOperator<TableText> change) {
        int place = places(name).get(index);
        return replaced(place, List.of(change.apply(tables.get(place))));
    }

    /** Without that table, nor the comment right above it. */
    public PlanText without(String name, int index) {
        return replaced(places(name).get(index), List.of());
    }

    /**
     * With one more table, to stand at {@code index} of {@code [[name]]}: after the last of them where it is their
     * number, and at the end of the file where there are none.
     */
    public PlanText inserted(String name, int index, TableText table) {
        List<Integer> places = places(name);
        int place = places.isEmpty()
                ? tables.size()
                : index < places.size() ? places.get(index) : places.get(places.size() - 1) + 1;
        return insertedAt(place, table);
    }

    private PlanText insertedAt(int place, TableText table) {
        List<TableText> more = new ArrayList<>(tables);
        more.set(place - 1, more.get(place - 1).ended());
        more.add(place, table);
        return new PlanText(more);
    }

    /** With one more table behind the others of {@code [[name]]}, or right after the head where there are none. */
    public PlanText withOneMore(String name, TableText table) {
        List<Integer> places = places(name);
        return insertedAt(places.isEmpty() ? 1 : places.get(places.size() - 1) + 1, table);
    }

    /** With a table at the end of the file. */
    public PlanText appended(TableText table) {
        return insertedAt(tables.size(), table);
    }

    /** With the table at {@code from} of {@code [[name]]} at {@code to}, the others in their order. */
    public PlanText moved(String name, int from, int to) {
        TableText moved = list(name).get(from);
        return without(name, from).inserted(name, to, moved);
    }

    private PlanText replaced(int place, List<TableText> others) {
        List<TableText> changed = new ArrayList<>(tables);
        changed.remove(place);
        changed.addAll(place, others);
        return new PlanText(changed);
    }

    private List<Integer> places(String name) {
        return IntStream.range(0, tables.size())
                .filter(place -> tables.get(place).isOf(name))
                .boxed()
                .toList();
    }
}
