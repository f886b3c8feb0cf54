package org.tenthwise.app.session;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
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
                .orElseGet(() -> inOrder(step, pass, sheet.line(step.number()).finding()))
                .map(asked -> asked);
    }

    /** Some room may stay free; what an indicator showed before another gauge was taken is read anew. */
    private static Optional<Prompt.Reading> inOrder(Step step, Pass pass, Finding finding) {
        Set<String> read = step.check()
                .asDimension()
                .flatMap(CheckOfDimension::asIndicated)
                .map(swept -> keys(finding.measured()))
                .orElseGet(() -> pass.standing().keySet());
        List<Slot> slots = step.check().slots();
        List<Slot> missing =
                slots.stream().filter(slot -> !read.contains(slot.key())).toList();
        int taken = slots.size() - missing.size();
        int inAll = finding.readingsInAll();
        return missing.stream()
                .filter(slot -> taken < inAll)
                .findFirst()
                .map(next -> new Prompt.Reading(next, taken, inAll));
    }

    private static Set<String> keys(List<Measured> measured) {
        return measured.stream().map(one -> one.slot().key()).collect(Collectors.toSet());
    }
}
