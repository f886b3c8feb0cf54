package org.tenthwise.app.export.pdf;

import org.tenthwise.app.picture.Role;
import org.tenthwise.model.verdict.VerdictKind;

/** The colour of a verdict's word. */
final class VerdictRole {

    private VerdictRole() {}

    static Role of(VerdictKind standing) {
        return switch (standing) {
            case PASS -> Role.PASS;
            case FAIL -> Role.FAIL;
            case CUT_AGAIN -> Role.CUT;
            case UNPROVEN -> Role.UNPROVEN;
            case OPEN -> Role.INK2;
        };
    }
}
