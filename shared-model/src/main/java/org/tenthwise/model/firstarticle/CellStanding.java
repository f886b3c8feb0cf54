package org.tenthwise.model.firstarticle;

import org.tenthwise.model.record.AccountLine;
import org.tenthwise.model.verdict.VerdictKind;

/** How a result stands in a report. */
public enum CellStanding {
    /** As the drawing has it. */
    CONFORMS,
    /** Not as the drawing has it, or made fit by a repair, whatever was decided of it. */
    DOES_NOT_CONFORM,
    /** Neither shown to be in nor to be out. */
    UNPROVEN,
    /** Nothing shows yet how it is. */
    OPEN;

    static CellStanding of(VerdictKind verdict, AccountLine line) {
        return switch (verdict) {
            case PASS -> repaired(line) ? DOES_NOT_CONFORM : CONFORMS;
            case FAIL, CUT_AGAIN -> DOES_NOT_CONFORM;
            case UNPROVEN -> UNPROVEN;
            case OPEN -> OPEN;
        };
    }

    private static boolean repaired(AccountLine line) {
        return line.match(new AccountLine.Cases<Boolean>() {
            @Override
            public Boolean checked(AccountLine.Checked checked) {
                return checked.line().repaired();
            }

            @Override
            public Boolean unanswered(AccountLine.Unanswered unanswered) {
                return false;
            }

            @Override
            public Boolean notInThisRun(AccountLine.NotInThisRun left) {
                return false;
            }
        });
    }

    /** Whether it has a line of its own beside those that conform. */
    boolean standsAlone() {
        return this == DOES_NOT_CONFORM || this == UNPROVEN;
    }
}
