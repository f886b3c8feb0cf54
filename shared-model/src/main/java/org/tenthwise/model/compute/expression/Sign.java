package org.tenthwise.model.compute.expression;

import java.util.Arrays;
import java.util.Optional;

/** What stands between two parts of an expression. */
enum Sign {
    PLUS("+"),
    MINUS("−-–"),
    TIMES("×*·"),
    OVER("÷/");

    private final String typed;

    /** @param typed all characters it is typed as, the one it is printed as first */
    Sign(String typed) {
        this.typed = typed;
    }

    static Optional<Sign> of(char typed) {
        return Arrays.stream(values())
                .filter(sign -> sign.typed.indexOf(typed) >= 0)
                .findFirst();
    }

    boolean isOfSum() {
        return this == PLUS || this == MINUS;
    }

    /** As it is printed. */
    String text() {
        return typed.substring(0, 1);
    }
}
