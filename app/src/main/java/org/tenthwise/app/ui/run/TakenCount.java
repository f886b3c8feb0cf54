package org.tenthwise.app.ui.run;

import java.util.Optional;
import org.tenthwise.app.session.State;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.record.RunOutFinding;

/**
 * How much of a check is taken: the one count its title, what is asked for and its verdict go by. Of a turn that is
 * still being read it is what is read in the way it is read now, at all its sections.
 *
 * @param read not below 0
 * @param all not below {@code read}; 0 where nothing is read at places
 */
record TakenCount(int read, int all) {

    TakenCount {
        all = Math.max(read, all);
    }

    static TakenCount of(State state) {
        return ofTurn(state).orElseGet(() -> {
            int read = state.line()
                    .step()
                    .check()
                    .asDimension()
                    .flatMap(CheckOfDimension::asIndicated)
                    .map(swept -> state.line().finding().measured().size())
                    .orElseGet(() -> state.pass().standing().size());
            return new TakenCount(
                    read,
                    state.line()
                            .finding()
                            .asTurn()
                            .map(turn -> read + turn.missing())
                            .orElseGet(() -> state.line().finding().readingsInAll()));
        });
    }

    /** Absent where nothing is read at a turn now. */
    static Optional<TakenCount> ofTurn(State state) {
        return state.asked().asReading().flatMap(asked -> state.line()
                .finding()
                .asTurn()
                .map(turn -> ofTurn(turn, PromptPresenter.byAngle(state.asked()))));
    }

    private static TakenCount ofTurn(RunOutFinding turn, boolean byAngle) {
        return new TakenCount(
                turn.sections().stream()
                        .mapToInt(at -> (byAngle ? at.byAngle() : at.swept()).size())
                        .sum(),
                turn.check().bySection().stream()
                        .mapToInt(at -> (byAngle ? at.byAngle() : at.sweep()).size())
                        .sum());
    }

    int missing() {
        return all - read;
    }
}
