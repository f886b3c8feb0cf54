package org.tenthwise.model.run;

import java.util.List;
import java.util.Optional;

/** What runs of tests are begun for. */
public final class Occasions {

    private Occasions() {}

    /** A piece on the way. */
    public static Occasion inProcess(int piece) {
        return new Occasion(Purpose.IN_PROCESS, Optional.empty(), "", Optional.of(piece), List.of(), "", List.of());
    }

    public static Occasion fullFirstArticle(String reason) {
        return new Occasion(
                Purpose.FIRST_ARTICLE_FULL, Optional.empty(), reason, Optional.empty(), List.of(), "", List.of());
    }

    /** @param affected numbers of steps, at least one */
    public static Occasion partialFirstArticle(Baseline baseline, String reason, List<Integer> affected) {
        return new Occasion(
                Purpose.FIRST_ARTICLE_PARTIAL,
                Optional.of(baseline),
                reason,
                Optional.empty(),
                affected,
                "",
                List.of());
    }

    public static Occasion measuredAgain(Baseline baseline) {
        return new Occasion(
                Purpose.MEASURED_AGAIN, Optional.of(baseline), "", Optional.empty(), List.of(), "", List.of());
    }

    /** The same under an order, with changes in force. */
    public static Occasion under(String order, List<String> changes, Occasion of) {
        return new Occasion(of.purpose(), of.baseline(), of.reason(), of.piece(), of.affected(), order, changes);
    }
}
