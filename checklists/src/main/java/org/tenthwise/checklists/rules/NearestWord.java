package org.tenthwise.checklists.rules;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/**
 * The word a slip of the fingers most likely stands for: the one reached by the fewest letters added, dropped, changed
 * or swapped with a neighbour; at most two of them, and fewer than half the letters.
 */
final class NearestWord {

    private static final int MOST_SLIPS = 2;

    private NearestWord() {}

    static Optional<String> to(String written, Collection<String> words) {
        return words.stream()
                .filter(word -> Math.abs(written.length() - word.length()) <= MOST_SLIPS)
                .filter(word -> slips(written, word) <= MOST_SLIPS && 2 * slips(written, word) < word.length())
                .min(Comparator.comparingInt((String word) -> slips(written, word))
                        .thenComparing(word -> word));
    }

    /** Edit distance with neighbour swaps (optimal string alignment). */
    private static int slips(String from, String to) {
        int[][] cost = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(cost, i, j, from, to);
            }
        }
        return cost[from.length()][to.length()];
    }

    private static int cheapest(int[][] cost, int i, int j, String from, String to) {
        int changed = cost[i - 1][j - 1] + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        int best = Math.min(changed, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
        boolean swapped =
                i > 1 && j > 1 && from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1);
        return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
    }
}
