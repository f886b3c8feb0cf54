package org.tenthwise.app.ui.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.words.Word;
import org.tenthwise.model.words.Words;

/** Keys of a plan that a person is asked for by a name, in the order they stand in a step; any other goes by itself. */
enum NamedKey {
    OPERATION,
    KIND,
    CLASS,
    NAME,
    BALLOON,
    SHEET,
    DRAWING_ZONE,
    DESIGNATOR,
    ON_PAGE,
    REQUIREMENT,
    COUNT,
    AT,
    LOWER,
    UPPER,
    WHAT,
    WHERE,
    PLACES,
    READINGS_EACH,
    CUT_AGAIN,
    AIM,
    GAUGE_KIND,
    GAUGE,
    MASTER,
    METHOD,
    CAUTION,
    CLAMPING,
    HOLD,
    PART,
    REVISION,
    ISSUE,
    MATERIAL,
    DRAWING,
    DRAWING_NUMBER,
    DRAWING_REVISION,
    DRAWING_FILE,
    DRAWING_FILE_SHA256,
    UNIT,
    TOLERANCE,
    ROUTE,
    REMARK,
    LOT;

    /** Whatever else is told stands after these. */
    private static final List<String> FIRST = List.of("format", "number");

    /** As plan files have it. */
    String key() {
        return Word.of(this).replace('-', '_');
    }

    static String say(String key, Words words) {
        return of(key).map(named -> words.say("planning.key", named)).orElse(key);
    }

    private static Optional<NamedKey> of(String key) {
        return Arrays.stream(values()).filter(named -> named.key().equals(key)).findFirst();
    }

    /** Keys that stand before one that is new; none for a key without a name, which stands last. */
    static List<String> before(String key) {
        Stream<String> named = of(key).stream()
                .flatMap(own -> Arrays.stream(values()).filter(other -> other.ordinal() < own.ordinal()))
                .map(NamedKey::key);
        return Stream.concat(FIRST.stream(), named).toList();
    }

    static List<String> keys(List<NamedKey> named) {
        return named.stream().map(NamedKey::key).toList();
    }
}
