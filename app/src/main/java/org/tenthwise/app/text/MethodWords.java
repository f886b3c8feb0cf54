package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.Clamping;
import org.tenthwise.model.plan.IndicatedCheck;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.words.Words;

/**
 * How a step is read: the words of the plan, with how the part is held behind their first sentence, and before it where
 * the part is to be let go; whatever they say how a comparing bore gauge is read, and which way work is turned that is
 * read by angle.
 */
public final class MethodWords {

    private static final Pattern BETWEEN_SENTENCES = Pattern.compile("(?<=[.!?])\\s+");

    private final Words words;

    public MethodWords(Words words) {
        this.words = words;
    }

    /** A sentence each, in the order they are to be read. */
    public List<String> of(Step step, boolean byAngle) {
        List<String> said = new ArrayList<>(
                BETWEEN_SENTENCES.splitAsStream(words.readable(step.method())).toList());
        step.clamping()
                .ifPresent(held -> said.add(
                        held == Clamping.RELEASED ? 0 : Math.min(1, said.size()),
                        new TouchWords(words).clamping(step)));
        step.check()
                .asDimension()
                .flatMap(CheckOfDimension::asIndicated)
                .ifPresent(indicated -> said.add(words.say(
                        indicated.of() == IndicatedCheck.Of.SYMMETRY ? "run.turned-over" : "run.sweep-each")));
        step.check().asTurn().filter(turn -> byAngle).ifPresent(turn -> said.add(new JawWords(words).turning(turn)));
        step.check()
                .means()
                .filter(means -> means.kind().equals(GaugeKind.BORE_GAUGE))
                .ifPresent(means -> said.add(words.say("run.rock")));
        said.removeIf(String::isBlank);
        return said;
    }
}
