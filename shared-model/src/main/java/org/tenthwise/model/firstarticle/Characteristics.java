package org.tenthwise.model.firstarticle;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.tenthwise.model.plan.Instances;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.AccountLine;
import org.tenthwise.model.record.DrawingAccount;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Judge;
import org.tenthwise.model.verdict.VerdictKind;

/** Lays the accounts of several runs beside each other, line by line in the order of the drawing's numbers. */
final class Characteristics {

    /** What results share a line by: what conforms by characteristic and instances, what does not by itself. */
    private record Key(String of, List<Integer> instances, int alone) {}

    private static final int NOT_ALONE = -1;

    private final Map<String, Map<Key, List<FoundInRun>>> byRequirement = new LinkedHashMap<>();

    private Characteristics() {}

    /** @param wanted which lines of the accounts the report is on */
    static List<ReportLine> of(List<Sheet> runs, Predicate<AccountLine> wanted) {
        Characteristics all = new Characteristics();
        for (int column = 0; column < runs.size(); column++) {
            int run = column;
            DrawingAccount.of(runs.get(run)).lines().stream()
                    .filter(wanted)
                    .filter(line -> FoundInRun.leftOut(line)
                            .filter(left -> SamePart.asks(runs, run, left))
                            .isEmpty())
                    .flatMap(line -> results(run, line).stream())
                    .forEach(all::add);
        }
        return all.byRequirement.values().stream()
                .flatMap(lines -> inOrder(lines).stream())
                .toList();
    }

    /** By instance where each has a line; of one instance what conforms first. */
    private static List<ReportLine> inOrder(Map<Key, List<FoundInRun>> lines) {
        return lines.entrySet().stream()
                .sorted(Map.Entry.comparingByKey(Comparator.comparingInt((Key key) ->
                                key.instances().stream().findFirst().orElse(0))
                        .thenComparingInt(Key::alone)))
                .map(line -> new ReportLine(line.getValue()))
                .toList();
    }

    private void add(FoundInRun result) {
        String of = called(result.line());
        boolean each = result.line().drawing().instances().report() == Instances.Report.EACH;
        Key key = result.standing().standsAlone()
                ? new Key(of, result.instances(), result.column())
                : new Key(of, each ? result.instances() : List.of(), NOT_ALONE);
        byRequirement
                .computeIfAbsent(of, first -> new LinkedHashMap<>())
                .computeIfAbsent(key, first -> new ArrayList<>())
                .add(result);
    }

    /** By balloon and check, so that the same requirement of two runs is one. */
    private static String called(AccountLine line) {
        return line.balloon().map(Object::toString).orElse("") + "\n"
                + line.match(new AccountLine.Cases<String>() {
                    @Override
                    public String checked(AccountLine.Checked checked) {
                        return checked.line().step().name();
                    }

                    @Override
                    public String unanswered(AccountLine.Unanswered unanswered) {
                        return "";
                    }

                    @Override
                    public String notInThisRun(AccountLine.NotInThisRun left) {
                        return left.line().step().name();
                    }
                });
    }

    private static List<FoundInRun> results(int column, AccountLine line) {
        return line.match(new AccountLine.Cases<List<FoundInRun>>() {
            @Override
            public List<FoundInRun> checked(AccountLine.Checked checked) {
                Optional<Document> document = checked.line()
                        .step()
                        .check()
                        .asDocument()
                        .flatMap(any -> checked.line().pass().giving())
                        .map(giving -> giving.document());
                Optional<Limits> limits = checked.line().step().limits();
                List<Written> figures = document.map(Document::figures).orElse(List.of());
                return figures.isEmpty() || limits.isEmpty() || checked.standing() == VerdictKind.OPEN
                        ? List.of(plain(column, checked, figures))
                        : ofFigures(column, checked, figures, limits.get());
            }

            @Override
            public List<FoundInRun> unanswered(AccountLine.Unanswered unanswered) {
                return List.of(new FoundInRun(column, unanswered, List.of(), List.of(), CellStanding.OPEN));
            }

            @Override
            public List<FoundInRun> notInThisRun(AccountLine.NotInThisRun left) {
                return List.of(new FoundInRun(column, left, List.of(), List.of(), CellStanding.OPEN));
            }
        });
    }

    private static FoundInRun plain(int column, AccountLine.Checked checked, List<Written> figures) {
        return new FoundInRun(
                column, checked, checked.instances(), figures, CellStanding.of(checked.standing(), checked));
    }

    /** Each figure outside the limits by itself; a document that says no without such a figure is one result. */
    private static List<FoundInRun> ofFigures(
            int column, AccountLine.Checked checked, List<Written> figures, Limits limits) {
        Judge judge = new Judge(limits, Length.of(BigDecimal.ZERO, limits.unit()), Optional.empty());
        List<Integer> out = IntStream.range(0, figures.size())
                .filter(place -> !judge.of(figures.get(place).length()).passed())
                .boxed()
                .toList();
        boolean each = checked.drawing().instances().report() == Instances.Report.EACH
                && figures.size() == checked.drawing().instances().lookedAfter();
        if (out.isEmpty() && !(each && figures.size() > 1) || figures.size() == 1) {
            return List.of(plain(column, checked, figures));
        }
        CellStanding others = out.isEmpty() ? CellStanding.of(checked.standing(), checked) : CellStanding.CONFORMS;
        List<FoundInRun> results = new ArrayList<>();
        List<Integer> in = IntStream.range(0, figures.size())
                .boxed()
                .filter(place -> !out.contains(place))
                .toList();
        if (each) {
            in.forEach(place -> results.add(some(column, checked, List.of(place), figures, others)));
        } else if (!in.isEmpty()) {
            results.add(some(column, checked, in, figures, others));
        }
        out.forEach(
                place -> results.add(some(column, checked, List.of(place), figures, CellStanding.DOES_NOT_CONFORM)));
        return results;
    }

    private static FoundInRun some(
            int column,
            AccountLine.Checked checked,
            List<Integer> places,
            List<Written> figures,
            CellStanding standing) {
        return new FoundInRun(
                column,
                checked,
                places.stream().map(place -> place + 1).toList(),
                places.stream().map(figures::get).toList(),
                standing);
    }
}
