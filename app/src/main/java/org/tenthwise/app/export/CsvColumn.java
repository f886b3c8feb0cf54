package org.tenthwise.app.export;

import java.util.Arrays;
import org.tenthwise.model.words.Word;

/** The columns of the table, in their order. */
enum CsvColumn {
    PART,
    REVISION,
    SERIAL,
    LOT,
    MACHINE,
    RUN,
    PART_NAME,
    MATERIAL,
    DRAWING,
    /** Number and revision of the drawing, and the changes in force; the planning sheet the part is made by. */
    DRAWING_NUMBER,
    DRAWING_REVISION,
    CHANGES,
    ROUTE,
    OUTCOME,
    /**
     * What the run was begun for; which piece of the lot it is, and what earlier run it stands on, with the head of
     * that.
     */
    PURPOSE,
    PIECE,
    BASELINE,
    BASELINE_HEAD,
    PURPOSE_REASON,
    ORDER_NUMBER,
    /** Additional ones, said at the beginning of the run. */
    CHANGES_IN_FORCE,
    SIGNATURES,
    REMARK,
    /**
     * What the drawing writes is the requirement. Jaw 1 stands at an angle of the run-out; the others follow evenly, as
     * the angle rises.
     */
    NUMBER,
    CHARACTERISTIC,
    /** On the drawing; where the plan names no balloon, that of a characteristic is its number. */
    BALLOON,
    SHEET,
    DRAWING_ZONE,
    DESIGNATOR,
    /** How often it is there, and which of them this is where it is one. */
    COUNT,
    INSTANCE,
    REQUIREMENT,
    CHECK,
    CLASS,
    CLAMPING,
    HOLDING,
    JAW_1_AT,
    OPERATION,
    UNIT,
    LOWER_LIMIT,
    UPPER_LIMIT,
    LIMITS_OF,
    LIMITS_BY,
    GUARD_BAND,
    /** Expanded, with its coverage factor. */
    UNCERTAINTY,
    COVERAGE_FACTOR,
    UNCERTAINTY_OF,
    /** What the characteristic came to in this pass. */
    VERDICT,
    JUDGED_BY,
    MODIFIER,
    JUDGED,
    /** What may be where something measured adds to a limit: the zone of a position with its bonus. */
    ALLOWED,
    LEAST,
    GREATEST,
    DISTANCE,
    FROM_LIMIT,
    /** The cut the pass was begun for: what it was to take off, or might at the most, and took off. */
    CUT,
    CUT_ASKED,
    CUT_ASKED_AT_MOST,
    CUT_CAME_OFF,
    /** What was proposed after the pass, or why nothing was and the most that may come off the size. */
    OFFSET_CHANGE,
    SAFE_CUT,
    NO_CUT_FOR,
    /** How the change of the offset and what came off are counted: diameter, radius, or the size itself. */
    REGISTER,
    PASS,
    PASS_BEGUN_FOR,
    /**
     * {@code yes} for the pass the verdict on the characteristic rests on, {@code replaced} for one before it. A
     * reading that was struck out stands in such a pass and counts for nothing: {@link #STRUCK_OUT} says so.
     */
    PASS_COUNTS,
    ENTRY,
    PLACE,
    REPEAT,
    /** Where along the part a run-out was read, from the jaws in the unit of the limits. */
    SECTION,
    FROM_JAWS,
    /** As typed. */
    READING,
    READING_UNIT,
    /**
     * The master or the wires, the size on their certificate, what the gauge read on the master, and what wires make
     * the reading bigger by.
     */
    SET_ON,
    CERTIFIED,
    CERTIFIED_UNIT,
    /** The ends of a limit gauge by its certificate, as the plan has them, in the unit of the plan. */
    GO_SIZE,
    NOT_GO_SIZE,
    GAUGE_FORM,
    ZERO,
    ZERO_UNIT,
    OVER_WIRES,
    /** For temperature and for how the gauge touched, together; then the size with it. */
    CORRECTION,
    SIZE,
    /** What of the correction is for how the gauge touched the work. */
    CONTACT_CORRECTION,
    /** Of the reading by itself; {@code together} where the check judges several together. */
    PLACE_VERDICT,
    QUESTION,
    ANSWER,
    /**
     * Where a characteristic is proven elsewhere, and what the drawing or the order names of a material, a process or a
     * test.
     */
    WHERE,
    SPECIFICATION,
    FORM,
    CODE,
    SUPPLIER,
    /** A document in a row of its own, each of its figures in one as a reading of that instance. */
    DOCUMENT,
    DATED,
    SAYS,
    SAID_BY,
    /**
     * In a row of its own, behind the readings of its characteristic; for the whole run without a number, at the end.
     */
    DOUBT,
    NOTE,
    CUT_ON_THESE,
    /**
     * In the degrees named last of them, and what of the correction is for them; expansion in 1e-6 per such a degree.
     */
    PART_TEMPERATURE,
    GAUGE_TEMPERATURE,
    TEMPERATURE_CORRECTION,
    PART_EXPANSION,
    PART_EXPANSION_FROM,
    GAUGE_EXPANSION,
    GAUGE_EXPANSION_FROM,
    DEGREES,
    GAUGE,
    GAUGE_KIND,
    SENSE,
    /**
     * By what certificate the gauge of a reading, and what it was set on, were calibrated, the last day that holds, and
     * {@code yes} where it was over for either.
     */
    GAUGE_CERTIFICATE,
    GAUGE_DUE,
    SET_ON_CERTIFICATE,
    SET_ON_DUE,
    PAST_DUE,
    PERSON,
    TIME,
    STRUCK_OUT,
    STRUCK_OUT_BY,
    STRUCK_OUT_AT,
    TAKEN_AGAIN,
    /**
     * In the rows of the pass it was signed for while it is in force; in a row of its own, too, with who entered it and
     * when.
     */
    DISPOSITION,
    DISPOSITION_REASON,
    DISPOSITION_SIGNED_BY,
    DISPOSITION_NUMBER,
    DISPOSITION_LAPSED_WITH,
    /** {@code yes} where the characteristic was ever repaired, whatever was read since. */
    REPAIRED,
    PLAN_ISSUE,
    /**
     * Why and by whom the plan was issued, and what a partial check of parts made before takes in: {@code none} where
     * no characteristic, nothing where nobody said.
     */
    ISSUE_REASON,
    ISSUED_BY,
    APPROVED_BY,
    ISSUED_ON,
    AFFECTED,
    PLAN_SHA256,
    RUN_ENTRIES,
    LAST_ENTRY,
    RUN_HASH,
    TOOL;

    static String[] names() {
        return Arrays.stream(values()).map(CsvColumn::toString).toArray(String[]::new);
    }

    @Override
    public String toString() {
        return Word.of(this);
    }
}
