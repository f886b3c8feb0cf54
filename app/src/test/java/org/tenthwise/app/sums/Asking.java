package org.tenthwise.app.sums;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.sums.handbook.Handbook;
import org.tenthwise.model.quantity.Unit;

/** Asks sums in tests: keys as {@code key=value; key=value}, a list as {@code key=1 2 3}. */
public final class Asking {

    private final Sums sums = Handbook.sums();

    /** Figures and words under their keys. */
    public static SumInput given(Unit unit, Map<String, String> texts) {
        Map<String, SumValue> values = new LinkedHashMap<>();
        texts.forEach((key, text) -> values.put(key, new SumValue.Text(text)));
        return new SumInput(Optional.of(unit), values);
    }

    public SumResult answer(Unit unit, String sum, String given) {
        return assertInstanceOf(SumResult.class, ask(unit, sum, given));
    }

    public Problem problem(Unit unit, String sum, String given) {
        return assertInstanceOf(Problem.class, ask(unit, sum, given));
    }

    /** What stands under {@code path}, as {@code jaw_moves.0} or {@code steps.1.to}. */
    public static String at(SumResult answer, String path) {
        SumValue found = answer.written();
        for (String step : path.split("\\.")) {
            found = found instanceof SumValue.Many many
                    ? many.values().get(Integer.parseInt(step))
                    : ((SumValue.Fields) found).values().get(step);
        }
        return ((SumValue.Text) found).text();
    }

    /** What stands under {@code key}; absent where the sum did not give it. */
    public static Optional<SumValue> found(SumResult answer, String key) {
        return Optional.ofNullable(answer.written().values().get(key));
    }

    private SumReply ask(Unit unit, String sum, String given) {
        Map<String, SumValue> values = new LinkedHashMap<>();
        for (String pair : given.split("; ")) {
            String[] parts = pair.split("=");
            String[] many = parts[1].split(" ");
            values.put(parts[0], many.length == 1 ? new SumValue.Text(parts[1]) : SumValue.Many.of(List.of(many)));
        }
        return sums.ask(sum, new SumInput(Optional.of(unit), values));
    }
}
