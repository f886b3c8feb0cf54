package org.tenthwise.app.firstarticle;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.firstarticle.CellStanding;
import org.tenthwise.model.firstarticle.FoundInRun;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Instances;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.AskedFinding;
import org.tenthwise.model.record.AtPoint;
import org.tenthwise.model.record.CalculatedFinding;
import org.tenthwise.model.record.DocumentFinding;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.OverWiresFinding;
import org.tenthwise.model.record.PlugFitFinding;
import org.tenthwise.model.record.PositionFinding;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.record.WorkedFinding;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * What was found, as it stands in the column of results: the figure as it was typed wherever a reading is the size
 * itself, and else, as where it was corrected to 20 °C, the size made of it with as many places as are known; of
 * several the least and the greatest, or each. It conforms or does not only where there is no figure. Nothing stands
 * there before all is found.
 */
final class ResultText {

    private static final char MINUS = '\u2212';

    private final Words words;

    ResultText(Words words) {
        this.words = words;
    }

    String of(FoundInRun result) {
        if (result.standing() == CellStanding.OPEN) {
            return "";
        }
        return result.checked()
                .map(checked -> checked.line().finding().match(new Told(result, checked.measured())))
                .orElse("")
                .replace(MINUS, '-');
    }

    /** Whether it is judged without a figure. */
    boolean isAttribute(FoundInRun result) {
        return result.standing() != CellStanding.OPEN && of(result).equals(attribute(result));
    }

    private String attribute(FoundInRun result) {
        return result.standing() == CellStanding.UNPROVEN
                ? words.say("report.unproven")
                : words.say(
                        result.checked()
                                        .filter(checked -> checked.standing() == VerdictKind.PASS)
                                        .isPresent()
                                ? "report.conforms"
                                : "report.does-not-conform");
    }

    /** Each kind of finding in its own way. */
    private final class Told implements Finding.Cases<String> {

        private final FoundInRun result;
        private final List<Measured> measured;

        Told(FoundInRun result, List<Measured> measured) {
            this.result = result;
            this.measured = measured;
        }

        @Override
        public String asked(AskedFinding finding) {
            return attribute(result);
        }

        @Override
        public String runOut(RunOutFinding finding) {
            return judged(finding);
        }

        @Override
        public String size(SizeFinding finding) {
            return read(finding);
        }

        /** Of several axes the least to the greatest; where it does not conform, each by what it is called. */
        @Override
        public String position(PositionFinding finding) {
            StepFigures figures = StepFigures.of(finding);
            Comparator<AtPoint> byDeviation =
                    Comparator.comparing(point -> point.deviation().diameter());
            List<AtPoint> points = finding.points().stream().sorted(byDeviation).toList();
            if (points.size() < 2) {
                return judged(finding);
            }
            return result.standing() == CellStanding.CONFORMS
                    ? between(deviation(figures, points.get(0)), deviation(figures, points.get(points.size() - 1)))
                    : finding.points().stream()
                            .map(point -> words.say(
                                    "report.more.of", words.list(point.point().called()), deviation(figures, point)))
                            .collect(Collectors.joining("; "));
        }

        private static String deviation(StepFigures figures, AtPoint point) {
            return figures.judged(point.deviation().diameter());
        }

        @Override
        public String overWires(OverWiresFinding finding) {
            return read(finding);
        }

        @Override
        public String worked(WorkedFinding finding) {
            return read(finding);
        }

        @Override
        public String plugFit(PlugFitFinding finding) {
            StepFigures figures = StepFigures.of(finding);
            return finding.clearance()
                    .map(of -> between(figures.size(of.least()), figures.size(of.greatest())))
                    .map(clearance -> finding.feel()
                            .map(feel -> words.say("report.fit", felt(feel), clearance))
                            .orElse(clearance))
                    .orElseGet(() -> attribute(result));
        }

        /** What the hand found goes first: a clearance within its limits does not say that the plug goes in. */
        private String felt(Answer feel) {
            return words.say(words.key("answered", Question.PLUG_FEELS), feel);
        }

        @Override
        public String calculated(CalculatedFinding finding) {
            StepFigures figures = StepFigures.of(finding);
            List<String> ends = finding.bothEnds().stream().map(figures::judged).toList();
            return ends.isEmpty() ? judged(finding) : between(ends.get(0), ends.get(ends.size() - 1));
        }

        @Override
        public String document(DocumentFinding finding) {
            List<Written> figures = result.figures();
            if (figures.isEmpty()) {
                return attribute(result);
            }
            boolean each = finding.step().drawing().instances().report() == Instances.Report.EACH;
            Comparator<Written> bySize = Comparator.comparing(Written::length);
            return each
                    ? figures.stream().map(ResultText::typed).collect(Collectors.joining("; "))
                    : between(
                            typed(figures.stream().min(bySize).orElseThrow()),
                            typed(figures.stream().max(bySize).orElseThrow()));
        }

        /** The readings where each is judged; else the one size made of them. */
        private String read(Finding finding) {
            boolean each = finding.check()
                    .asDimension()
                    .filter(dimension -> dimension.combine() == Combine.EACH)
                    .isPresent();
            Comparator<Measured> bySize = Comparator.comparing(Measured::value);
            Optional<Measured> least = measured.stream().min(bySize);
            return each && least.isPresent()
                    ? between(
                            figure(finding, least.get()),
                            figure(finding, measured.stream().max(bySize).orElseThrow()))
                    : judged(finding);
        }

        private String judged(Finding finding) {
            return finding.deciding()
                    .filter(reading -> finding.value().equals(Optional.of(reading.value())))
                    .map(reading -> figure(finding, reading))
                    .or(() ->
                            finding.value().map(size -> StepFigures.of(finding).judged(size)))
                    .orElseGet(() -> attribute(result));
        }
    }

    /** Two ends, or the one where they are alike. */
    String between(String least, String greatest) {
        return least.equals(greatest) ? least : words.say("drawing.between", least, greatest);
    }

    /** As typed where that is the size; else worked out. */
    private static String figure(Finding finding, Measured measured) {
        Written typed = measured.reading().typed();
        Unit unit = finding.step().limits().orElseThrow().unit();
        return measured.isAsRead() && typed.unit().equals(unit)
                ? typed(typed)
                : StepFigures.of(finding).size(measured);
    }

    /** The size a reading showed before it was corrected: as typed where it is that. */
    static String shown(Finding finding, Measured measured) {
        Written typed = measured.reading().typed();
        return measured.uncorrected().equals(measured.raw())
                        && typed.unit()
                                .equals(finding.step().limits().orElseThrow().unit())
                ? typed(typed)
                : StepFigures.of(finding).like(measured).size(measured.uncorrected());
    }

    private static String typed(Written written) {
        return written.unit().isOfLength() ? written.text() : Figures.written(written);
    }
}
