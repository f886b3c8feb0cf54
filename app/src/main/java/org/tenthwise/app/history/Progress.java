package org.tenthwise.app.history;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Entry;

/** Where in the plan a run is, as its entries tell: nothing about it is kept anywhere else. */
public final class Progress {

    private Progress() {}

    /** The step of the last thing done, or what follows it once it is settled. */
    public static Step whereItStopped(Sheet sheet) {
        Optional<Step> last = sheet.run().entries().stream()
                .map(Entry::event)
                .flatMap(event -> event.at().stream())
                .reduce((earlier, later) -> later)
                .map(sheet.plan()::step);
        return last.filter(step -> sheet.line(step.number()).open())
                .or(sheet::firstOpen)
                .or(() -> last)
                .orElse(sheet.plan().steps().get(0));
    }

    /** The next step of the order of work after {@code here}, going round, that is neither settled nor held. */
    public static Optional<Step> next(Sheet sheet, Step here) {
        Predicate<Line> isHere = line -> line.step().number() == here.number();
        List<Line> lines = sheet.lines();
        return Stream.concat(
                        lines.stream().dropWhile(isHere.negate()).skip(1),
                        lines.stream().takeWhile(isHere.negate()))
                .filter(line -> line.step().check().isInOrder() && line.open() && !line.held())
                .map(Line::step)
                .findFirst();
    }
}
