package org.tenthwise.app.story;

import java.util.stream.Stream;
import org.tenthwise.app.session.State;
import org.tenthwise.app.text.OutcomeWords;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Remark;
import org.tenthwise.model.run.Signature;
import org.tenthwise.model.words.Words;

/** Doubts and notes about the step, what was signed for it, and who signed the run. */
final class SignedChapter {

    private final State state;
    private final Words words;

    SignedChapter(State state, Words words) {
        this.state = state;
        this.words = words;
    }

    StoryChapter told() {
        Sheet sheet = state.sheet();
        return new StoryChapter(
                words.say("story.signed"),
                Stream.of(
                                sheet.run().remarks().stream()
                                        .filter(remark ->
                                                remark.step() == state.inHand().number())
                                        .map(this::remark),
                                state.line().dispositions().stream().map(this::disposed),
                                sheet.run().signatures().stream().map(this::signature))
                        .flatMap(lines -> lines)
                        .toList());
    }

    private StoryLine remark(Remark remark) {
        return StoryLine.of(
                remark.entry(), words.say(words.key("story.remark", remark.kind()), remark.words()), state.at(), words);
    }

    private StoryLine disposed(Disposing disposing) {
        String said = words.say(
                        "story.disposed",
                        words.say("disposition", disposing.disposed().disposition()),
                        words.sentence(disposing.disposed().reason()),
                        new Sentences(words).document(disposing.disposed()))
                .strip();
        StoryLine line = StoryLine.of(disposing.entry(), said, state.at(), words)
                .by(disposing.disposed().signedBy());
        return disposing.inForce() ? line : line.gone(words.say("story.lapsed", said));
    }

    private StoryLine signature(Signature signature) {
        String said = new OutcomeWords(words).signature(signature, state.sheet());
        StoryLine line =
                StoryLine.of(signature.entry(), said, state.at(), words).by(signature.signedBy());
        return signature.lapsed() ? line.gone(said) : line;
    }
}
