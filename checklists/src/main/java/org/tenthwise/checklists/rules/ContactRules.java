package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.checklists.format.RawTable;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Contact.ReadTo;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.OverWiresCheck;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/**
 * How a gauge touches what it measures: {@code grooves} of a diameter, {@code drill} and {@code read_to} of a depth, or
 * {@code wires_step} where that is the depth of a thread.
 */
final class ContactRules {

    private static final String GROOVES = "grooves";
    private static final String DRILL = "drill";
    private static final String DIAMETER = "diameter";
    private static final String POINT_ANGLE = "point_angle";
    private static final String READ_TO = "read_to";
    private static final String WIRES_STEP = "wires_step";
    /** A centre drill has 60°, no drill less; 180° is flat and has no point. */
    private static final BigDecimal SHARPEST = new BigDecimal("60");

    private static final BigDecimal FLAT = new BigDecimal("180");

    private final TableKeys keys;
    private final PlanSoFar soFar;
    private final Unit unit;

    private ContactRules(TableKeys keys, PlanSoFar soFar) {
        this.keys = keys;
        this.soFar = soFar;
        this.unit = soFar.unit();
    }

    /**
     * @param limits of the size; absent where they have problems, and where they are not limits of a size but of a
     *     range
     */
    static Contact read(TableKeys keys, Feature feature, PlanSoFar soFar, Optional<Limits> limits, Combine combine) {
        ContactRules rules = new ContactRules(keys, soFar);
        if (feature.equals(Feature.DIAMETER)) {
            return rules.grooves(limits.filter(any -> combine != Combine.RANGE)).orElse(Contact.SQUARE);
        }
        return feature.equals(Feature.DEPTH) ? rules.ofDepth() : Contact.SQUARE;
    }

    private Optional<Contact> grooves(Optional<Limits> limits) {
        return keys.ifAny(GROOVES, keys::table).flatMap(table -> grooves(keys.inside(GROOVES, table), limits));
    }

    private Optional<Contact> grooves(TableKeys grooves, Optional<Limits> limits) {
        Optional<Length> pitch = PitchRules.pitch(grooves, unit);
        int starts = PitchRules.starts(grooves);
        grooves.finish();
        Optional<Written> least = limits.flatMap(both -> both.lower().or(both::upper));
        least.filter(size ->
                        pitch.filter(between -> !size.length().isAbove(between)).isPresent())
                .ifPresent(size -> keys.problem(GROOVES, "plan.contact.no-root", size, shown(pitch.orElseThrow())));
        return grooves.built(() -> new Contact.InGrooves(pitch.orElseThrow(), starts));
    }

    private String shown(Length length) {
        return Written.of(length.in(unit), unit).toString();
    }

    /** Both are read, so that neither is unknown beside the other. */
    private Contact ofDepth() {
        Optional<Contact> thread = ofThread();
        return drilled().or(() -> thread).orElse(Contact.SQUARE);
    }

    private Optional<Contact> ofThread() {
        return keys.ifAny(WIRES_STEP, key -> soFar.earlier(keys, key, OverWiresCheck.KEY))
                .map(Contact.DepthOfThread::new);
    }

    private Optional<Contact> drilled() {
        Optional<ReadTo> readTo = keys.ifAny(READ_TO, key -> keys.word(key, List.of(ReadTo.values()), ReadTo::key));
        Optional<RawTable> table = keys.ifAny(DRILL, keys::table);
        if (keys.has(DRILL) && keys.has(WIRES_STEP)) {
            keys.problem(WIRES_STEP, "plan.contact.drilled-thread");
        }
        if (keys.has(DRILL) != keys.has(READ_TO)) {
            keys.problem(
                    keys.has(DRILL) ? DRILL : READ_TO,
                    keys.has(DRILL) ? "plan.contact.no-read-to" : "plan.contact.no-drill");
        }
        return table.flatMap(drill -> drill(keys.inside(DRILL, drill), readTo));
    }

    private Optional<Contact> drill(TableKeys drill, Optional<ReadTo> readTo) {
        Optional<Written> diameter = drill.size(DIAMETER, unit);
        Optional<BigDecimal> angle = drill.number(POINT_ANGLE);
        angle.filter(degrees -> degrees.compareTo(SHARPEST) < 0 || degrees.compareTo(FLAT) >= 0)
                .ifPresent(degrees -> drill.problem(POINT_ANGLE, "plan.contact.point-angle", SHARPEST, FLAT, degrees));
        drill.finish();
        return readTo.flatMap(
                to -> drill.built(() -> new Contact.DrilledHole(diameter.orElseThrow(), angle.orElseThrow(), to)));
    }
}
