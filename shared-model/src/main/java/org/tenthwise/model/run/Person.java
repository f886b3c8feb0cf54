package org.tenthwise.model.run;

import java.util.Locale;

/** Names of people as they are typed: "Setter 1" and "setter 1" are one person. */
public final class Person {

    private Person() {}

    /** Whether two names differ in nothing but capitals and blanks. */
    public static boolean isSame(String one, String other) {
        return bare(one).equals(bare(other));
    }

    private static String bare(String name) {
        return name.replaceAll("[\\s\\p{Z}]+", "").toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    }
}
