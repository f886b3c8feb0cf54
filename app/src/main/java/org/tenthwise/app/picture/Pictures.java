package org.tenthwise.app.picture;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.AskedFinding;
import org.tenthwise.model.record.CalculatedFinding;
import org.tenthwise.model.record.DocumentFinding;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.OverWiresFinding;
import org.tenthwise.model.record.PlugFitFinding;
import org.tenthwise.model.record.PositionFinding;
import org.tenthwise.model.record.ReadOtherwise;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.record.WorkedFinding;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** The picture that belongs to a characteristic, made from what was found about it. */
public final class Pictures {

    private final Words words;
    private final Sentences sentences;

    public Pictures(Words words) {
        this.words = words;
        this.sentences = new Sentences(words);
    }

    /**
     * The picture of a characteristic as it stands; once it is signed for or the run is closed with no cut and no move
     * on it, as nobody acts by it any more, and without a cut where an earlier round has the size otherwise. One that
     * only asks is shown where it sits on the part; absent where the plan has no outline either.
     */
    public Optional<Picture> of(Sheet sheet, Line line) {
        Plan plan = sheet.plan();
        boolean advised = sheet.run().closed().isEmpty()
                && line.disposed().isEmpty()
                && ReadOtherwise.of(line, sheet.run()).isEmpty();
        Finding finding = line.finding();
        return finding.match(new Finding.Cases<>() {
            @Override
            public Optional<Picture> asked(AskedFinding answers) {
                return part(plan, line.step());
            }

            @Override
            public Optional<Picture> runOut(RunOutFinding runOut) {
                return Optional.of(new RunOutPictureFactory(words).picture(runOut, advised, spoken(finding)));
            }

            @Override
            public Optional<Picture> size(SizeFinding size) {
                return Optional.of(new SizePictureFactory(words).picture(plan, line, size, advised, spoken(finding)));
            }

            @Override
            public Optional<Picture> position(PositionFinding position) {
                return Optional.of(new PositionPictureFactory(words).picture(position, spoken(finding)));
            }

            @Override
            public Optional<Picture> worked(WorkedFinding worked) {
                return Optional.of(new WorkedPictureFactory(words).picture(line, worked, spoken(finding)));
            }

            @Override
            public Optional<Picture> plugFit(PlugFitFinding plug) {
                return Optional.of(new PlugFitPictureFactory(words).picture(plug, spoken(finding)));
            }

            @Override
            public Optional<Picture> calculated(CalculatedFinding calculated) {
                return Optional.of(new CalculatedPictureFactory(words).picture(calculated, spoken(finding)));
            }

            @Override
            public Optional<Picture> overWires(OverWiresFinding wires) {
                return Optional.of(new OverWiresPictureFactory(words).picture(line, wires, advised, spoken(finding)));
            }

            @Override
            public Optional<Picture> document(DocumentFinding document) {
                return part(plan, line.step());
            }
        });
    }

    /** The half section, small, with the feature of {@code step} in hand; absent without an outline. */
    public Optional<Picture> part(Plan plan, Step step) {
        return plan.outline()
                .map(outline -> OutlinePicture.small(
                        outline, step.mark(), words.say("picture.part.at", plan.name(), step.name())));
    }

    /** The half section, small; absent without an outline. */
    public Optional<Picture> part(Plan plan) {
        return plan.outline()
                .map(outline ->
                        OutlinePicture.small(outline, Optional.empty(), words.say("picture.part", plan.name())));
    }

    /** The half section with the balloon of every characteristic that has a place on it; absent without an outline. */
    public Optional<Picture> numbered(Plan plan) {
        List<OutlinePicture.Numbered> numbers = plan.steps().stream()
                .filter(Step::isOfDrawing)
                .flatMap(step -> plan.balloon(step).stream().flatMap(balloon -> step.mark().stream()
                        .map(mark -> new OutlinePicture.Numbered(balloon.text(), mark))))
                .distinct()
                .toList();
        return plan.outline()
                .map(outline -> new OutlinePicture(
                        outline, Optional.empty(), numbers, words.say("picture.part.numbered", plan.name())));
    }

    /**
     * The row of all checks of a run, with the one in hand marked.
     *
     * @param steps that are in the run, in the order of its plan
     * @param standing of each of them
     */
    public Picture checks(List<Step> steps, List<VerdictKind> standing, Optional<Step> inHand) {
        List<CheckRow.CheckMark> checks = IntStream.range(0, steps.size())
                .mapToObj(i -> new CheckRow.CheckMark(
                        standing.get(i), !steps.get(i).hold().isEmpty()))
                .toList();
        OptionalInt place = IntStream.range(0, steps.size())
                .filter(i -> inHand.filter(steps.get(i)::equals).isPresent())
                .findFirst();
        long passed = IntStream.range(0, steps.size())
                .filter(i -> steps.get(i).stepClass() == StepClass.DRAWING && standing.get(i) == VerdictKind.PASS)
                .count();
        return new CheckRow(checks, place, words.say("picture.checks", passed, checks.size()));
    }

    /** Where the size of a characteristic lies between its limits; absent for one that is not judged by one size. */
    public Optional<Picture> mark(Line line) {
        Finding finding = line.finding();
        return line.step()
                .limits()
                .filter(any -> finding.isOfOneSize())
                .map(limits -> new RowMark(
                        finding.asTurn().isPresent()
                                ? Optional.of(Length.ZERO)
                                : limits.lower().map(Written::length),
                        limits.upper().map(Written::length),
                        finding.verdict().standing() == VerdictKind.OPEN ? Optional.empty() : finding.value(),
                        finding.verdict().margin().map(Verdict.Margin::inside).orElse(true),
                        spoken(finding)));
    }

    private String spoken(Finding finding) {
        return Stream.concat(
                        Stream.of(
                                words.sentence(finding.step().name()),
                                words.sentence(sentences.standing(finding)),
                                sentences.value(finding),
                                sentences.distance(finding)),
                        Stream.of(sentences.doubts(finding)))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(" "));
    }
}
