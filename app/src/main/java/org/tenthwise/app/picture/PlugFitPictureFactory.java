package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.compute.fit.Clearance;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.PlugFitCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.PlugFitFinding;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.words.Words;

/** Turns what was found about a plug in its bore into its picture. */
final class PlugFitPictureFactory {

    private static final Length LEAST_WIDEST = Length.of("0.001", Unit.MILLIMETRE);

    private final Words words;

    PlugFitPictureFactory(Words words) {
        this.words = words;
    }

    PlugPicture picture(PlugFitFinding finding, String spoken) {
        StepFigures figures = StepFigures.of(finding);
        PlugFitCheck check = finding.check();
        Length wanted = check.clearance().middle();
        Length widest = check.clearance()
                .at(Limit.UPPER)
                .map(limit -> limit.length().abs())
                .orElse(wanted.abs());
        return new PlugPicture(
                strip(finding, figures, spoken),
                wanted,
                Length.greatest(List.of(widest, LEAST_WIDEST)),
                finding.bore().isEmpty()
                        ? Length.ZERO
                        : Length.greatest(finding.bore()).minus(Length.least(finding.bore())),
                finding.feel().map(feel -> hand(finding, feel)),
                notes(finding, figures),
                spoken);
    }

    private PlugPicture.Hand hand(PlugFitFinding finding, Answer feel) {
        return new PlugPicture.Hand(
                feel,
                words.say(words.key("answered", Question.PLUG_FEELS), feel),
                feel != finding.check().feel().answer(),
                finding.contradiction().map(how -> words.say("picture.contradiction")));
    }

    private SizePicture strip(PlugFitFinding finding, StepFigures figures, String spoken) {
        PlugFitCheck check = finding.check();
        Optional<Limit> near = finding.verdict().margin().map(Verdict.Margin::limit);
        return new SizePicture(
                Feature.BORE,
                figures.unit(),
                check.clearance().lower().map(SizePictureFactory::written),
                check.clearance().upper().map(SizePictureFactory::written),
                Length.ZERO,
                List.of(
                        column(
                                finding,
                                Clearance::least,
                                "picture.least",
                                near.filter(Limit.LOWER::equals).isPresent(),
                                figures),
                        column(
                                finding,
                                Clearance::greatest,
                                "picture.most",
                                near.filter(Limit.UPPER::equals).isPresent(),
                                figures)),
                near.flatMap(limit -> finding.clearance()
                                .map(found -> limit == Limit.LOWER ? found.least() : found.greatest()))
                        .map(size -> new SizePicture.Sized(size, figures.size(size))),
                SizePictureFactory.distance(finding.verdict(), figures),
                Optional.empty(),
                Optional.of(Length.ZERO),
                SizePicture.Said.of(words, words.say("picture.too-slack"), words.say("picture.too-tight")),
                spoken);
    }

    private SizePicture.ReadingColumn column(
            PlugFitFinding finding,
            Function<Clearance, Length> which,
            String label,
            boolean decides,
            StepFigures figures) {
        Optional<SizePicture.Sized> size = finding.clearance()
                .map(which)
                .map(clearance -> new SizePicture.Sized(clearance, figures.size(clearance)));
        return SizePicture.ReadingColumn.of(
                size.isPresent() ? SizePicture.Kind.TAKEN : SizePicture.Kind.MISSING,
                words.say(label),
                "",
                size,
                decides && size.isPresent());
    }

    private List<String> notes(PlugFitFinding finding, StepFigures figures) {
        List<String> notes = new ArrayList<>();
        if (!finding.bore().isEmpty()) {
            notes.add(words.say("picture.bore", fromTo(finding.bore(), figures)));
        }
        if (!finding.plug().isEmpty()) {
            notes.add(words.say(
                    "picture.plug",
                    fromTo(finding.plug().stream().map(Measured::value).toList(), figures)));
        }
        return notes;
    }

    private String fromTo(Collection<Length> sizes, StepFigures figures) {
        String least = figures.plain(Length.least(sizes));
        String greatest = figures.plain(Length.greatest(sizes));
        return least.equals(greatest) ? least : words.say("picture.from-to", least, greatest);
    }
}
