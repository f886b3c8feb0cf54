package org.tenthwise.model.plan;

import java.util.Comparator;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The number of a characteristic as it stands in its balloon on the drawing: {@code 12}, {@code 12A}, {@code 3.1}. In
 * the order of the drawing figures count as numbers: 3, 3.1, 3.2, 3.10, 12, 12A. Capitals tell no two apart.
 */
public record BalloonNumber(String text) implements Comparable<BalloonNumber> {

    /** More does not go into a balloon. */
    public static final int LONGEST = 8;

    private static final Pattern WRITTEN = Pattern.compile("[\\p{L}\\d][\\p{L}\\d./()-]{0," + (LONGEST - 1) + "}");
    private static final Pattern RUN = Pattern.compile("\\d+|\\D+");
    private static final Pattern FIGURES = Pattern.compile("\\d+");
    private static final Comparator<String> BY_RUNS = BalloonNumber::compareRuns;

    /** Whether it can stand in a balloon: letters, figures and {@code . / ( ) -}, {@value #LONGEST} of them at most. */
    public static boolean canBe(String text) {
        return WRITTEN.matcher(text).matches();
    }

    /** As a step is called in a plan that names no balloons. */
    public static BalloonNumber of(int number) {
        return new BalloonNumber(String.valueOf(number));
    }

    /** Whether both are the same balloon of the drawing, written with capitals or without. */
    public boolean isSame(BalloonNumber other) {
        return text.equalsIgnoreCase(other.text);
    }

    /** What stands before its figures: empty for {@code 12A}, {@code A} for {@code A12}. */
    public String row() {
        return text.substring(0, figures().map(MatchResult::start).orElse(text.length()));
    }

    /** Its place in the row: 12 for {@code 12}, {@code 12A} and {@code 12.1}; absent for letters alone. */
    public Optional<Integer> inRow() {
        return figures().map(MatchResult::group).map(Integer::valueOf);
    }

    private Optional<MatchResult> figures() {
        return FIGURES.matcher(text).results().findFirst();
    }

    @Override
    public int compareTo(BalloonNumber other) {
        return BY_RUNS.thenComparing(Comparator.naturalOrder()).compare(text, other.text);
    }

    @Override
    public String toString() {
        return text;
    }

    private static int compareRuns(String one, String other) {
        Matcher here = RUN.matcher(one);
        Matcher there = RUN.matcher(other);
        while (here.find()) {
            if (!there.find()) {
                return 1;
            }
            int order = compareRun(here.group(), there.group());
            if (order != 0) {
                return order;
            }
        }
        return there.find() ? -1 : 0;
    }

    /** Of nine figures at the most, as a step has, which an {@code int} holds. */
    private static int compareRun(String one, String other) {
        boolean numbers = Character.isDigit(one.charAt(0)) && Character.isDigit(other.charAt(0));
        return numbers
                ? Integer.compare(Integer.parseInt(one), Integer.parseInt(other))
                : one.compareToIgnoreCase(other);
    }
}
