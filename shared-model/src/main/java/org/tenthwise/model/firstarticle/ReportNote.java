package org.tenthwise.model.firstarticle;

import java.util.List;

/**
 * What whoever reads a report should know besides, though it is complete with it.
 *
 * @param values what fills its sentence
 */
public record ReportNote(Of of, List<String> values) {

    /** What a note is of. */
    public enum Of {
        /** Two years and more lie between the last entry before and the first run: both days. */
        LAPSE,
        /** The runs were made by several issues of the plan, which ask for the same: the issues. */
        SEVERAL_ISSUES
    }

    public ReportNote {
        values = List.copyOf(values);
    }
}
