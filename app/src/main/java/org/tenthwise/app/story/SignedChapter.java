package org.tenthwise.app.story;

import java.time.OffsetDateTime;
import java.util.stream.Stream;
import org.tenthwise.app.text.OutcomeWords;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Remark;
import org.tenthwise.model.run.Signature;
import org.tenthwise.model.words.Words;

/** Doubts and notes about the step, what was signed for it, and who signed the run. */
final class SignedChapter {

    private final Sheet sheet;
    private final Line line;
    private final OffsetDateTime now;
    private final Words words;

    SignedChapter(Sheet sheet, Line line, OffsetDateTime now, Words words) {
        this.sheet = sheet;
        this.line = line;
        this.now = now;
        this.words = words;
    }

    /** @param ofTheRun whether who signed the run is told too */
    StoryChapter told(boolean ofTheRun) {
        return new StoryChapter(
                words.say("story.signed"),
                Stream.of(
                                sheet.run().remarks().stream()
                                        .filter(remark ->
                                                remark.step() == line.step().number())
                                        .map(this::remark),
                                line.dispositions().stream().map(this::disposed),
                                sheet.run().signatures().stream()
                                        .filter(signature -> ofTheRun)
                                        .map(this::signature))
                        .flatMap(lines -> lines)
                        .toList());
    }

    private StoryLine remark(Remark remark) {
        return StoryLine.of(
                remark.entry(), words.say(words.key("story.remark", remark.kind()), remark.words()), now, words);
    }

    private StoryLine disposed(Disposing disposing) {
        String said = words.say(
                        "story.disposed",
                        words.say("disposition", disposing.disposed().disposition()),
                        words.sentence(disposing.disposed().reason()),
                        new Sentences(words).document(disposing.disposed()))
                .strip();
        StoryLine line = StoryLine.of(disposing.entry(), said, now, words)
                .by(disposing.disposed().signedBy());
        return disposing.inForce() ? line : line.gone(words.say("story.lapsed", said));
    }

    private StoryLine signature(Signature signature) {
        String said = new OutcomeWords(words).signature(signature, sheet);
        StoryLine line = StoryLine.of(signature.entry(), said, now, words).by(signature.signedBy());
        return signature.lapsed() ? line.gone(said) : line;
    }
}
