package org.tenthwise.model.run;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.words.Refused;

/**
 * What a run was begun for, and what was said of that at its beginning.
 *
 * @param baseline the run it stands on; of a partial first article, and of what is measured again
 * @param reason why; always of a first article, else empty where nobody said
 * @param piece which piece of the lot it is, from 1; of a piece in process alone
 * @param affected numbers of the steps that a partial first article is about, at least one; of what is measured again
 *     those the earlier run had, where it had not all; else empty
 * @param order number of the order; empty where none was given
 * @param changes additional changes in force that the drawing does not have yet, by their numbers
 */
public record Occasion(
        Purpose purpose,
        Optional<Baseline> baseline,
        String reason,
        Optional<Integer> piece,
        List<Integer> affected,
        String order,
        List<String> changes) {

    /** Nobody said what it is for. */
    public static final Occasion NOT_STATED = of(Purpose.NOT_STATED);

    public Occasion {
        affected = affected.stream().distinct().sorted().toList();
        changes = List.copyOf(changes);
        require(baseline.isPresent() == purpose.hasBaseline(), "model.occasion.baseline");
        require(!purpose.isFirstArticle() || !reason.isBlank(), "model.occasion.reason");
        require(piece.isPresent() == (purpose == Purpose.IN_PROCESS), "model.occasion.piece");
        require(piece.filter(number -> number < 1).isEmpty(), "model.occasion.piece-from");
        require(!affected.isEmpty() || purpose != Purpose.FIRST_ARTICLE_PARTIAL, "model.occasion.affected");
        require(affected.isEmpty() || purpose.hasBaseline(), "model.occasion.affected");
        require(changes.stream().noneMatch(String::isBlank), "model.occasion.changes");
    }

    /** Of a purpose that needs nothing else said. */
    public static Occasion of(Purpose purpose) {
        return new Occasion(purpose, Optional.empty(), "", Optional.empty(), List.of(), "", List.of());
    }

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

    /** All of it. */
    public static Occasion measuredAgain(Baseline baseline) {
        return measuredAgain(baseline, List.of());
    }

    /** @param had numbers of the steps that the earlier run had; empty where it had all */
    public static Occasion measuredAgain(Baseline baseline, List<Integer> had) {
        return new Occasion(Purpose.MEASURED_AGAIN, Optional.of(baseline), "", Optional.empty(), had, "", List.of());
    }

    /** The same under an order, with changes in force. */
    public Occasion under(String number, List<String> changesInForce) {
        return new Occasion(purpose, baseline, reason, piece, affected, number, changesInForce);
    }

    /** Whether nothing was said of it at all, as in runs of older releases. */
    public boolean saysNothing() {
        return equals(NOT_STATED);
    }

    private static void require(boolean so, String otherwise) {
        if (!so) {
            throw new Refused(otherwise);
        }
    }
}
