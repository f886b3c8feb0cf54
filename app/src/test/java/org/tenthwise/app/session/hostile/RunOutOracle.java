package org.tenthwise.app.session.hostile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What may be said of a run-out.
 *
 * <p>The rules, in words. At each section the figures of one gauge alone are set against each other, those of the one
 * read last: of the highest and the lowest, and of the readings by angle. No movement is over the limit and no figure a
 * hundred times as large. Highest and lowest are both there, or neither and a reading at every angle, four or more:
 * then twice the eccentricity of their circle and what it leaves are inside too. The angles of these plans stand evenly
 * round, so that the parts of the eccentricity are 2/N of the sums with cosine and sine (C. P. Reeve, NBSIR 79-1758).
 */
final class RunOutOracle {

    private static final double HAIR = 0.000005;

    private final Facts.RunOut demanded;
    private final Map<String, Counting.Read> read;

    /** @param read the readings that count, the one taken last at the end */
    RunOutOracle(Facts.RunOut demanded, Map<String, Counting.Read> read) {
        this.demanded = demanded;
        this.read = read;
    }

    Oracle.Says passed() {
        Oracle.Says says = Oracle.Says.PASSED;
        for (String section : demanded.two() ? List.of("", "far:") : List.of("")) {
            Oracle.Says at = passed(section);
            says = at == Oracle.Says.NOT_PASSED || says == Oracle.Says.NOT_PASSED
                    ? Oracle.Says.NOT_PASSED
                    : at == Oracle.Says.EITHER ? at : says;
        }
        return says;
    }

    private Oracle.Says passed(String section) {
        List<BigDecimal> turn = ofOneGauge(List.of(section + "highest", section + "lowest"));
        List<BigDecimal> points =
                ofOneGauge(IntStream.rangeClosed(1, demanded.read().size())
                        .mapToObj(i -> section + i + ".1")
                        .toList());
        if (isOut(turn) || isOut(points) || turn.size() == 1) {
            return Oracle.Says.NOT_PASSED;
        }
        if (turn.size() == 2) {
            return Oracle.Says.PASSED;
        }
        return points.size() < demanded.read().size() || points.size() < 4 ? Oracle.Says.NOT_PASSED : circle(points);
    }

    private boolean isOut(List<BigDecimal> figures) {
        BigDecimal most = demanded.limit().movePointRight(2);
        return figures.stream()
                .anyMatch(figure -> figure.abs().compareTo(most) > 0
                        || figures.stream()
                                .anyMatch(other -> figure.subtract(other).compareTo(demanded.limit()) > 0));
    }

    private Oracle.Says circle(List<BigDecimal> points) {
        double[] height = points.stream().mapToDouble(BigDecimal::doubleValue).toArray();
        double[] angle = demanded.read().stream()
                .mapToDouble(degrees -> degrees * Math.PI / 180)
                .toArray();
        double mean =
                IntStream.range(0, height.length).mapToDouble(i -> height[i]).sum() / height.length;
        double cos = 2
                * IntStream.range(0, height.length)
                        .mapToDouble(i -> height[i] * Math.cos(angle[i]))
                        .sum()
                / height.length;
        double sin = 2
                * IntStream.range(0, height.length)
                        .mapToDouble(i -> height[i] * Math.sin(angle[i]))
                        .sum()
                / height.length;
        double[] left = IntStream.range(0, height.length)
                .mapToDouble(i -> height[i] - mean - cos * Math.cos(angle[i]) - sin * Math.sin(angle[i]))
                .sorted()
                .toArray();
        double over = 2 * Math.sqrt(cos * cos + sin * sin)
                + left[left.length - 1]
                - left[0]
                - demanded.limit().doubleValue();
        return Math.abs(over) < HAIR ? Oracle.Says.EITHER : over < 0 ? Oracle.Says.PASSED : Oracle.Says.NOT_PASSED;
    }

    private List<BigDecimal> ofOneGauge(List<String> slots) {
        List<Counting.Read> found = new ArrayList<>();
        read.forEach((slot, one) -> {
            if (slots.contains(slot)) {
                found.add(one);
            }
        });
        return slots.stream()
                .filter(read::containsKey)
                .map(read::get)
                .filter(one -> one.setting().equals(found.get(found.size() - 1).setting()))
                .map(Counting.Read::figure)
                .toList();
    }
}
