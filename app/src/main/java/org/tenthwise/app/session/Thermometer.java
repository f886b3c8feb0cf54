package org.tenthwise.app.session;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.ThermalData;
import org.tenthwise.model.quantity.Degrees;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Plausible;
import org.tenthwise.model.record.TemperatureEffect;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.run.Run;

/** The temperatures of a pass: which is wanted, what to suggest, and what is said against one that is typed. */
final class Thermometer {

    private Thermometer() {}

    /** The next temperature to take once the readings are there. */
    static Optional<Prompt> asked(Line line, Run run) {
        return line.finding()
                .warmth()
                .flatMap(TemperatureEffect::wanted)
                .map(body -> new Prompt.Temperature(body, suggested(body, line, run)));
    }

    /**
     * What was read last of {@code body} and was not struck out; nothing from before work that warms. The gauge lies
     * where it lies: that may have been at any check. A part cools from check to check, and what the ledger is not told
     * of warms it: of the part it is what the check in hand found in this pass or the one before.
     */
    private static Optional<Degrees> suggested(MeasuredBody body, Line line, Run run) {
        long cut = run.entries().stream()
                .filter(entry -> entry.event().takesMetal())
                .mapToLong(Entry::seq)
                .max()
                .orElse(0);
        return (body == MeasuredBody.PART ? ofTheLastTwo(line.passes()) : run.temperatures())
                .filter(taken -> taken.of() == body
                        && taken.struck().isEmpty()
                        && taken.entry().seq() > cut)
                .reduce((earlier, later) -> later)
                .map(Pass.Temperature::read);
    }

    private static Stream<Pass.Temperature> ofTheLastTwo(List<Pass> passes) {
        return passes.stream().skip(Math.max(0, passes.size() - 2)).flatMap(pass -> pass.temperatures().stream());
    }

    static Optional<Objection> objection(String text, ThermalData climate) {
        if (!Written.isPlainDecimal(text)) {
            return Optional.of(new Objection(Objection.Kind.NOT_A_NUMBER, text));
        }
        Degrees read;
        try {
            read = Degrees.of(text, climate.scale());
        } catch (IllegalArgumentException e) {
            return Optional.of(Objection.noSum(e));
        }
        return Plausible.temperature(climate, read)
                ? Optional.empty()
                : Optional.of(new Objection(
                        Objection.Kind.FAR_OFF,
                        text,
                        climate.scale().of(climate.shop().least()).text() + "\u2013"
                                + climate.scale().of(climate.shop().greatest()).text()));
    }
}
