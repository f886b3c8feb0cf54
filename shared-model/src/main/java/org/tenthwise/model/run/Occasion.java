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
