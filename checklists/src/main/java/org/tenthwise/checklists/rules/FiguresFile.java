package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.words.Message;

/**
 * A table of figures, as a coordinate machine hands it out: a line a figure, under the names of its columns, in any
 * order and in any capitals: {@code balloon} or {@code number} of the check (where a line has both, both of the same
 * one), {@code value}, and where it has them {@code instance} (without it, in their order) and {@code unit} (without
 * it, that of the limits). A line with a {@code serial} is of the part with that serial and of no other. Columns of
 * other names are not looked at. Nothing of it is taken where one line cannot be.
 */
public final class FiguresFile {

    private static final String BALLOON = "balloon";
    private static final String NUMBER = "number";
    private static final String VALUE = "value";
    private static final String INSTANCE = "instance";
    private static final String UNIT = "unit";
    private static final String SERIAL = "serial";
    private static final String BYTE_ORDER_MARK = "\uFEFF";
    private static final List<String> SEPARATORS = List.of(";", "\t", ",");

    private final Plan plan;
    private final Optional<String> serial;
    private final List<PlanProblem> problems = new ArrayList<>();
    private final Map<Integer, TreeMap<Integer, Written>> figures = new LinkedHashMap<>();

    private FiguresFile(Plan plan, Optional<String> serial) {
        this.plan = plan;
        this.serial = serial;
    }

    /** What came of reading it. */
    public sealed interface Reading {

        /** @param figures by number of the check, one an instance, in their order */
        record Good(Map<Integer, List<Written>> figures) implements Reading {
            public Good {
                figures = Map.copyOf(figures);
            }
        }

        /** @param problems at least one, in the order of the file */
        record Bad(List<PlanProblem> problems) implements Reading {
            public Bad {
                problems = List.copyOf(problems);
            }
        }
    }

    /** @param serial of the part the figures are taken for; absent where it is not known */
    public static Reading read(String text, Plan plan, Optional<String> serial) {
        return new FiguresFile(plan, serial).of(text);
    }

    private Reading of(String text) {
        List<String> lines = text.replace(BYTE_ORDER_MARK, "").lines().toList();
        String head = lines.isEmpty() ? "" : lines.get(0);
        String separator =
                SEPARATORS.stream().filter(head::contains).findFirst().orElse(",");
        List<String> columns = cells(head, separator).stream()
                .map(name -> name.toLowerCase(Locale.ROOT))
                .toList();
        boolean named = columns.contains(VALUE) && (columns.contains(BALLOON) || columns.contains(NUMBER));
        if (!named) {
            refuse(1, "figures.head");
            return new Reading.Bad(problems);
        }
        for (int i = 1; i < lines.size(); i++) {
            if (!lines.get(i).isBlank()) {
                line(i + 1, columns, cells(lines.get(i), separator));
            }
        }
        figures.forEach(this::judge);
        if (problems.isEmpty() && figures.isEmpty()) {
            refuse(1, "figures.none");
        }
        Map<Integer, List<Written>> taken = new LinkedHashMap<>();
        figures.forEach((step, given) -> taken.put(step, List.copyOf(given.values())));
        return problems.isEmpty() ? new Reading.Good(taken) : new Reading.Bad(problems);
    }

    /** Quotation marks round a cell are no part of it. */
    private static List<String> cells(String line, String separator) {
        return Arrays.stream(line.split(Pattern.quote(separator), -1))
                .map(String::strip)
                .map(cell -> cell.length() > 1 && cell.startsWith("\"") && cell.endsWith("\"")
                        ? cell.substring(1, cell.length() - 1).strip()
                        : cell)
                .toList();
    }

    private void line(int line, List<String> columns, List<String> cells) {
        if (cells.size() != columns.size()) {
            refuse(line, "figures.cells", cells.size(), columns.size());
            return;
        }
        Map<String, String> said = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            said.putIfAbsent(columns.get(i), cells.get(i));
        }
        String other = said.getOrDefault(SERIAL, "");
        if (!other.isEmpty() && serial.filter(own -> !own.equals(other)).isPresent()) {
            refuse(line, "figures.serial", other, serial.get());
            return;
        }
        Optional<Integer> instance = instance(line, said.getOrDefault(INSTANCE, ""));
        step(line, said, instance)
                .ifPresent(step -> value(line, said, step).ifPresent(figure -> put(line, step, instance, figure)));
    }

    private Optional<Integer> instance(int line, String said) {
        if (said.isEmpty()) {
            return Optional.empty();
        }
        if (!said.matches("[1-9]\\d{0,3}")) {
            refuse(line, "figures.instance", said);
            return Optional.empty();
        }
        return Optional.of(Integer.parseInt(said));
    }

    /**
     * The check a line is about: by its number, or by its balloon, of several the one that looks after the instance.
     */
    private Optional<Step> step(int line, Map<String, String> said, Optional<Integer> instance) {
        String balloon = said.getOrDefault(BALLOON, "");
        String number = said.getOrDefault(NUMBER, "");
        List<Step> meant = plan.steps().stream()
                .filter(step -> number.isEmpty()
                        ? plan.balloon(step)
                                .filter(drawn -> drawn.text().equals(balloon))
                                .isPresent()
                        : String.valueOf(step.number()).equals(number))
                .filter(step -> step.drawing().instances().one().isEmpty()
                        || !number.isEmpty()
                        || step.drawing().instances().one().equals(instance))
                .toList();
        String name = number.isEmpty() ? balloon : number;
        if (meant.isEmpty()) {
            refuse(line, "figures.unknown", name);
            return Optional.empty();
        }
        String drawn = plan.balloon(meant.get(0)).map(BalloonNumber::text).orElse("");
        if (!balloon.isEmpty() && !balloon.equals(drawn)) {
            refuse(line, "figures.other-balloon", number, drawn, balloon);
            return Optional.empty();
        }
        List<Step> proven = meant.stream()
                .filter(step ->
                        step.check().asDocument().isPresent() && step.limits().isPresent())
                .toList();
        if (proven.size() != 1) {
            refuse(line, "figures.not-proven-so", name);
            return Optional.empty();
        }
        return Optional.of(proven.get(0));
    }

    private Optional<Written> value(int line, Map<String, String> said, Step step) {
        String text = said.get(VALUE);
        String symbol = said.getOrDefault(UNIT, "");
        Unit limits = plan.unit(step);
        Optional<Unit> unit = symbol.isEmpty() ? Optional.of(limits) : Unit.ofSymbol(symbol);
        if (unit.filter(known -> known.kind() == limits.kind()).isEmpty()) {
            refuse(line, "figures.unit", symbol, limits.symbol());
            return Optional.empty();
        }
        Optional<Written> figure = Written.typed(text, unit.get());
        if (figure.isEmpty()) {
            refuse(line, "figures.value", text);
        }
        return figure;
    }

    private void put(int line, Step step, Optional<Integer> instance, Written figure) {
        TreeMap<Integer, Written> given = figures.computeIfAbsent(step.number(), first -> new TreeMap<>());
        int at = step.drawing().instances().one().isPresent() ? 1 : instance.orElse(given.size() + 1);
        if (given.putIfAbsent(at, figure) != null) {
            refuse(line, "figures.twice", step.number(), at);
        }
    }

    /** One for each instance, from the first to the last. */
    private void judge(int number, TreeMap<Integer, Written> given) {
        int wanted = plan.step(number).drawing().instances().lookedAfter();
        if (problems.isEmpty() && (given.size() != wanted || given.lastKey() != wanted)) {
            refuse(1, "figures.count", number, given.size(), wanted);
        }
    }

    private void refuse(int line, String what, Object... values) {
        problems.add(new PlanProblem(line, 1, Message.of(what, values)));
    }
}
