package org.tenthwise.model.run;

import java.util.Map;
import java.util.stream.Stream;
import org.tenthwise.model.words.Word;

/** What a signature says. */
public enum SignedAs {
    /** The part was made and its characteristics measured by the one who signs. */
    MACHINED_AND_MEASURED,
    /** Another person measured it again. */
    MEASURED_AGAIN,
    /** It is accepted as the record shows it. */
    ACCEPTED,
    /** It is not accepted. */
    NOT_ACCEPTED,
    /** Free words of an older run that mean none of these. They are never taken for consent. */
    OTHER;

    private static final Map<String, SignedAs> OF_OLDER_RUNS =
            Map.of("made and measured", MACHINED_AND_MEASURED, "released", ACCEPTED);

    /** What the words of a signature mean; {@link #OTHER} for all that are not known. */
    public static SignedAs of(String words) {
        return Stream.of(MACHINED_AND_MEASURED, MEASURED_AGAIN, ACCEPTED, NOT_ACCEPTED)
                .filter(meaning -> meaning.word().equals(words))
                .findFirst()
                .orElse(OF_OLDER_RUNS.getOrDefault(words, OTHER));
    }

    /** As it is stored and as readings files have it: "machined and measured". */
    public String word() {
        return Word.spaced(this);
    }

    /** Whether it speaks against the part, or cannot be understood. */
    public boolean isAgainst() {
        return this == NOT_ACCEPTED || this == OTHER;
    }
}
