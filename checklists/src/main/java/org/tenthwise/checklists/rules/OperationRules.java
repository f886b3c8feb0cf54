package org.tenthwise.checklists.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.model.plan.Cutting;
import org.tenthwise.model.plan.Operation;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;

/** The operations of a plan, numbers rising. */
final class OperationRules {

    private OperationRules() {}

    /**
     * Those that are sound.
     *
     * @param operations in the order of the file
     * @param cutting what each says of the cuts made in it, by its number
     */
    record Known(List<Operation> operations, Map<Integer, Cutting> cutting) {}

    static Known read(TableKeys plan, Unit unit) {
        List<Operation> operations = new ArrayList<>();
        Map<Integer, Cutting> cutting = new HashMap<>();
        for (RawTable table : plan.tables("operation")) {
            TableKeys unnamed = plan.inside("operation", table);
            Optional<Integer> number = unnamed.whole("number");
            TableKeys keys = number.map(n -> unnamed.about(Message.of("plan.in.operation", n)))
                    .orElse(unnamed);
            Optional<String> name = keys.text("name");
            Cutting cuts = CuttingRules.ofOperation(keys, unit);
            keys.finish();
            number.ifPresent(n -> {
                judgeOrder(keys, n, operations);
                operations.add(new Operation(n, name.orElse("")));
                cutting.putIfAbsent(n, cuts);
            });
        }
        return new Known(operations, cutting);
    }

    private static void judgeOrder(TableKeys keys, int number, List<Operation> before) {
        if (number < 1) {
            keys.problem("number", "plan.operation.from-one");
        }
        if (before.stream().anyMatch(operation -> operation.number() == number)) {
            keys.problem("number", "plan.operation.twice");
        } else if (!before.isEmpty() && before.get(before.size() - 1).number() > number) {
            keys.problem(
                    "number",
                    "plan.operation.order",
                    before.get(before.size() - 1).number());
        }
    }
}
