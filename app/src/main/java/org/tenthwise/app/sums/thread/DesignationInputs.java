package org.tenthwise.app.sums.thread;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.model.compute.thread.limits.ThreadLimits;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadClass;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.thread.ThreadSide;

/** The thread that is asked about: by its designation in one piece, or by form, diameter, pitch and class. */
final class DesignationInputs {

    static final Set<String> KEYS =
            Set.of("form", "diameter", "pitch", "tpi", "class", "side", "series", "starts", "designation");

    private static final Length FINEST = Length.of("0.01", Unit.MILLIMETRE);
    private static final int MOST_STARTS = 60;
    static final Map<String, ThreadForm> FORMS = Arrays.stream(ThreadForm.values())
            .collect(Collectors.toUnmodifiableMap(ThreadForm::key, Function.identity()));
    private static final Map<String, ThreadSide> SIDES = Arrays.stream(ThreadSide.values())
            .collect(Collectors.toUnmodifiableMap(ThreadSide::key, Function.identity()));
    private static final List<String> IN_A_DESIGNATION =
            List.of("form", "diameter", "pitch", "tpi", "class", "series", "starts");

    private DesignationInputs() {}

    static ThreadDesignation designation(SumInput given) {
        ThreadDesignation said = given.has("designation") ? read(given) : put(given);
        return given.ifGiven("side", key -> given.choice(key, SIDES))
                .map(side -> about("side", () -> said.on(side)))
                .orElse(said);
    }

    /** @throws CannotAnswer about the side if it is not known, about the class if the standard has no figures for it */
    static ThreadLimits limits(ThreadDesignation designation) {
        return about(designation.side().isEmpty() ? "side" : "class", () -> ThreadLimits.of(designation));
    }

    private static ThreadDesignation read(SumInput given) {
        IN_A_DESIGNATION.stream().filter(given::has).findFirst().ifPresent(key -> {
            throw new CannotAnswer(
                    key,
                    "%s is %s: the designation already says it, so give one or the other"
                            .formatted(key, given.text(key)));
        });
        return about("designation", () -> ThreadDesignation.read(given.text("designation")));
    }

    private static ThreadDesignation put(SumInput given) {
        ThreadForm form = given.choice("form", FORMS);
        int starts =
                given.ifGiven("starts", key -> given.whole(key, 1, MOST_STARTS)).orElse(1);
        Length diameter = given.positiveLength("diameter");
        ScrewThread thread = thread(given, form, diameter, pitch(given), starts);
        ThreadClass threadClass = about("class", () -> ThreadClass.of(form, given.text("class")));
        return about(
                "series",
                () -> new ThreadDesignation(thread, threadClass, Optional.empty(), given.textIfGiven("series"), false));
    }

    private static ScrewThread thread(SumInput given, ThreadForm form, Length diameter, Length pitch, int starts) {
        return given.about("diameter", noCore(given), () -> new ScrewThread(form, diameter, pitch, starts).nominal());
    }

    /** Why a diameter will not do. */
    static String noCore(SumInput given) {
        return "it leaves no core under a thread with %s %s".formatted(pitchKey(given), given.text(pitchKey(given)));
    }

    private static String pitchKey(SumInput given) {
        return given.has("pitch") ? "pitch" : "tpi";
    }

    /** What the model refuses is about {@code key}, which its own words name. */
    private static <T> T about(String key, Supplier<T> asked) {
        return CannotAnswer.about(key, UnaryOperator.identity(), asked);
    }

    static Length pitch(SumInput given) {
        if (given.has("pitch") == given.has("tpi")) {
            throw new CannotAnswer(
                    "pitch",
                    given.has("pitch")
                            ? "pitch is %s and tpi is %s: give one of them"
                                    .formatted(given.text("pitch"), given.text("tpi"))
                            : "pitch is missing: give pitch, or tpi for threads to the inch");
        }
        Length pitch = given.has("pitch") ? given.positiveLength("pitch") : ScrewThread.pitchOf(given.positive("tpi"));
        if (pitch.isBelow(FINEST)) {
            throw new CannotAnswer(
                    pitchKey(given),
                    "%s is %s: so fine a thread is not cut".formatted(pitchKey(given), given.text(pitchKey(given))));
        }
        return pitch;
    }
}
