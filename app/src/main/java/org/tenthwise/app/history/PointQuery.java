package org.tenthwise.app.history;

import java.time.LocalDate;
import java.util.Optional;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * Which characteristics of which runs are looked for. What is absent makes no difference; capitals tell no two apart
 * but in marks of gauges.
 *
 * @param part part number
 * @param lot material lot
 * @param person who read or answered it last
 * @param gauge mark of a gauge it was read or tried with
 * @param from first day it was found, as it was where it happened
 * @param to last day
 * @param verdict that it has now
 * @param kind what its run was begun for
 * @param characteristic number of the step, or its name
 * @param balloon number on the drawing
 * @param designator on the drawing
 */
public record PointQuery(
        Optional<String> part,
        Optional<String> serial,
        Optional<String> lot,
        Optional<String> machine,
        Optional<String> person,
        Optional<String> gauge,
        Optional<LocalDate> from,
        Optional<LocalDate> to,
        Optional<VerdictKind> verdict,
        Optional<Purpose> kind,
        Optional<String> characteristic,
        Optional<String> balloon,
        Optional<String> designator) {

    /** Everything there is. */
    public static final PointQuery ALL = new PointQuery(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    /** Everything of a part number. */
    public static PointQuery ofPart(String part) {
        return new PointQuery(
                Optional.of(part),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** The same, of one balloon of the drawing. */
    public PointQuery at(String balloonNumber) {
        return new PointQuery(
                part,
                serial,
                lot,
                machine,
                person,
                gauge,
                from,
                to,
                verdict,
                kind,
                characteristic,
                Optional.of(balloonNumber),
                designator);
    }

    /** The same, of one step of the plan, unless a characteristic is looked for already. */
    public PointQuery atStep(int step) {
        return new PointQuery(
                part,
                serial,
                lot,
                machine,
                person,
                gauge,
                from,
                to,
                verdict,
                kind,
                characteristic.or(() -> Optional.of(String.valueOf(step))),
                balloon,
                designator);
    }

    /** Whether parts are picked by what they came to: those show nothing of the others. */
    public boolean picksByResult() {
        return verdict.isPresent();
    }
}
