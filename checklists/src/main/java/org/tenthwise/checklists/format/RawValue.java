package org.tenthwise.checklists.format;

import java.math.BigDecimal;

/** A value of a TOML text with the spot of its key, or its own spot where it stands in a list. */
public sealed interface RawValue
        permits RawValue.Text, RawValue.Number, RawValue.Truth, RawList, RawTable, RawValue.Odd {

    Spot spot();

    /** What it is, for a person: "text", "a number". */
    String what();

    record Text(Spot spot, String text) implements RawValue {
        @Override
        public String what() {
            return "text";
        }
    }

    /** @param figure exactly as written: {@code 35.010} has three places */
    record Number(Spot spot, BigDecimal figure) implements RawValue {
        @Override
        public String what() {
            return "the number " + figure.toPlainString();
        }
    }

    record Truth(Spot spot, boolean truth) implements RawValue {
        @Override
        public String what() {
            return String.valueOf(truth);
        }
    }

    /** Legal TOML with no use here: a date, a number with an exponent, underscores or another base, infinity. */
    record Odd(Spot spot, String what) implements RawValue {}
}
