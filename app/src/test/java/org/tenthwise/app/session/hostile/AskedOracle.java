package org.tenthwise.app.session.hostile;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.tenthwise.model.run.Occasion;

/**
 * Which checks are in a run, from what it was begun for alone.
 *
 * <p>The rules, in words. A run of which nobody said what it is for, and a full first article, ask everything. A
 * partial first article asks everything that is no characteristic, and of those what is affected or uses something that
 * is. What is measured again asks the characteristics, where some are named these alone. The first piece is piece 1:
 * like every piece in process it is asked what has no condition, what is for every so many that its number is a
 * multiple of, and, being the first, what is for the first. The last piece is asked what is for the last, and, its
 * number being unknown, what is for every so many. Whatever a check that is asked uses is asked too; so is what a hold
 * point waits for when something is asked in its turn behind it, and a difference of two sizes that are both asked.
 */
final class AskedOracle {

    private final List<Facts> plan;
    private final Occasion occasion;
    private final Set<Integer> asked = new HashSet<>();

    AskedOracle(List<Facts> plan, Occasion occasion) {
        this.plan = plan;
        this.occasion = occasion;
        plan.stream().filter(this::byItself).forEach(step -> asked.add(step.number()));
        int before;
        do {
            before = asked.size();
            for (Facts step : plan) {
                boolean used = plan.stream()
                        .anyMatch(other -> isIn(other) && other.restsOn().contains(step.number()));
                boolean both = step.what() instanceof Facts.Difference && asked.containsAll(step.restsOn());
                if (used || both || isWaitedFor(step)) {
                    asked.add(step.number());
                }
            }
        } while (asked.size() > before);
    }

    boolean isIn(Facts step) {
        return asked.contains(step.number());
    }

    boolean isWhole() {
        return asked.size() == plan.size();
    }

    private boolean isWaitedFor(Facts step) {
        for (Facts hold : plan) {
            if (hold.hold().contains(step.number())
                    && plan.stream()
                            .anyMatch(behind -> behind.number() > hold.number() && behind.inOrder() && isIn(behind))) {
                return true;
            }
        }
        return false;
    }

    private boolean byItself(Facts step) {
        return switch (occasion.purpose()) {
            case NOT_STATED, FIRST_ARTICLE_FULL -> true;
            case FIRST_ARTICLE_PARTIAL -> !step.drawing() || touches(step);
            case MEASURED_AGAIN ->
                step.drawing()
                        && (occasion.affected().isEmpty() || occasion.affected().contains(step.number()));
            case FIRST_PIECE -> ofPiece(step, 1);
            case IN_PROCESS -> ofPiece(step, occasion.piece().orElseThrow());
            case LAST_PIECE ->
                step.when().isEmpty()
                        || step.when().contains("last")
                        || step.when().stream().anyMatch(word -> word.startsWith("every"));
        };
    }

    private boolean touches(Facts step) {
        return occasion.affected().contains(step.number())
                || step.restsOn().stream().anyMatch(occasion.affected()::contains);
    }

    private static boolean ofPiece(Facts step, int piece) {
        return step.when().isEmpty()
                || step.when().stream().anyMatch(word -> switch (word) {
                    case "first" -> piece == 1;
                    case "last" -> false;
                    default -> piece % Integer.parseInt(word.substring("every ".length())) == 0;
                });
    }
}
