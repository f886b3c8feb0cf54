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

    public Answer answer(Unit unit, String sum, String given) {
        return assertInstanceOf(Answer.class, ask(unit, sum, given));
    }

    public Problem problem(Unit unit, String sum, String given) {
        return assertInstanceOf(Problem.class, ask(unit, sum, given));
    }

    /** What stands under {@code path}, as {@code jaw_moves.0} or {@code steps.1.to}. */
    public static String at(Answer answer, String path) {
        String[] steps = path.split("\\.");
        Answer.Worked found = answer.at(steps[0]).orElseThrow();
        for (int i = 1; i < steps.length; i++) {
            String step = steps[i];
            found = found instanceof Answer.Worked.Many many
                    ? many.values().get(Integer.parseInt(step))
                    : ((Answer.Worked.Table) found)
                            .values().stream()
                                    .filter(result -> result.key().equals(step))
                                    .findFirst()
                                    .orElseThrow()
                                    .value();
        }
        return ((Answer.Worked.Plain) found).text();
    }

    private Reply ask(Unit unit, String sum, String given) {
        Map<String, Typed> values = new LinkedHashMap<>();
        for (String pair : given.split("; ")) {
            String[] parts = pair.split("=");
            String[] many = parts[1].split(" ");
            values.put(
                    parts[0],
                    many.length == 1
                            ? new Typed.Plain(parts[1])
                            : new Typed.Many(List.of(many).stream()
                                    .<Typed>map(Typed.Plain::new)
                                    .toList()));
        }
        return sums.ask(sum, new Given(Optional.of(unit), values));
    }
}
