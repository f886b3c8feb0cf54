package org.tenthwise.app.session;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Pass;

/**
 * What a step that is not shut wants next: its gauge, its temperatures, its readings, its questions, how its cut is
 * typed.
 */
final class NextPrompt {

    private NextPrompt() {}

    static Prompt next(Sheet sheet, Step step, WayOfReading way, GaugeAtHand gauge) {
        Pass pass = sheet.run().pass(step);
        Optional<Prompt> reading = reading(sheet, step, way, pass);
        Optional<Prompt> temperature = Thermometer.asked(sheet.line(step.number()), sheet.run())
                .filter(wanted -> reading.isEmpty() || !way.readingsFirst(pass));
        Optional<Question> question = step.check().questions().stream()
                .filter(q -> pass.answer(q).isEmpty())
                .findFirst();
        Optional<Prompt> register = MachineAtHand.asked(sheet.line(step.number()), sheet.run());
        if (register.isPresent()) {
            return register.get();
        }
        if (step.check().asDocument().isPresent()
                && sheet.line(step.number()).finding().missing() > 0) {
            return new Prompt.ForDocument();
        }
        if (reading.isEmpty() && question.isEmpty() && temperature.isEmpty()) {
            return gauge.asked(step)
                    .filter(any -> sheet.run().gauges().chosen(step.number()).isPresent())
                    .orElseGet(Prompt.Nothing::new);
        }
        return gauge.asked(step)
                .or(() -> temperature)
                .or(() -> reading)
                .orElseGet(() -> new Prompt.Answering(question.orElseThrow()));
    }

    private static Optional<Prompt> reading(Sheet sheet, Step step, WayOfReading way, Pass pass) {
        return sheet.line(step.number())
                .finding()
                .asTurn()
                .map(turn -> new RunOutOrder(turn).next(way.sweep()))
                .orElseGet(() ->
                        inOrder(step, pass, sheet.line(step.number()).finding().readingsInAll()))
                .map(asked -> asked);
    }

    /** @param inAll how many there will be; some room may stay free */
    private static Optional<Prompt.Reading> inOrder(Step step, Pass pass, int inAll) {
        Map<String, Pass.Reading> standing = pass.standing();
        List<Slot> slots = step.check().slots();
        List<Slot> missing =
                slots.stream().filter(slot -> !standing.containsKey(slot.key())).toList();
        int taken = slots.size() - missing.size();
        return missing.stream()
                .filter(slot -> taken < inAll)
                .findFirst()
                .map(next -> new Prompt.Reading(next, taken, inAll));
    }
}
