package org.tenthwise.model.plan;

/** A part number with its revision, as the drawing has them; neither is blank. */
public record PartId(String number, String revision) {

    public PartId {
        if (number.isBlank() || revision.isBlank()) {
            throw new IllegalArgumentException("A part has a number and a revision");
        }
    }
}
