package org.tenthwise.app.export;

import java.util.Locale;
import java.util.Optional;
import org.tenthwise.model.plan.Check;

/** The words for choices in files that programs read; they do not change with the language of the screen. */
final class Codes {

    private Codes() {}

    /** {@code cut-again} for {@code CUT_AGAIN}. */
    static String of(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** By what of its readings a check is judged: by each, by a size made of them, or by what they show together. */
    static Optional<String> judgedBy(Check check) {
        if (check instanceof Check.OfSize size) {
            return Optional.of(of(size.combine()));
        }
        if (check instanceof Check.RunOut) {
            return Optional.of("movement");
        }
        return check instanceof Check.PlugFit ? Optional.of("clearance") : Optional.empty();
    }

    /** What kind of check a step is; a size goes by its feature. */
    static String of(Check check) {
        if (check instanceof Check.Size size) {
            return of(size.feature());
        }
        if (check instanceof Check.RunOut) {
            return "run-out";
        }
        if (check instanceof Check.PlugFit) {
            return "plug-fit";
        }
        if (check instanceof Check.OverWires) {
            return "thread-over-wires";
        }
        if (check instanceof Check.GoNotGo) {
            return "go-not-go";
        }
        return check instanceof Check.Look ? "look" : "confirm";
    }
}
