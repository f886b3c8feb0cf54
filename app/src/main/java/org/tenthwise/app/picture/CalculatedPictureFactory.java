package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.CalculatedFinding;
import org.tenthwise.model.words.Words;

/** Turns what was worked out of other checks into its picture. */
final class CalculatedPictureFactory {

    private final Words words;

    CalculatedPictureFactory(Words words) {
        this.words = words;
    }

    CalculatedPicture picture(CalculatedFinding finding, String spoken) {
        StepFigures figures = StepFigures.of(finding);
        SizePicture strip = new SizePicture(
                Optional.empty(),
                figures.unit(),
                finding.check().limits().lower().map(SizePictureFactory::written),
                finding.check().limits().upper().map(SizePictureFactory::written),
                Length.of(BigDecimal.ZERO, figures.unit()),
                List.of(
                        column(finding, finding.least(), "picture.least", figures),
                        column(finding, finding.greatest(), "picture.most", figures)),
                finding.value().map(size -> new SizePicture.Sized(size, figures.judged(size))),
                SizePictureFactory.distance(finding.verdict(), figures),
                Optional.empty(),
                Optional.empty(),
                true,
                SizePicture.Beside.NOTHING,
                SizePicture.Said.of(words, "", ""),
                spoken);
        Sentences sentences = new Sentences(words);
        return new CalculatedPicture(
                strip,
                finding.parts().stream()
                        .map(part -> new CalculatedPicture.Part(
                                part.use().name(),
                                sentences.figures(part),
                                words.say(
                                        "picture.calculated.step",
                                        part.use().step(),
                                        part.step().name()),
                                part.sizes().isEmpty()))
                        .toList(),
                spoken);
    }

    private SizePicture.ReadingColumn column(
            CalculatedFinding finding, Optional<Length> size, String label, StepFigures figures) {
        return SizePicture.ReadingColumn.of(
                size.isPresent() ? SizePicture.Kind.TAKEN : SizePicture.Kind.MISSING,
                words.say(label),
                "",
                size.map(at -> new SizePicture.Sized(at, figures.judged(at))),
                size.isPresent() && size.equals(finding.value()));
    }
}
