package org.tenthwise.model.compute.zone;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tenthwise.model.table.Table;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/**
 * A table by steps of size. A step is over one figure up to and including the next, so a size on an edge belongs to the
 * step below; the first begins over zero.
 */
final class SizeTable {

    private static final String STEPS = "up-to";

    private final List<BigDecimal> steps;
    private final Map<String, List<Optional<BigDecimal>>> rows;

    private SizeTable(List<BigDecimal> steps, Map<String, List<Optional<BigDecimal>>> rows) {
        this.steps = steps;
        this.rows = rows;
    }

    /** @param name of the file beside this class */
    static SizeTable read(String name) {
        List<Map<String, String>> lines =
                Table.beside(SizeTable.class, name + ".csv").rows();
        List<BigDecimal> steps = lines.get(0).keySet().stream()
                .filter(heading -> !heading.equals(STEPS))
                .map(BigDecimal::new)
                .sorted()
                .toList();
        Map<String, List<Optional<BigDecimal>>> rows = new TreeMap<>();
        lines.forEach(line -> rows.put(
                line.get(STEPS),
                steps.stream()
                        .map(step -> figure(line.get(step.toPlainString())))
                        .toList()));
        return new SizeTable(steps, rows);
    }

    boolean has(String row) {
        return rows.containsKey(row);
    }

    /** What stands in {@code row} at {@code size}; absent if the row is empty there. */
    Optional<BigDecimal> at(String row, BigDecimal size) {
        return rows.get(row).get(step(size));
    }

    /** The size the step of {@code size} begins over. */
    BigDecimal over(BigDecimal size) {
        int step = step(size);
        return step == 0 ? BigDecimal.ZERO : steps.get(step - 1);
    }

    /** The size the step of {@code size} ends with. */
    BigDecimal upTo(BigDecimal size) {
        return steps.get(step(size));
    }

    /** The sizes {@code row} is filled for, as words: "over 24 up to 500". */
    Message filled(String row) {
        List<Optional<BigDecimal>> figures = rows.get(row);
        int first = 0;
        while (figures.get(first).isEmpty()) {
            first++;
        }
        int last = figures.size() - 1;
        while (figures.get(last).isEmpty()) {
            last--;
        }
        return first == 0
                ? Message.of("model.size-table.filled-up-to", steps.get(last))
                : Message.of("model.size-table.filled-over", steps.get(first - 1), steps.get(last));
    }

    List<BigDecimal> steps() {
        return steps;
    }

    private int step(BigDecimal size) {
        BigDecimal last = steps.get(steps.size() - 1);
        if (size.signum() <= 0 || size.compareTo(last) > 0) {
            throw new Refused("model.size-table.size-outside", size.toPlainString(), last.toPlainString());
        }
        int step = 0;
        while (size.compareTo(steps.get(step)) > 0) {
            step++;
        }
        return step;
    }

    private static Optional<BigDecimal> figure(String cell) {
        return cell.equals(Table.NOTHING) ? Optional.empty() : Optional.of(new BigDecimal(cell));
    }
}
