package org.tenthwise.app.batch;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;

/** What the one who asks calls a line by; goes back just as it came. */
sealed interface Id {

    Id NONE = new None();

    void write(JsonGenerator to) throws IOException;

    record Text(String text) implements Id {

        @Override
        public void write(JsonGenerator to) throws IOException {
            to.writeString(text);
        }
    }

    /** @param digits as they were typed */
    record Number(String digits) implements Id {

        @Override
        public void write(JsonGenerator to) throws IOException {
            to.writeNumber(digits);
        }
    }

    /** Nothing was said, or it could not be read. */
    record None() implements Id {

        @Override
        public void write(JsonGenerator to) throws IOException {
            to.writeNull();
        }
    }
}
