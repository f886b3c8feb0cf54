package org.tenthwise.model.plan;

import org.tenthwise.model.words.Word;

/** What a paper is asked for. */
public enum ProofOf {
    /** Something of the order of work: it is asked for at its place, as every check is. */
    DOCUMENT,
    /** A characteristic of the drawing that is proven somewhere else: by a coordinate machine, by a supplier. */
    ELSEWHERE,
    /** The material the part is made of. */
    MATERIAL,
    /** A special process the drawing names: heat treatment, crack test, coating. */
    PROCESS,
    /** A functional test. */
    TEST;

    /** The word plans and files for programs have for it. */
    public String key() {
        return Word.of(this);
    }

    /**
     * Whether it stands in the order of work: what does not is never asked in its turn, holds nothing and is not held.
     */
    public boolean isInOrder() {
        return this == DOCUMENT;
    }

    /** Whether it is no characteristic with a place on the drawing, but what the part is made of or was put through. */
    public boolean isOfProduct() {
        return this == MATERIAL || this == PROCESS || this == TEST;
    }
}
