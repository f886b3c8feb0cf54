package org.tenthwise.checklists.format;

import java.math.BigDecimal;
import org.tenthwise.model.words.Message;

/** A value of a TOML text with the spot of its key, or its own spot where it stands in a list. */
public sealed interface RawValue
        permits RawValue.Text, RawValue.Number, RawValue.Truth, RawList, RawTable, RawValue.Odd {

    Spot spot();

    /** What it is, for a person: "text", "a number". */
    Message what();

    record Text(Spot spot, String text) implements RawValue {
        @Override
        public Message what() {
            return Message.of("toml.text");
        }
    }

    /** @param figure exactly as written: {@code 35.010} has three places */
    record Number(Spot spot, BigDecimal figure) implements RawValue {
        @Override
        public Message what() {
            return Message.of("toml.number", figure);
        }
    }

    record Truth(Spot spot, boolean truth) implements RawValue {
        @Override
        public Message what() {
            return Message.of("as-said", truth);
        }
    }

    /** Legal TOML with no use here: a date, a number with an exponent, underscores or another base, infinity. */
    record Odd(Spot spot, Message what) implements RawValue {}
}
