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
        SEVERAL_ISSUES,
        /** Nobody said what issues of the plan since the baseline affect: the issues. */
        NOT_SAID
    }

    public ReportNote {
        values = List.copyOf(values);
    }
}
