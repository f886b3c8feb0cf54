package org.tenthwise.app.sums.thread;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Quantity;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.model.compute.thread.limits.ThreadLimits;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadClass;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.thread.ThreadSide;
import org.tenthwise.model.words.Message;

/** The thread that is asked about: by its designation in one piece, or by form, diameter, pitch and class. */
public final class DesignationInputs {

    private static final Length FINEST = Length.of("0.01", Unit.MILLIMETRE);
    private static final int MOST_STARTS = 60;

    public static final Input<String> DESIGNATION = Input.name("designation").optional();
    public static final Input<ThreadForm> FORM =
            Input.choice("form", Stream.of(ThreadForm.values()).collect(ordered(ThreadForm::key)));
    public static final Input<Length> DIAMETER = Input.positiveLength("diameter");
    public static final Input<Length> PITCH = Input.positiveLength("pitch");
    public static final Input<BigDecimal> TPI = Input.positive("tpi").in(Quantity.PER_INCH);
    public static final Input<Integer> STARTS =
            Input.whole("starts", 1, MOST_STARTS).usually("1");
    public static final Input<String> CLASS = Input.name("class");
    static final Input<String> SERIES = Input.name("series").bounded("bound").optional();
    public static final Input<ThreadSide> SIDE = Input.choice(
                    "side", Stream.of(ThreadSide.values()).collect(ordered(ThreadSide::key)))
            .optional();

    private static final List<Input<?>> IN_A_DESIGNATION = List.of(FORM, DIAMETER, PITCH, TPI, CLASS, SERIES, STARTS);

    private DesignationInputs() {}

    static ThreadDesignation designation(SumInput given) {
        ThreadDesignation said = given.has(DESIGNATION) ? read(given) : put(given);
        return given.find(SIDE).map(side -> about(SIDE, () -> said.on(side))).orElse(said);
    }

    /** @throws CannotAnswer about the side if it is not known, about the class if the standard has no figures for it */
    static ThreadLimits limits(ThreadDesignation designation) {
        return about(designation.side().isEmpty() ? SIDE : CLASS, () -> ThreadLimits.of(designation));
    }

    private static ThreadDesignation read(SumInput given) {
        for (Input<?> input : IN_A_DESIGNATION) {
            if (given.has(input)) {
                throw new CannotAnswer(input, Message.of("given.said-already", input, given.text(input)));
            }
        }
        return about(DESIGNATION, () -> ThreadDesignation.read(given.get(DESIGNATION)));
    }

    private static ThreadDesignation put(SumInput given) {
        ThreadForm form = given.get(FORM);
        int starts = given.find(STARTS).orElse(1);
        Length diameter = given.get(DIAMETER);
        ScrewThread thread = thread(given, form, diameter, pitch(given), starts);
        ThreadClass threadClass = about(CLASS, () -> ThreadClass.of(form, given.get(CLASS)));
        return about(
                SERIES, () -> new ThreadDesignation(thread, threadClass, Optional.empty(), given.find(SERIES), false));
    }

    private static ScrewThread thread(SumInput given, ThreadForm form, Length diameter, Length pitch, int starts) {
        return withCore(given, () -> new ScrewThread(form, diameter, pitch, starts).nominal());
    }

    /** What {@code asked} comes to, unless the diameter is refused as too small for the pitch. */
    static <T> T withCore(SumInput given, Supplier<T> asked) {
        return given.about(DIAMETER, "no-core", asked, pitchOrTpi(given), given.text(pitchOrTpi(given)));
    }

    private static Input<?> pitchOrTpi(SumInput given) {
        return given.has(PITCH) ? PITCH : TPI;
    }

    /** What the model refuses is about {@code input}, which its own words name. */
    private static <T> T about(Input<?> input, Supplier<T> asked) {
        return CannotAnswer.about(input, UnaryOperator.identity(), asked);
    }

    static Length pitch(SumInput given) {
        if (given.has(PITCH) == given.has(TPI)) {
            throw given.has(PITCH)
                    ? new CannotAnswer(PITCH, "both", given.text(PITCH), given.text(TPI))
                    : new CannotAnswer(PITCH, "neither");
        }
        Length pitch = given.has(PITCH) ? given.get(PITCH) : ScrewThread.pitchOf(given.get(TPI));
        if (pitch.isBelow(FINEST)) {
            throw new CannotAnswer(
                    pitchOrTpi(given), Message.of("given.too-fine", pitchOrTpi(given), given.text(pitchOrTpi(given))));
        }
        return pitch;
    }

    private static <E> Collector<E, ?, Map<String, E>> ordered(Function<E, String> key) {
        return Collectors.toMap(key, Function.identity(), (one, other) -> one, LinkedHashMap::new);
    }
}
