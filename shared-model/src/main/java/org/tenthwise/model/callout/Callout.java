package org.tenthwise.model.callout;

import java.util.List;

/**
 * A callout, read.
 *
 * @param text as it is drawn
 * @param parts one or more, in their order
 */
public record Callout(String text, List<CalloutPart> parts) {

    public Callout {
        parts = List.copyOf(parts);
    }
}
