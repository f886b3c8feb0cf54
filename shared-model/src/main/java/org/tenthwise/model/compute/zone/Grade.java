package org.tenthwise.model.compute.zone;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The standard tolerance grades of ISO 286-1, finest first. */
public enum Grade {
    IT01,
    IT0,
    IT1,
    IT2,
    IT3,
    IT4,
    IT5,
    IT6,
    IT7,
    IT8,
    IT9,
    IT10,
    IT11,
    IT12,
    IT13,
    IT14,
    IT15,
    IT16,
    IT17,
    IT18;

    private static final Map<String, Grade> BY_NUMBER =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Grade::number, grade -> grade));

    /** The grade without its IT, as it stands after a letter: {@code 7}, {@code 01}. */
    public String number() {
        return name().substring(2);
    }

    public static Optional<Grade> ofNumber(String number) {
        return Optional.ofNullable(BY_NUMBER.get(number));
    }

    /** The next finer one; absent for the finest. */
    public Optional<Grade> finer() {
        return this == IT01 ? Optional.empty() : Optional.of(values()[ordinal() - 1]);
    }

    boolean isAtMost(Grade coarsest) {
        return compareTo(coarsest) <= 0;
    }

    boolean isFrom(Grade finest) {
        return compareTo(finest) >= 0;
    }
}
