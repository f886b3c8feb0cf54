package org.tenthwise.model.plan;

import java.util.Optional;
import org.tenthwise.model.words.Refused;

/**
 * For which pieces of a lot a step is asked. At least one of the three is said.
 *
 * @param first for the first piece
 * @param every for each piece whose number in the lot is a multiple of this, 1 or more; absent for none in between
 * @param last for the last piece
 */
public record WhenAsked(boolean first, Optional<Integer> every, boolean last) {

    public WhenAsked {
        if (!first && every.isEmpty() && !last || every.filter(n -> n < 1).isPresent()) {
            throw new Refused("model.when.said");
        }
    }

    /** Whether it is asked of a piece by its number in the lot, from 1. */
    public boolean asksPiece(int piece) {
        return first && piece == 1 || every.filter(n -> piece % n == 0).isPresent();
    }

    /** Whether it is asked of the last piece, whose number in the lot nobody says: it may be one of each so many. */
    public boolean asksLast() {
        return last || every.isPresent();
    }
}
