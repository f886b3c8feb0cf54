package org.tenthwise.app.ui.deed;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.JawWords;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.words.Words;

/**
 * A reading, a temperature or an answer that counts and can be struck out.
 *
 * @param entry {@code seq} of the entry that holds it
 */
record Strikable(long entry, String reads) {

    /** Those of the step in hand, the latest first. */
    static List<Strikable> of(State state, Words words) {
        Step step = state.inHand();
        List<Strikable> all = new ArrayList<>();
        List<Pass> passes = state.line().passes();
        for (Pass pass : passes) {
            boolean earlier = pass.number() < passes.size();
            pass.readings().stream()
                    .filter(reading -> reading.struck().isEmpty())
                    .forEach(reading -> all.add(new Strikable(
                            reading.entry().seq(), passed(words, earlier, pass, reading(words, step, reading)))));
            pass.temperatures().stream()
                    .filter(taken -> taken.struck().isEmpty())
                    .forEach(taken -> all.add(new Strikable(
                            taken.entry().seq(),
                            passed(
                                    words,
                                    earlier,
                                    pass,
                                    words.say(words.key("strike.temperature", taken.of()), taken.read())))));
            pass.answers().stream()
                    .filter(answer -> answer.struck().isEmpty())
                    .forEach(answer -> all.add(new Strikable(
                            answer.entry().seq(),
                            passed(
                                    words,
                                    earlier,
                                    pass,
                                    words.say(words.key("answered", answer.question()), answer.answer())))));
        }
        all.sort(Comparator.comparingLong(Strikable::entry).reversed());
        return all;
    }

    private static String passed(Words words, boolean earlier, Pass pass, String reads) {
        return earlier ? words.say("strike.earlier", reads, pass.number()) : reads;
    }

    private static String reading(Words words, Step step, Pass.Reading reading) {
        String figure = Figures.withUnit(reading.typed());
        return step.check()
                .slot(reading.slot())
                .map(slot -> {
                    String place = new JawWords(words).place(step.check(), slot);
                    return slot.repeat() == 1
                            ? words.say("strike.reading", figure, place)
                            : words.say("strike.reading-again", figure, place, slot.repeat());
                })
                .orElse(figure);
    }
}
