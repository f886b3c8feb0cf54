package org.tenthwise.app.text;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.plan.BalloonGap;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.DrawingInForce;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.record.AccountLine;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** What stands on the drawing, and what became of it, in words. */
public final class DrawingWords {

    private final Words words;
    private final Sentences sentences;

    public DrawingWords(Words words) {
        this.words = words;
        this.sentences = new Sentences(words);
    }

    /** The drawing with its revision and the changes in force: "T-100, rev C, with change 12". */
    public String drawing(DrawingInForce drawing) {
        return words.list(Stream.of(
                        Optional.of(drawing.title()),
                        drawing.number()
                                .filter(number -> !number.equals(drawing.title()))
                                .map(number -> words.say("drawing.number", number)),
                        drawing.revision().map(revision -> words.say("drawing.revision", revision)),
                        drawing.sheets().map(sheets -> words.say("drawing.sheets", sheets)),
                        Optional.of(drawing.changes())
                                .filter(changes -> !changes.isEmpty())
                                .map(changes -> words.say("drawing.changes", changes)))
                .flatMap(Optional::stream)
                .toList());
    }

    /** "balloon 12A". */
    public String balloon(BalloonNumber balloon) {
        return words.say("drawing.balloon", balloon);
    }

    /** The balloon of a step of the drawing where it is another than the step's own number. */
    public static Optional<BalloonNumber> apart(Step step) {
        return step.drawing().balloon().filter(balloon -> !balloon.isSame(BalloonNumber.of(step.number())));
    }

    /** Which of several alike a line tells of: "4×", "3 of 4"; empty where there is one alone. */
    public String which(AccountLine.Checked line) {
        int count = line.drawing().instances().count();
        if (count == 1) {
            return "";
        }
        return line.instances().size() == count
                ? words.say("drawing.all-of", count)
                : words.say("drawing.one-of", line.instances(), count);
    }

    /** Sheet and zone: "2, C4"; empty where the plan says neither. */
    public String place(OnDrawing drawing) {
        return words.list(Stream.of(drawing.sheet(), drawing.zone())
                .flatMap(Optional::stream)
                .toList());
    }

    /**
     * What was found: a size, the least and the greatest of several, or what was answered; empty before anything is.
     */
    public String result(AccountLine.Checked line) {
        Finding finding = line.line().finding();
        boolean each = finding.check()
                .asDimension()
                .filter(read -> read.combine() == Combine.EACH)
                .isPresent();
        if (!each) {
            return sentences.value(finding);
        }
        return line.least()
                .map(least ->
                        sizes(StepFigures.of(finding), least, line.greatest().orElseThrow()))
                .map(sizes -> line.standing() == VerdictKind.OPEN ? words.say("value.so-far", sizes) : sizes)
                .orElse("");
    }

    private String sizes(StepFigures figures, Measured least, Measured greatest) {
        return least.value().equals(greatest.value())
                ? figures.size(least)
                : words.say("drawing.between", figures.size(least), figures.size(greatest));
    }

    /** Numbers missing in the row: "14, 20 to 23"; empty where none is. */
    public String missing(List<BalloonGap> gaps) {
        return words.list(gaps.stream()
                .map(gap -> gap.isOne()
                        ? gap.row() + gap.first()
                        : words.say("drawing.from-to", gap.row() + gap.first(), gap.row() + gap.last()))
                .toList());
    }
}
