package org.tenthwise.model.callout;

import java.util.Optional;
import org.tenthwise.model.words.Refused;

/**
 * What stands behind a size and changes no figure of it: through, count, typical, equally spaced, envelope, free state,
 * designators. Also whether the size is for reference or basic.
 */
final class Tail {

    private final Tokens row;
    private Optional<Integer> count = Optional.empty();
    private boolean typical;
    private boolean reference;
    private boolean basic;

    Tail(Tokens row) {
        this.row = row;
    }

    /** Takes all there is. */
    void read() {
        while (one()) {
            // each takes what it knows
        }
    }

    Optional<Integer> count() {
        return count;
    }

    boolean isTypical() {
        return typical;
    }

    /** Whether the size behind which it was read is for information, or exact; asked once, it is forgotten. */
    boolean takeReference() {
        boolean taken = reference;
        reference = false;
        return taken;
    }

    boolean takeBasic() {
        boolean taken = basic;
        basic = false;
        return taken;
    }

    private boolean one() {
        Optional<Integer> behind = CalloutCount.behind(row);
        if (behind.isPresent()) {
            if (count.isPresent()) {
                throw new Refused("model.callout.two-counts");
            }
            count = behind;
            return true;
        }
        return word() || sign();
    }

    private boolean word() {
        if (row.accept("TYP", "TYPICAL").isPresent()) {
            typical = true;
            return true;
        }
        if (row.accept("REF", "REFERENCE").isPresent()) {
            reference = true;
            return true;
        }
        if (row.accept("BSC", "BASIC", "TED").isPresent()) {
            basic = true;
            return true;
        }
        if (row.accept(Symbols.THROUGH).isPresent()) {
            row.accept("ALL");
            return true;
        }
        boolean spaced = row.peek().isWord("EQ", "EQUALLY") && row.peek(1).isWord("SP", "SPACED");
        if (spaced) {
            row.skip(2);
        }
        return spaced || row.accept("EQS").isPresent();
    }

    private boolean sign() {
        if (row.accept('Ⓔ') || row.accept('Ⓕ')) {
            return true;
        }
        boolean letter = row.peek().is('(')
                && row.peek(1).isWord("E", "F", "REF", "TYP")
                && row.peek(2).is(')');
        if (letter) {
            reference |= row.peek(1).isWord("REF");
            typical |= row.peek(1).isWord("TYP");
            row.skip(3);
            return true;
        }
        boolean designator = (row.peek().is('<') && row.peek(2).is('>')
                        || row.peek().is('⟨') && row.peek(2).is('⟩'))
                && row.peek(1).isWord();
        if (designator) {
            row.skip(3);
        }
        return designator;
    }
}
