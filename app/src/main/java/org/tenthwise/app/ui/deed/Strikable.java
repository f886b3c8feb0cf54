package org.tenthwise.app.ui.deed;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.DocumentWords;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.JawWords;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.Taken;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.words.Words;

/**
 * A reading, a temperature, an answer or a document that counts and can be struck out.
 *
 * @param kind which reasons fit it
 * @param entry {@code seq} of the entry that holds it
 */
record Strikable(Kind kind, long entry, String reads) {

    /** What it is. */
    enum Kind {
        READING,
        TEMPERATURE,
        ANSWER,
        DOCUMENT
    }

    /** Those of the step in hand, the latest first. */
    static List<Strikable> of(State state, Words words) {
        List<PassStory> stories = PassStory.of(state.sheet().run(), state.line());
        return stories.stream()
                .flatMap(story -> of(story, words)
                        .map(taken -> story.pass().number() < stories.size()
                                ? new Strikable(
                                        taken.kind(),
                                        taken.entry(),
                                        words.say(
                                                "strike.earlier",
                                                taken.reads(),
                                                story.pass().number()))
                                : taken))
                .sorted(Comparator.comparingLong(Strikable::entry).reversed())
                .toList();
    }

    private static Stream<Strikable> of(PassStory story, Words words) {
        return Stream.of(
                        of(Kind.READING, story.readings(), reading -> reading(words, story.step(), reading)),
                        of(
                                Kind.TEMPERATURE,
                                story.temperatures(),
                                taken -> words.say(words.key("strike.temperature", taken.of()), taken.read())),
                        of(
                                Kind.ANSWER,
                                story.answers(),
                                given -> words.say(words.key("answered", given.question()), given.answer())),
                        of(Kind.DOCUMENT, story.documents(), given -> new DocumentWords(words).whole(given.document())))
                .flatMap(kind -> kind);
    }

    private static <T> Stream<Strikable> of(Kind kind, List<Taken<T>> taken, Function<T, String> reads) {
        return taken.stream()
                .filter(one -> one.struck().isEmpty())
                .map(one -> new Strikable(kind, one.entry().seq(), reads.apply(one.what())));
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
