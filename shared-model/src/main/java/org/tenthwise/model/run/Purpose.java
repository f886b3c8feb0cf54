package org.tenthwise.model.run;

/** What a run was begun for. */
public enum Purpose {
    /** Nobody said; every check is asked, and nothing is claimed. Runs of older releases have it. */
    NOT_STATED,
    /** Every characteristic, of the first piece made this way. */
    FIRST_ARTICLE_FULL,
    /** What a change affects, on the ground of an earlier run that was whole. */
    FIRST_ARTICLE_PARTIAL,
    /** The first piece of a lot or of a set-up. */
    FIRST_PIECE,
    /** A piece on the way, by its number in the lot. */
    IN_PROCESS,
    /** The last piece of a lot or of a set-up. */
    LAST_PIECE,
    /** A piece that was measured in an earlier run. */
    MEASURED_AGAIN;

    /** Whether it is a first article, which is never begun without a reason. */
    public boolean isFirstArticle() {
        return this == FIRST_ARTICLE_FULL || this == FIRST_ARTICLE_PARTIAL;
    }

    /** Whether it stands on an earlier run. */
    public boolean hasBaseline() {
        return this == FIRST_ARTICLE_PARTIAL || this == MEASURED_AGAIN;
    }

    /**
     * Whether an accepted run of it can be what later runs of the part number are compared with: a piece in process and
     * a part of a first article speak for what they ask alone.
     */
    public boolean canBeLookedBackTo() {
        return this != IN_PROCESS && this != FIRST_ARTICLE_PARTIAL;
    }

    /** Whether a run of it speaks for the part even where its plan has checks that it does not ask. */
    public boolean speaksForThePart() {
        return this == FIRST_ARTICLE_FULL || this == FIRST_PIECE;
    }
}
