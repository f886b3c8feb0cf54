package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.Plausible;
import org.tenthwise.model.run.Disposing;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** The figures and short words of one characteristic as the table has room for them. */
final class FigureText {

    private final Words words;

    FigureText(Words words) {
        this.words = words;
    }

    /** The limits without their unit, the least first, a scale named once; empty where nothing is measured. */
    String limits(Step step) {
        return step.limits().map(this::limits).orElse("");
    }

    private String limits(Limits limits) {
        Optional<String> upper = limits.upper().map(Figures::written);
        Optional<String> lower = limits.lower().map(Figures::written);
        if (upper.isPresent() && lower.isPresent()) {
            return words.say(
                    "drawing.between",
                    limits.unit().isOfScale()
                            ? Figures.number(limits.lower().get().figure())
                            : lower.get(),
                    upper.get());
        }
        return upper.map(most -> words.say("record.at-most", most))
                .orElseGet(() -> words.say("record.at-least", lower.orElseThrow()));
    }

    /**
     * What the gauge was set on, what it read there, and whether its number falls as the size grows, a line each;
     * nothing for a gauge that reads the size itself.
     */
    List<String> setOn(Setting setting, Step step) {
        List<String> said = new ArrayList<>();
        Unit unit = step.limits().map(Limits::unit).orElseThrow();
        setting.reference().ifPresent(said::add);
        setting.certified()
                .ifPresent(certified -> said.add(words.say("record.set-on.size", Figures.read(certified, unit))));
        setting.zero().ifPresent(zero -> said.add(words.say("record.set-on.zero", Figures.read(zero, unit))));
        setting.gauge()
                .sense()
                .filter(ReadingDirection.FALLS_WITH_SIZE::equals)
                .ifPresent(falls -> said.add(words.say("record.set-on.falls")));
        return said;
    }

    /** The parts of a correction that has two. */
    List<String> parts(Finding finding, Measured measured) {
        if (measured.forTemperature().isEmpty() || measured.forContact().isEmpty()) {
            return List.of();
        }
        StepFigures figures = StepFigures.of(finding).like(measured);
        return List.of(
                words.say(
                        "record.part.temperature",
                        figures.signed(measured.forTemperature().get())),
                words.say(
                        "record.part.contact",
                        figures.signed(measured.forContact().get())));
    }

    /** What the size was corrected by, and what that makes. */
    static StepFigures.CorrectionAndValue sum(Finding finding, Measured measured) {
        return StepFigures.of(finding).sum(measured);
    }

    /**
     * What must be known beside the verdict, a line each: what is missing or held, and how far out it is. Of what lies
     * inside the strip shows how far.
     */
    List<String> beside(Line line) {
        List<String> said = new ArrayList<>();
        Verdict verdict = line.finding().verdict();
        if (verdict.standing() == VerdictKind.OPEN) {
            said.add(open(line));
        }
        if (Plausible.spoils(line.finding())) {
            said.add(words.say("record.far-off"));
        }
        if (line.finding().isFeltOtherwise()) {
            said.add(words.say("record.felt-otherwise"));
            return said;
        }
        verdict.margin()
                .filter(margin -> !verdict.passed() || margin.distance().signum() == 0)
                .ifPresent(margin -> said.add(margin(line.finding(), margin)));
        return said;
    }

    /** What was signed where it did not pass, with its number; that it was repaired, which no later reading undoes. */
    List<String> signed(Line line) {
        List<String> said = new ArrayList<>();
        line.disposed().ifPresent(disposed -> {
            said.add(words.say("record.short-disposition", disposed.disposition()));
            disposed.document().ifPresent(said::add);
            if (disposed.document().isEmpty() && disposed.disposition().departsFromTheDrawing()) {
                said.add(words.say("record.no-number"));
            }
        });
        if (line.repaired()
                && line.disposed()
                        .filter(disposed -> disposed.disposition() == Disposition.REPAIR)
                        .isEmpty()) {
            said.add(words.say("record.repaired"));
            line.dispositions().stream()
                    .map(Disposing::disposed)
                    .filter(disposed -> disposed.disposition() == Disposition.REPAIR)
                    .flatMap(disposed -> disposed.document().stream())
                    .forEach(said::add);
        }
        return said;
    }

    /** Why it is open: shut, readings to take, or another check that has to come first. */
    private String open(Line line) {
        if (line.held()) {
            return words.say("record.held");
        }
        int missing = line.finding().missing();
        return missing > 0
                ? words.say("record.to-take", missing)
                : words.say("record.waits-for", line.step().check().restsOn().get(0));
    }

    private String margin(Finding finding, Verdict.Margin margin) {
        if (margin.distance().signum() == 0) {
            return words.say("record.on-limit");
        }
        String distance = StepFigures.of(finding).distance(margin.distance());
        if (margin.inside()) {
            return words.say("record.inside", distance);
        }
        return words.say(words.key("record.outside", margin.limit()), distance);
    }
}
