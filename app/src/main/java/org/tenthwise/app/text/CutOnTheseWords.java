package org.tenthwise.app.text;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.words.Words;

/** What is missing of a pass that is cut on all the same: the same where it is signed for and in the record. */
public final class CutOnTheseWords {

    private final Words words;

    public CutOnTheseWords(Words words) {
        this.words = words;
    }

    /**
     * The places without a reading that counts, the temperatures, how the gauge touched, the root under the wires;
     * empty where nothing is missing.
     *
     * @param finding what the pass comes to; absent where nothing was taken
     */
    public String missing(Step step, Pass pass, Optional<Finding> finding) {
        List<String> places = places(step.check().slots().stream()
                .filter(slot -> !pass.standing().containsKey(slot.key()))
                .toList());
        boolean untold = step.check().questions().contains(Question.GROOVES_TOUCHED)
                && pass.answer(Question.GROOVES_TOUCHED).isEmpty();
        return Stream.of(
                        places.isEmpty() ? "" : words.say("on-these.unread", places),
                        finding.flatMap(Finding::warmth)
                                        .filter(heat -> heat.missing() > 0)
                                        .isPresent()
                                ? words.say("on-these.temperatures")
                                : "",
                        untold ? words.say("on-these.touch") : "",
                        finding.filter(Finding::awaitsAnother).isPresent() ? words.say("on-these.root") : "")
                .filter(said -> !said.isEmpty())
                .collect(Collectors.joining(" "));
    }

    /** Their names, each once. */
    static List<String> places(List<Slot> slots) {
        return slots.stream().map(Slot::place).map(Place::name).distinct().toList();
    }
}
