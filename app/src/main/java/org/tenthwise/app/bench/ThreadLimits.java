package org.tenthwise.app.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.ZoneBars;
import org.tenthwise.app.sums.Answer;
import org.tenthwise.model.quantity.Length;

/** Limits of size of a thread. */
final class ThreadLimits implements BenchSum {

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
    public List<Ask> asks(Filled filled) {
        Ask form = ThreadAsks.form(filled.unit());
        String chosen = form.choices().contains(filled.text(ThreadAsks.FORM))
                ? filled.text(ThreadAsks.FORM)
                : form.choices().get(0);
        return List.of(
                form,
                Ask.choice(SIDE, EXTERNAL, "internal"),
                Ask.length(ThreadAsks.DIAMETER),
                ThreadAsks.pitchBy(filled.unit()),
                ThreadAsks.pitch(filled),
                Ask.choice("class", ThreadAsks.classes(chosen, !filled.is(SIDE, "internal"), filled.text("class"))),
                ThreadAsks.starts());
    }

    @Override
    public List<String> first(Filled filled) {
        return List.of("pitch_max", "pitch_min", "major_max", "major_min", "minor_max", "minor_min", "standing");
    }

    @Override
    public Optional<Picture> picture(Filled filled, Answer answer, Said said) {
        boolean inside = !filled.is(SIDE, EXTERNAL);
        List<ZoneBars.Bar> bars = new ArrayList<>();
        filled.length(ThreadAsks.DIAMETER)
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
                        said.words().say("bench.picture.thread", filled.text(ThreadAsks.DIAMETER))));
    }

    /** Absent where the standard sets neither limit. */
    private static Optional<ZoneBars.Bar> bar(String which, boolean inside, Length basic, Answer answer, Said said) {
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
