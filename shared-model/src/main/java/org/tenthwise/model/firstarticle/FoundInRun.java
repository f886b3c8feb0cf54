package org.tenthwise.model.firstarticle;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.AccountLine;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.run.StepEvent;

/**
 * What one run found of a characteristic.
 *
 * @param column place of the run in the report, from 0
 * @param line of the account of the drawing in that run
 * @param instances those of several alike it tells of, rising; empty where there is one alone
 * @param figures that a document gives of them; empty where none does
 */
public record FoundInRun(
        int column, AccountLine line, List<Integer> instances, List<Written> figures, CellStanding standing) {

    public FoundInRun {
        instances = List.copyOf(instances);
        figures = List.copyOf(figures);
    }

    /** Whether the run leaves the characteristic out, so that nothing of it is known there. */
    public boolean isLeftOut() {
        return leftOut(line).isPresent();
    }

    /** The check that a run leaves out; absent where it asks for it, or no check of the drawing answers the balloon. */
    static Optional<Line> leftOut(AccountLine line) {
        return line.match(new AccountLine.Cases<Optional<Line>>() {
            @Override
            public Optional<Line> checked(AccountLine.Checked checked) {
                return Optional.empty();
            }

            @Override
            public Optional<Line> unanswered(AccountLine.Unanswered unanswered) {
                return Optional.empty();
            }

            @Override
            public Optional<Line> notInThisRun(AccountLine.NotInThisRun left) {
                return Optional.of(left.line());
            }
        });
    }

    /** The check it comes from; absent where none of the drawing answers the balloon. */
    public Optional<AccountLine.Checked> checked() {
        return line.match(new AccountLine.Cases<Optional<AccountLine.Checked>>() {
            @Override
            public Optional<AccountLine.Checked> checked(AccountLine.Checked checked) {
                return Optional.of(checked);
            }

            @Override
            public Optional<AccountLine.Checked> unanswered(AccountLine.Unanswered unanswered) {
                return Optional.empty();
            }

            @Override
            public Optional<AccountLine.Checked> notInThisRun(AccountLine.NotInThisRun left) {
                return Optional.empty();
            }
        });
    }

    /** What was decided where it does not conform, as far as it is in force, or as it was repaired. */
    public Optional<StepEvent.DispositionSigned> decided() {
        return checked().filter(any -> standing.standsAlone()).flatMap(any -> decided(any.line()));
    }

    private static Optional<StepEvent.DispositionSigned> decided(Line line) {
        return line.disposed()
                .or(() -> line.repaired()
                        ? line.dispositions().stream()
                                .map(signed -> signed.disposed())
                                .filter(signed -> signed.disposition().departsFromTheDrawing())
                                .reduce((earlier, later) -> later)
                        : Optional.empty());
    }
}
