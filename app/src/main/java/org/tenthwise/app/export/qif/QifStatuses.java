package org.tenthwise.app.export.qif;

import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.verdict.VerdictKind;

/** How verdicts and outcomes are called in the words of the standard. What is not shown to be right is never a pass. */
final class QifStatuses {

    private static final String PASS = "PASS";
    private static final String FAIL = "FAIL";

    private final Sheet sheet;

    QifStatuses(Sheet sheet) {
        this.sheet = sheet;
    }

    /** Of a characteristic that nothing answers. */
    static XmlElement open() {
        return of("NOT_ANALYZED");
    }

    /**
     * Of an item of {@code line}. What is used by concession stays out of its limits; what could still have been cut is
     * out once the run is closed; and in a run with entries that a newer release wrote, nobody knows what passed.
     */
    XmlElement of(Line line, VerdictKind standing) {
        return of(
                switch (standing) {
                    case PASS -> sheet.holdsWhatIsNotKnown() ? "INDETERMINATE" : PASS;
                    case FAIL -> FAIL;
                    case CUT_AGAIN -> line.conceded() || sheet.isOut(line) ? FAIL : "REWORK";
                    case UNPROVEN -> "INDETERMINATE";
                    case OPEN -> "NOT_ANALYZED";
                });
    }

    private static XmlElement of(String status) {
        return new XmlElement("Status").add("CharacteristicStatusEnum", status);
    }

    /**
     * Of the part, or of the inspection. Where anybody signed against it, it is no pass whatever was measured; where it
     * conforms by concession, it does not as it is drawn.
     *
     * @param name of the element
     */
    XmlElement ofAll(String name) {
        return new XmlElement(name).add("InspectionStatusEnum", all());
    }

    private String all() {
        Outcome outcome = sheet.outcome();
        return switch (outcome) {
            case CONFORMS -> sheet.conformsUncontested() ? PASS : "UNKNOWN";
            case CONFORMS_WITH_CONCESSIONS, DOES_NOT_CONFORM -> FAIL;
            case ASKED_CONFORMS, NOT_COMPLETE, PUT_AWAY -> "UNKNOWN";
        };
    }
}
