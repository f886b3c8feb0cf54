package org.tenthwise.model.record;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tenthwise.model.plan.BalloonGap;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;

/**
 * The drawing accounted for: a line for each of its requirements, with what became of it or that it is open.
 *
 * @param lines in the order of the drawing's numbers; at the end, in the order of work, those that have none
 * @param gaps numbers missing in the row, of which nothing is known
 */
public record DrawingAccount(List<AccountLine> lines, List<BalloonGap> gaps) {

    /** Without a number it stands behind all that have one. */
    private static final Comparator<AccountLine> ORDER = Comparator.<AccountLine, Boolean>comparing(
                    line -> line.balloon().isEmpty())
            .thenComparing((one, other) -> one.balloon()
                    .flatMap(here -> other.balloon().map(here::compareTo))
                    .orElse(0));

    public DrawingAccount {
        lines = List.copyOf(lines);
        gaps = List.copyOf(gaps);
    }

    public static DrawingAccount of(Sheet sheet) {
        return of(sheet, false);
    }

    /** The same with each of several alike on a line of its own, however the plan asks for them. */
    public static DrawingAccount ofEach(Sheet sheet) {
        return of(sheet, true);
    }

    private static DrawingAccount of(Sheet sheet, boolean each) {
        Plan plan = sheet.plan();
        List<AccountLine> lines = Stream.concat(
                        sheet.lines().stream()
                                .filter(line -> line.isOfDrawing() && !isOfProductAlone(line))
                                .sorted(Comparator.comparing(line -> line.step().number()))
                                .flatMap(line -> of(plan, line, each)),
                        unanswered(plan))
                .sorted(ORDER)
                .toList();
        List<BalloonNumber> balloons = lines.stream()
                .map(AccountLine::balloon)
                .flatMap(Optional::stream)
                .toList();
        return new DrawingAccount(lines, plan.isBallooned() ? BalloonGap.in(balloons) : List.of());
    }

    private static Stream<? extends AccountLine> of(Plan plan, Line line, boolean each) {
        Optional<BalloonNumber> balloon = plan.balloon(line.step());
        return line.asked()
                ? InstancesFound.of(balloon, line, each).stream()
                : Stream.of(new AccountLine.NotInThisRun(balloon, line));
    }

    /** What the part is made of or put through is no requirement of the drawing where that gives it no number. */
    public static boolean isOfProductAlone(Line line) {
        return line.step().drawing().balloon().isEmpty()
                && line.step()
                        .check()
                        .asDocument()
                        .filter(document -> document.proof().isOfProduct())
                        .isPresent();
    }

    /** Balloons that checks on the way name and no check of the drawing answers, in the order of the drawing. */
    public static List<BalloonNumber> unansweredBy(Plan plan) {
        return unanswered(plan)
                .flatMap(line -> line.balloon().stream())
                .sorted()
                .toList();
    }

    /** Balloons that are named by checks on the way alone, each once. */
    private static Stream<AccountLine> unanswered(Plan plan) {
        TreeMap<BalloonNumber, OnDrawing> named =
                new TreeMap<>(Comparator.comparing(BalloonNumber::text, String.CASE_INSENSITIVE_ORDER));
        plan.steps().stream().filter(step -> !step.isOfDrawing()).forEach(step -> step.drawing()
                .balloon()
                .ifPresent(balloon -> named.putIfAbsent(balloon, step.drawing())));
        plan.steps().stream()
                .filter(Step::isOfDrawing)
                .forEach(step -> step.drawing().balloon().ifPresent(named::remove));
        return named.entrySet().stream()
                .map(entry -> new AccountLine.Unanswered(Optional.of(entry.getKey()), entry.getValue()));
    }
}
