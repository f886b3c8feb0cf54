package org.tenthwise.app.sums;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.quantity.Unit;

/** Asks sums in tests: keys as {@code key=value; key=value}, a list as {@code key=1 2 3}. */
public final class Asking {

    private final Sums sums;

    public Asking(List<Sum> sums) {
        this.sums = new Sums(List.of(sums));
    }

    public SumResult answer(Unit unit, String sum, String given) {
        return assertInstanceOf(SumResult.class, ask(unit, sum, given));
    }

    public Problem problem(Unit unit, String sum, String given) {
        return assertInstanceOf(Problem.class, ask(unit, sum, given));
    }

    /** What stands under {@code path}, as {@code jaw_moves.0} or {@code steps.1.to}. */
    public static String at(SumResult answer, String path) {
        String[] steps = path.split("\\.");
        SumResult.OutputValue found = answer.at(steps[0]).orElseThrow();
        for (int i = 1; i < steps.length; i++) {
            String step = steps[i];
            found = found instanceof SumResult.OutputValue.Many many
                    ? many.values().get(Integer.parseInt(step))
                    : ((SumResult.OutputValue.Table) found)
                            .values().stream()
                                    .filter(result -> result.key().equals(step))
                                    .findFirst()
                                    .orElseThrow()
                                    .value();
        }
        return ((SumResult.OutputValue.Plain) found).text();
    }

    private SumReply ask(Unit unit, String sum, String given) {
        Map<String, SumValue> values = new LinkedHashMap<>();
        for (String pair : given.split("; ")) {
            String[] parts = pair.split("=");
            String[] many = parts[1].split(" ");
            values.put(
                    parts[0],
                    many.length == 1
                            ? new SumValue.Plain(parts[1])
                            : new SumValue.Many(List.of(many).stream()
                                    .<SumValue>map(SumValue.Plain::new)
                                    .toList()));
        }
        return sums.ask(sum, new SumInput(Optional.of(unit), values));
    }
}
