package org.tenthwise.app.history;

import java.time.OffsetDateTime;

/**
 * Something that is open in a run, or of a gauge.
 *
 * @param check number of the step it is about; 0 for what is of the whole run or of a gauge
 * @param about name of that step, or mark of the gauge; empty for what is of the whole run
 * @param number of the document that goes with it; of a gauge past its due day, that day; empty where there is none
 * @param by who signed, who has the run in hand, or who found the gauge wrong
 * @param since when it came to be so, as far as the entries tell
 */
public record Matter(MatterKind kind, int check, String about, String number, String by, OffsetDateTime since) {}
