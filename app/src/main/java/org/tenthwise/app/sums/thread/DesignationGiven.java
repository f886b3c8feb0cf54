package org.tenthwise.app.sums.thread;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.tenthwise.app.sums.CannotAnswer;
import org.tenthwise.app.sums.Given;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.thread.ScrewThread;
import org.tenthwise.model.thread.ThreadClass;
import org.tenthwise.model.thread.ThreadDesignation;
import org.tenthwise.model.thread.ThreadForm;
import org.tenthwise.model.thread.ThreadSide;

/** The thread that is asked about: by its designation in one piece, or by form, diameter, pitch and class. */
final class DesignationGiven {

    static final Set<String> KEYS = Set.of("form", "diameter", "pitch", "tpi", "class", "side", "series", "starts", "designation");

    private static final int MOST_STARTS = 100;
    private static final List<String> IN_A_DESIGNATION = List.of("form", "diameter", "pitch", "tpi", "class", "series", "starts");

    private DesignationGiven() {
    }

    static ThreadDesignation designation(Given given) {
        Optional<ThreadSide> side = given.ifGiven("side", key -> given.choice(key, sides()));
        ThreadDesignation read = given.has("designation") ? read(given) : put(given);
        return side.map(read::on).orElse(read);
    }

    private static ThreadDesignation read(Given given) {
        IN_A_DESIGNATION.stream().filter(given::has).findFirst().ifPresent(key -> {
            throw new CannotAnswer(key, "%s is %s: the designation already says it, so give one or the other".formatted(key, given.text(key)));
        });
        return ThreadDesignation.read(given.text("designation"));
    }

    private static ThreadDesignation put(Given given) {
        ThreadForm form = given.choice("form", forms());
        int starts = given.has("starts") ? given.whole("starts", 1, MOST_STARTS) : 1;
        ScrewThread thread = new ScrewThread(form, given.positiveLength("diameter"), pitch(given), starts);
        return new ThreadDesignation(thread, ThreadClass.of(form, given.text("class")), Optional.empty(), given.textIfGiven("series"), false);
    }

    static Length pitch(Given given) {
        if (given.has("pitch") == given.has("tpi")) {
            throw new CannotAnswer("pitch", given.has("pitch")
                    ? "pitch is %s and tpi is %s: give one of them".formatted(given.text("pitch"), given.text("tpi"))
                    : "pitch is missing: give pitch, or tpi for threads to the inch");
        }
        return given.has("pitch") ? given.positiveLength("pitch") : ScrewThread.pitchOf(given.positive("tpi"));
    }

    static Map<String, ThreadForm> forms() {
        Map<String, ThreadForm> forms = new TreeMap<>();
        Arrays.stream(ThreadForm.values()).forEach(form -> forms.put(form.key(), form));
        return forms;
    }

    private static Map<String, ThreadSide> sides() {
        Map<String, ThreadSide> sides = new TreeMap<>();
        Arrays.stream(ThreadSide.values()).forEach(side -> sides.put(side.key(), side));
        return sides;
    }
}
