package org.tenthwise.model.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Balloons missing in the row: 14 where there are 12, 13 and 15. A drawing may leave numbers out, as when a
 * characteristic was taken off it; a plan that leaves one out may have forgotten a requirement.
 *
 * @param row what stands before the figures: empty in a row 1, 2, 3, {@code A} in a row A1, A2
 * @param first of them
 * @param last of them; the same where one alone is missing
 */
public record BalloonGap(String row, int first, int last) {

    /** Those between the first and the last of each row; 12, 12A and 12.1 stand at one place of it. */
    public static List<BalloonGap> in(Collection<BalloonNumber> balloons) {
        Map<String, TreeSet<Integer>> rows = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        balloons.forEach(balloon -> balloon.inRow()
                .ifPresent(number -> rows.computeIfAbsent(balloon.row(), row -> new TreeSet<>())
                        .add(number)));
        List<BalloonGap> gaps = new ArrayList<>();
        rows.forEach((row, numbers) -> {
            for (int number : numbers.headSet(numbers.last())) {
                int next = numbers.higher(number);
                if (next > number + 1) {
                    gaps.add(new BalloonGap(row, number + 1, next - 1));
                }
            }
        });
        return gaps;
    }

    /** Whether one alone is missing. */
    public boolean isOne() {
        return first == last;
    }
}
