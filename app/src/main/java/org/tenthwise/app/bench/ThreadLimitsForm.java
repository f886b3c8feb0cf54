package org.tenthwise.app.bench;

import static org.tenthwise.app.sums.thread.ThreadLimitsSum.MAJOR_MAX;
import static org.tenthwise.app.sums.thread.ThreadLimitsSum.MAJOR_MIN;
import static org.tenthwise.app.sums.thread.ThreadLimitsSum.MINOR_BASIC;
import static org.tenthwise.app.sums.thread.ThreadLimitsSum.MINOR_MAX;
import static org.tenthwise.app.sums.thread.ThreadLimitsSum.MINOR_MIN;
import static org.tenthwise.app.sums.thread.ThreadLimitsSum.PITCH_BASIC;
import static org.tenthwise.app.sums.thread.ThreadLimitsSum.PITCH_MAX;
import static org.tenthwise.app.sums.thread.ThreadLimitsSum.PITCH_MIN;
import static org.tenthwise.app.sums.thread.ThreadLimitsSum.STANDING;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.ZoneBars;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.app.sums.thread.DesignationInputs;
import org.tenthwise.app.sums.thread.ThreadLimitsSum;
import org.tenthwise.model.quantity.Length;

/** Limits of size of a thread. */
final class ThreadLimitsForm implements BenchForm {

    private static final String EXTERNAL = "external";

    @Override
    public BenchKind kind() {
        return BenchKind.THREAD_LIMITS;
    }

    @Override
    public String sum() {
        return ThreadLimitsSum.NAME;
    }

    /** One ridge of a thread between its greatest and its least. */
    @Override
    public void sign(SignSketch sketch) {
        sketch.area(
                Role.ZONE, 4, 46, 26, 46, 40, 10, 56, 10, 70, 46, 92, 46, 92, 54, 64, 54, 51, 20, 45, 20, 32, 54, 4,
                54);
        sketch.thick(Role.LINE, 4, 46, 26, 46, 40, 10, 56, 10, 70, 46, 92, 46);
        sketch.thin(Role.ACCENT, 4, 54, 32, 54, 45, 20, 51, 20, 64, 54, 92, 54);
    }

    @Override
    public List<FormField> fields(FormValues filled) {
        FormField form = ThreadFields.form(filled.unit());
        String named = filled.text(DesignationInputs.FORM);
        String chosen = form.choices().contains(named) ? named : form.usual();
        return List.of(
                form,
                FormField.of(DesignationInputs.SIDE),
                FormField.of(DesignationInputs.DIAMETER).ofADesignation(),
                ThreadFields.pitchBy(filled.unit()),
                ThreadFields.pitch(filled),
                FormField.of(DesignationInputs.CLASS)
                        .choosing(ThreadFields.classes(
                                chosen,
                                !filled.is(DesignationInputs.SIDE, "internal"),
                                filled.text(DesignationInputs.CLASS))),
                ThreadFields.starts());
    }

    @Override
    public List<Output<?>> first(FormValues filled) {
        return List.of(PITCH_MAX, PITCH_MIN, MAJOR_MAX, MAJOR_MIN, MINOR_MAX, MINOR_MIN, STANDING);
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult result, AnswerFormat format) {
        boolean inside = !filled.is(DesignationInputs.SIDE, EXTERNAL);
        Optional<Length> basic = filled.length(DesignationInputs.DIAMETER);
        List<ZoneBars.Bar> bars = Stream.of(
                        bar("major", inside, basic, result.find(MAJOR_MAX), result.find(MAJOR_MIN), format),
                        bar(
                                "pitch",
                                inside,
                                result.find(PITCH_BASIC),
                                result.find(PITCH_MAX),
                                result.find(PITCH_MIN),
                                format),
                        bar(
                                "minor",
                                inside,
                                result.find(MINOR_BASIC),
                                result.find(MINOR_MAX),
                                result.find(MINOR_MIN),
                                format))
                .flatMap(Optional::stream)
                .toList();
        return bars.isEmpty()
                ? Optional.empty()
                : Optional.of(new ZoneBars(
                        bars,
                        Optional.of(format.words().say("bench.basic")),
                        List.of(),
                        format.words().say("bench.picture.thread", filled.text(DesignationInputs.DIAMETER))));
    }

    /** Absent where the standard sets neither limit. */
    private static Optional<ZoneBars.Bar> bar(
            String which,
            boolean inside,
            Optional<Length> basic,
            Optional<Length> most,
            Optional<Length> least,
            AnswerFormat format) {
        return basic.filter(any -> most.isPresent() || least.isPresent())
                .map(size -> new ZoneBars.Bar(
                        format.words().say("bench.zone." + which),
                        inside,
                        size,
                        most.map(format::greatest),
                        least.map(format::least)));
    }
}
