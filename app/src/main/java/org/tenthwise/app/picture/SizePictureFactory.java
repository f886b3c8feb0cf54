package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.compute.cutting.EvenCut;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Clamping;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.CutSoFar;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.words.Words;

/** Turns what was found about a size, and the cuts before it, into its picture. */
final class SizePictureFactory {

    private final Words words;

    SizePictureFactory(Words words) {
        this.words = words;
    }

    SizePicture picture(Plan plan, Line line, SizeFinding finding, boolean advised, String spoken) {
        StepFigures figures = StepFigures.of(finding);
        CheckOfDimension check = finding.check();
        return picture(
                check,
                line,
                figures,
                columns(line, finding, figures),
                advised,
                check.asSize()
                        .map(size -> new BesideFactory(size)
                                .of(plan.outline(), line.step().mark()))
                        .orElse(SizePicture.Beside.NOTHING),
                spoken);
    }

    /**
     * A size of the work as it was found.
     *
     * @param columns what was read for it, and what it was after earlier cuts
     */
    SizePicture picture(
            CheckOfDimension check,
            Line line,
            StepFigures figures,
            List<SizePicture.ReadingColumn> columns,
            boolean advised,
            SizePicture.Beside beside,
            String spoken) {
        return new SizePicture(
                check.asSize().map(CheckOfSize::feature),
                figures.unit(),
                check.limits().lower().map(SizePictureFactory::written),
                check.limits().upper().map(SizePictureFactory::written),
                check.guardBand().length(),
                columns,
                line.finding().value().map(size -> new SizePicture.Sized(size, figures.judged(size))),
                distance(line.finding().verdict(), figures),
                advised ? cut(line, figures) : Optional.empty(),
                Optional.empty(),
                line.step().clamping().filter(Clamping.RELEASED::equals).isEmpty(),
                beside,
                check.asSize()
                        .map(size -> SizePicture.Said.of(words, size.feature(), size.cutAgain()))
                        .orElseGet(() -> SizePicture.Said.of(words, "", "")),
                spoken);
    }

    static Optional<SizePicture.Distance> distance(Verdict verdict, StepFigures figures) {
        return verdict.margin()
                .map(margin -> new SizePicture.Distance(
                        margin.distance(), margin.limit(), figures.distance(margin.distance())));
    }

    static SizePicture.Sized written(Written limit) {
        return new SizePicture.Sized(limit.length(), Figures.written(limit));
    }

    private static SizePicture.Sized sized(Length size, StepFigures figures) {
        return new SizePicture.Sized(size, figures.size(size));
    }

    /** The cut that is proposed, by the one figure it is typed with; without a register, by what comes off. */
    private Optional<SizePicture.Cut> cut(Line line, StepFigures figures) {
        return line.finding()
                .proposal()
                .filter(proposal -> !CutSoFar.contradicted(line))
                .flatMap(proposal -> proposal.cut() instanceof EvenCut.Offered offered
                        ? Optional.of(new SizePicture.Cut(
                                new SizePicture.Sized(offered.aim(), figures.amount(offered.aim())),
                                offered.change().abs(),
                                proposal.offset()
                                        .map(change -> words.say("picture.offset", figures.change(change)))
                                        .orElseGet(() ->
                                                figures.amount(offered.change().abs()))))
                        : Optional.empty());
    }

    private List<SizePicture.ReadingColumn> columns(Line line, SizeFinding finding, StepFigures figures) {
        ColumnsPictureFactory found = new ColumnsPictureFactory(words, figures);
        List<SizePicture.ReadingColumn> columns = new ArrayList<>(found.earlier(line));
        if (finding.check().combine().isRange()) {
            columns.add(SizePicture.ReadingColumn.of(
                    finding.value().isPresent() ? SizePicture.Kind.SPREAD : SizePicture.Kind.MISSING,
                    "",
                    "",
                    finding.value().map(size -> sized(size, figures)),
                    finding.value().isPresent()));
        } else {
            columns.addAll(found.slots(line, finding.deciding(), Measured::of));
        }
        return columns;
    }
}
