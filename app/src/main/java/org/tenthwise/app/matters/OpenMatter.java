package org.tenthwise.app.matters;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * Something that is open in a run, or of a gauge of the shop.
 *
 * @param run what it is open in; absent for what is of the shop
 * @param step number and name of the check it is about; absent for what is of the whole run
 * @param number of the document that goes with it; empty where there is none
 * @param by who signed, or who has the run in hand; empty for what is of the shop
 * @param since when it came to be so as far as the entries tell; absent for what is of the shop
 */
public record OpenMatter(
        Kind kind,
        Optional<OfRun> run,
        Optional<OfStep> step,
        String number,
        String by,
        Optional<OffsetDateTime> since) {

    /** What is open. */
    public enum Kind {
        /** A characteristic is out, and no document says what becomes of it. */
        NONCONFORMANCE,
        /** A characteristic is used though it is not as the drawing has it; it stays so. */
        CONCESSION,
        /** A concession, or a repair, that held until something it rests on was changed. */
        CONCESSION_LAPSED,
        /** Any other disposition that does not hold any more. */
        DISPOSITION_LAPSED,
        /** A run is open, or was closed with something not found out. */
        RUN_NOT_COMPLETE,
        /** A document that proves something is not there, or does not prove it. */
        DOCUMENT_TO_COME,
        /** What a gauge counts was found wrong, and nobody has told it since. */
        GAUGE_IN_DOUBT,
        /** A run is closed, and nobody accepted or refused it, or who did signed before something changed. */
        SIGNATURE_MISSING
    }

    /** Which run, in short. */
    public record OfRun(String id, String part, String revision, String serial, String lot, String machine) {}

    /** Which check, or which gauge. */
    public record OfStep(int number, String name) {}
}
