package org.tenthwise.checklists.rules;

import java.util.Optional;
import org.tenthwise.model.plan.Operation;

/** Numbers rise, none stands twice, and steps follow the order of the operations. */
final class StepOrder {

    private final PlanSoFar soFar;
    private int highestNumber;
    private int furthestOperation = -1;

    StepOrder(PlanSoFar soFar) {
        this.soFar = soFar;
    }

    void judge(TableKeys keys, Optional<Integer> number, Optional<Integer> operation) {
        number.ifPresent(n -> judgeNumber(keys, n));
        operation.ifPresent(o -> judgeOperation(keys, o));
    }

    private void judgeNumber(TableKeys keys, int number) {
        Optional<PlanSoFar.Known> same = soFar.step(number);
        if (number < 1) {
            keys.problem("number", "plan.step.from-one");
        } else if (same.isPresent()) {
            keys.problem("number", "plan.step.twice", same.get().line());
        } else if (number < highestNumber) {
            keys.problem("number", "plan.step.order", highestNumber);
        }
        highestNumber = Math.max(highestNumber, number);
    }

    private void judgeOperation(TableKeys keys, int number) {
        if (soFar.operations().isEmpty()) {
            return; // said already, once for all steps
        }
        int place = soFar.operations().stream().map(Operation::number).toList().indexOf(number);
        if (place < 0) {
            keys.problem("operation", "plan.operation.unknown", number);
        } else if (place < furthestOperation) {
            keys.problem(
                    "operation",
                    "plan.operation.over",
                    number,
                    soFar.operations().get(furthestOperation).number());
        }
        furthestOperation = Math.max(furthestOperation, place);
    }
}
