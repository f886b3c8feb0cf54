package org.tenthwise.app.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.ZoneBars;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.quantity.Length;

/** Limits of size of a thread. */
final class ThreadLimitsForm implements BenchForm {

    private static final String SIDE = "side";
    private static final String EXTERNAL = "external";

    @Override
    public BenchKind kind() {
        return BenchKind.THREAD_LIMITS;
    }

    @Override
    public String sum() {
        return "thread-limits";
    }

    @Override
    public List<FormField> asks(FormValues filled) {
        FormField form = ThreadFields.form(filled.unit());
        String chosen = form.choices().contains(filled.text(ThreadFields.FORM))
                ? filled.text(ThreadFields.FORM)
                : form.choices().get(0);
        return List.of(
                form,
                FormField.choice(SIDE, EXTERNAL, "internal"),
                FormField.length(ThreadFields.DIAMETER),
                ThreadFields.pitchBy(filled.unit()),
                ThreadFields.pitch(filled),
                FormField.choice(
                        "class", ThreadFields.classes(chosen, !filled.is(SIDE, "internal"), filled.text("class"))),
                ThreadFields.starts());
    }

    @Override
    public List<String> first(FormValues filled) {
        return List.of("pitch_max", "pitch_min", "major_max", "major_min", "minor_max", "minor_min", "standing");
    }

    @Override
    public Optional<Picture> picture(FormValues filled, SumResult answer, AnswerFormat said) {
        boolean inside = !filled.is(SIDE, EXTERNAL);
        List<ZoneBars.Bar> bars = new ArrayList<>();
        filled.length(ThreadFields.DIAMETER)
                .flatMap(basic -> bar("major", inside, basic, answer, said))
                .ifPresent(bars::add);
        for (String which : List.of("pitch", "minor")) {
            said.length(answer, which + "_basic")
                    .flatMap(basic -> bar(which, inside, basic, answer, said))
                    .ifPresent(bars::add);
        }
        return bars.isEmpty()
                ? Optional.empty()
                : Optional.of(new ZoneBars(
                        bars,
                        Optional.of(said.words().say("bench.basic")),
                        List.of(),
                        said.words().say("bench.picture.thread", filled.text(ThreadFields.DIAMETER))));
    }

    /** Absent where the standard sets neither limit. */
    private static Optional<ZoneBars.Bar> bar(
            String which, boolean inside, Length basic, SumResult answer, AnswerFormat said) {
        Optional<Length> most = said.length(answer, which + "_max");
        Optional<Length> least = said.length(answer, which + "_min");
        return most.isEmpty() && least.isEmpty()
                ? Optional.empty()
                : Optional.of(new ZoneBars.Bar(
                        said.words().say("bench.zone." + which),
                        inside,
                        basic,
                        most.map(said::sized),
                        least.map(said::sized)));
    }
}
