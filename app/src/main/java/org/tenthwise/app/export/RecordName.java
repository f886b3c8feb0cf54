package org.tenthwise.app.export;

import org.tenthwise.app.store.RunHead;

/**
 * What the files of a record are called: the run to be read, how many entries it had, and the first signs of the hash
 * its record is known by, which are another's for any other run and for the same run at any other time. So names that
 * differ in signs no system takes, in capitals, behind the point where they are cut, or not at all, still give
 * different files: {@code LG-2207-C-014-75-1a2b3c4d}.
 *
 * <p>Letters, digits, point, hyphen and underline only; it begins with a letter or digit and ends with a digit of the
 * hash, so it is none of the names some systems keep for themselves.
 */
public final class RecordName {

    private static final int LONGEST_RUN = 80;
    private static final int DIGITS_OF_HASH = 8;

    private RecordName() {}

    /**
     * Without the ending.
     *
     * @param id of the run
     * @param head of the run, as the record has it
     */
    public static String of(String id, RunHead head) {
        return of(id, head.place(), head.hash());
    }

    /**
     * The same of more than one run.
     *
     * @param of what, to be read
     * @param entries how many there were
     * @param hash over them, 64 hex digits
     */
    public static String of(String of, long entries, String hash) {
        return "%s-%s-%s".formatted(plain(of), entries, hash.substring(0, DIGITS_OF_HASH));
    }

    /** A text of which nothing is left that a system does not take in the name of a file. */
    public static String plain(String text) {
        String taken = text.replaceAll("[^A-Za-z0-9._-]+", "-").replaceAll("^[._-]+", "");
        String cut = taken.substring(0, Math.min(LONGEST_RUN, taken.length())).replaceAll("[._-]+$", "");
        return cut.isEmpty() ? "record" : cut;
    }
}
