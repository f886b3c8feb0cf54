package org.tenthwise.app.export.pdf;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.TemperatureScale;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;

/** Which sizes are said to be those at the reference temperature: what was brought to it, and nothing else. */
final class AtTwentyWords {

    private final RecordContext matter;

    AtTwentyWords(RecordContext matter) {
        this.matter = matter;
    }

    String sentence() {
        Plan plan = matter.plan();
        String unit = plan.unit().symbol();
        List<String> corrected = numbers(by -> by.signum() != 0);
        List<String> asTheyAre = numbers(by -> by.signum() == 0).stream()
                .filter(number -> !corrected.contains(number))
                .toList();
        if (corrected.isEmpty() && asTheyAre.isEmpty()) {
            return matter.say("record.temperature", unit);
        }
        TemperatureScale usual = plan.unit() == Unit.INCH ? TemperatureScale.FAHRENHEIT : TemperatureScale.CELSIUS;
        String reference = matter.words()
                .say(
                        "record.temperature-in",
                        plan.climate().map(ThermalData::scale).orElse(usual));
        return matter.say(
                "record.temperature.corrected",
                unit,
                said("record.temperature.of", corrected, reference),
                said("record.temperature.none-needed", asTheyAre, reference));
    }

    private String said(String key, List<String> numbers, String reference) {
        return numbers.isEmpty() ? "" : matter.say(key, numbers, reference, numbers.size());
    }

    /** The checks that stand with a size so brought to it. */
    private List<String> numbers(Predicate<Length> by) {
        return matter.sheet().lines().stream()
                .filter(line -> line.finding().measured().stream()
                        .map(Measured::forTemperature)
                        .flatMap(Optional::stream)
                        .anyMatch(by))
                .sorted(Comparator.comparing((Line line) -> line.step().number()))
                .map(line -> String.valueOf(line.step().number()))
                .toList();
    }
}
