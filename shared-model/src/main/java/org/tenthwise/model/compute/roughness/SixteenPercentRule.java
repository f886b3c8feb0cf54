package org.tenthwise.model.compute.roughness;

import java.math.BigDecimal;
import java.util.List;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * The 16 % rule for an upper limit: a surface is accepted where no more than about one value in six lies over it. It is
 * measured step by step, and no further than it takes to accept it.
 *
 * <p>Formula: it passes at the first step that holds
 *
 * <ol>
 *   <li>the first value is no more than 70 % of the limit;
 *   <li>none of the first three values lies over the limit;
 *   <li>no more than one of the first six does;
 *   <li>no more than two of the first twelve do.
 * </ol>
 *
 * Else it fails, and as soon as a third value lies over.
 *
 * <p>Values and limit in one unit, exact. A value on the limit is inside. Values beyond the twelfth count for nothing,
 * nor do those behind the step that passed: whoever measures on has no other answer for it. Without any it is open. It
 * is measured where the surface looks worst.
 *
 * <p>Source: ISO 4288:1996, 5.2 and annex A; its steps as <em>Explanation of surface characteristics and
 * standards</em>, studylib.net, document 18091676, has them.
 */
public final class SixteenPercentRule {

    private static final BigDecimal SHARE_OF_ONE = new BigDecimal("0.7");

    /** @param over how many of so many values may lie over the limit */
    private record Stage(int values, int over) {}

    private static final List<Stage> STAGES = List.of(new Stage(3, 0), new Stage(6, 1), new Stage(12, 2));
    private static final Stage LAST = STAGES.get(STAGES.size() - 1);

    private SixteenPercentRule() {}

    public static RoughnessStanding of(List<BigDecimal> values, BigDecimal limit) {
        if (values.isEmpty()) {
            return new RoughnessStanding(VerdictKind.OPEN, 1, 0);
        }
        boolean byTheFirst = values.get(0).compareTo(limit.multiply(SHARE_OF_ONE)) <= 0;
        if (byTheFirst || STAGES.stream().anyMatch(stage -> holds(stage, values, limit))) {
            return new RoughnessStanding(VerdictKind.PASS, 0, allowedOf(values.size()));
        }
        return STAGES.stream()
                .filter(stage -> values.size() < stage.values && over(stage, values, limit) <= stage.over)
                .map(stage -> new RoughnessStanding(VerdictKind.OPEN, stage.values - values.size(), stage.over))
                .findFirst()
                .orElse(new RoughnessStanding(VerdictKind.FAIL, 0, LAST.over));
    }

    private static boolean holds(Stage stage, List<BigDecimal> values, BigDecimal limit) {
        return values.size() >= stage.values && over(stage, values, limit) <= stage.over;
    }

    private static long over(Stage stage, List<BigDecimal> values, BigDecimal limit) {
        return values.stream()
                .limit(stage.values)
                .filter(value -> value.compareTo(limit) > 0)
                .count();
    }

    private static int allowedOf(int measured) {
        return STAGES.stream()
                .filter(stage -> measured >= stage.values)
                .mapToInt(Stage::over)
                .max()
                .orElse(0);
    }
}
