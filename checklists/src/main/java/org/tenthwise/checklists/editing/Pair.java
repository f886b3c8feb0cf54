package org.tenthwise.checklists.editing;

/**
 * A key with its value as it is written.
 *
 * @param lead blank lines and comments above it
 * @param name the key, and what stands before its value: {@code lower = }
 * @param value as written, on one line or on several
 * @param tail what stands behind the value, to the end of its line: a comment, the line break
 */
record Pair(String lead, String key, String name, String value, String tail) {

    static Pair of(String key, String value) {
        return new Pair("", key, key + " = ", value, "\n");
    }

    Pair with(String otherValue) {
        return new Pair(lead, key, name, otherValue, tail);
    }

    Pair ledBy(String otherLead) {
        return new Pair(otherLead, key, name, value, tail);
    }

    Pair ended() {
        return new Pair(lead, key, name, value, tail + "\n");
    }

    String text() {
        return lead + name + value + tail;
    }
}
