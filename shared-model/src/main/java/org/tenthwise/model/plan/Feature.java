package org.tenthwise.model.plan;

import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.words.Word;

/** What kind of size a plain measurement is of, and so on which side a wrong one can still be cut. */
public enum Feature {
    BORE(Limit.LOWER),
    WIDTH(Limit.LOWER),
    DIAMETER(Limit.UPPER),
    DEPTH(Limit.LOWER);

    private final Limit stillCutBeyond;

    Feature(Limit stillCutBeyond) {
        this.stillCutBeyond = stillCutBeyond;
    }

    /** How plan files name it. */
    public String key() {
        return Word.of(this);
    }

    /** Whether it goes round the axis, and is cut by what the register counts across it. */
    public boolean isRound() {
        return this == BORE || this == DIAMETER;
    }

    /** How deep the tool goes in for what comes off the size: half of it on two sides, all of it on a floor. */
    public Length depthOfCut(Length comesOff) {
        return this == DEPTH ? comesOff : comesOff.half();
    }

    /** Whether what comes off the size is a shallower cut than the tool can take; never where no least is known. */
    public boolean isTooLittle(Length comesOff, Optional<Length> leastCut) {
        return leastCut.filter(depthOfCut(comesOff)::isBelow).isPresent();
    }

    /** The limit beyond which there is metal left to take off: lower for a bore, upper for an outside diameter. */
    public Limit stillCutBeyond() {
        return stillCutBeyond;
    }
}
