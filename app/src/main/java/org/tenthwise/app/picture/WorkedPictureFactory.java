package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.plan.WorkedCheck;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.WorkedFinding;
import org.tenthwise.model.words.Words;

/** Turns what was worked out of readings into its picture: how they are taken, and what each place comes to. */
final class WorkedPictureFactory {

    private final Words words;

    WorkedPictureFactory(Words words) {
        this.words = words;
    }

    SizePicture picture(Line line, WorkedFinding finding, String spoken) {
        StepFigures figures = StepFigures.of(finding);
        WorkedCheck check = finding.check();
        List<SizePicture.ReadingColumn> columns =
                new ArrayList<>(new ColumnsPictureFactory(words, figures).earlier(line));
        IntStream.range(0, finding.at().size()).forEach(place -> columns.add(column(finding, place, figures)));
        return new SizePictureFactory(words)
                .picture(
                        check,
                        line,
                        figures,
                        columns,
                        false,
                        new SizePicture.Beside.Worked(check.by().match(new WorkedSketches(read(finding)))),
                        spoken);
    }

    private SizePicture.ReadingColumn column(WorkedFinding finding, int place, StepFigures figures) {
        WorkedFinding.At at = finding.at().get(place);
        return new SizePicture.ReadingColumn(
                at.worked().isPresent() ? SizePicture.Kind.TAKEN : SizePicture.Kind.MISSING,
                at.place().angle().map(angle -> Figures.number(angle) + "°").orElse(String.valueOf(place + 1)),
                at.place()
                        .depth()
                        .map(depth -> words.say("picture.at", Figures.written(depth)))
                        .orElse(""),
                at.worked().map(worked -> new SizePicture.Sized(worked.value(), figures.size(worked))),
                at.worked().isPresent() && at.worked().equals(finding.deciding()),
                at.place().depth().map(SizePictureFactory::written),
                at.place().angle());
    }

    /** What was read at the place that is wrong, at the one that decides, or at the one in hand. */
    private static List<Optional<String>> read(WorkedFinding finding) {
        WorkedFinding.At shown = finding.at().stream()
                .filter(at -> at.refused().isPresent())
                .findFirst()
                .or(() -> finding.at().stream()
                        .filter(at ->
                                finding.deciding().isPresent() && at.worked().equals(finding.deciding()))
                        .findFirst())
                .orElseGet(() -> finding.at().stream()
                        .filter(at -> !at.raw().isEmpty())
                        .reduce((earlier, later) -> later)
                        .orElse(finding.at().get(0)));
        return IntStream.range(0, finding.check().by().readings().size())
                .mapToObj(which -> shown.raw().stream()
                        .filter(read -> finding.check().reading(read.slot())
                                == finding.check().by().readings().get(which))
                        .map(read -> Figures.written(read.reading().typed()))
                        .findFirst())
                .toList();
    }
}
