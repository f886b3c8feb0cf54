package org.tenthwise.checklists.rules;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.SizeModifier;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.tolerance.Limits;

/**
 * What every size has that is read at places and set against limits: repeats, how they combine, cutting again, guard
 * band.
 */
final class SizeRules {

    private static final int MOST_READINGS_EACH = 20;
    private static final String READINGS_EACH = "readings_each";
    private static final String COMBINE = "combine";
    private static final String DRAWING_SAYS = "drawing_says";
    private static final String CUT_AGAIN = "cut_again";
    private static final String GUARD_BAND = "guard_band";
    private static final BigDecimal TWICE = new BigDecimal(2);

    private final TableKeys keys;
    private final Unit unit;

    SizeRules(TableKeys keys, Unit unit) {
        this.keys = keys;
        this.unit = unit;
    }

    int readingsEach() {
        int each = keys.ifAny(READINGS_EACH, keys::whole).orElse(1);
        if (each < 1 || each > MOST_READINGS_EACH) {
            keys.problem(READINGS_EACH, "plan.size.readings-each", MOST_READINGS_EACH, each);
        }
        return each;
    }

    /** The modifier of the drawing, where it has one. */
    Optional<SizeModifier> drawingSays() {
        return keys.ifAny(DRAWING_SAYS, key -> keys.word(key, List.of(SizeModifier.values()), SizeModifier::name));
    }

    /** Readings become one size only where the drawing means one; its modifier alone says how. */
    Combine combine(List<Place> places, int readingsEach, Optional<SizeModifier> drawingSays) {
        Optional<Combine> written = keys.ifAny(COMBINE, key -> keys.word(key, Combine.OF_SIZES, Combine::key));
        written.ifPresent(how -> drawingSays.ifPresentOrElse(
                says -> {
                    if (says.combine() != how) {
                        keys.problem(
                                COMBINE,
                                "plan.combine.other",
                                how.key(),
                                says.name(),
                                says.combine().key());
                    }
                },
                () -> {
                    if (how != Combine.EACH && !keys.has(DRAWING_SAYS)) {
                        keys.problemUnlessKept(
                                COMBINE,
                                "plan.combine.unsaid",
                                how.key(),
                                SizeModifier.of(how).name());
                    }
                }));
        return told(
                written.or(() -> drawingSays.map(SizeModifier::combine)).orElse(Combine.EACH), places, readingsEach);
    }

    /** The same of what no modifier of the drawing is of. */
    Combine combine(List<Place> places, int readingsEach) {
        return told(
                keys.ifAny(COMBINE, key -> keys.word(key, Combine.OF_SIZES, Combine::key))
                        .orElse(Combine.EACH),
                places,
                readingsEach);
    }

    private Combine told(Combine combine, List<Place> places, int readingsEach) {
        if (combine == Combine.RANGE && places.size() == 1 && readingsEach == 1) {
            keys.problem(keys.has(COMBINE) ? COMBINE : DRAWING_SAYS, "plan.combine.one-reading");
        }
        return combine;
    }

    /**
     * @param feature for a person: "bore"
     * @param stillCutBeyond limit beyond which there is metal left; absent where nobody can tell
     */
    boolean cutAgain(String feature, Optional<Limit> stillCutBeyond, Optional<Limits> limits, Combine combine) {
        Optional<CutAgain> written =
                keys.ifAny(CUT_AGAIN, key -> keys.word(key, List.of(CutAgain.values()), CutAgain::word));
        Optional<Limit> beyond = written.flatMap(CutAgain::beyond);
        beyond.ifPresent(limit -> {
            if (stillCutBeyond.isEmpty()) {
                keys.problem(CUT_AGAIN, "plan.cut-again.no-side", feature);
            } else if (limit != stillCutBeyond.get()) {
                keys.problem(
                        CUT_AGAIN,
                        "plan.cut-again.feature",
                        feature,
                        written.get().word());
            } else if (combine == Combine.RANGE) {
                keys.problem(CUT_AGAIN, "plan.cut-again.range");
            } else if (limits.isPresent() && limits.get().at(limit).isEmpty()) {
                keys.problem(CUT_AGAIN, "plan.cut-again.no-limit", written.get().word(), limit);
            }
        });
        return beyond.isPresent();
    }

    /** A figure, or the word that stands for the uncertainty the step names. */
    Written guardBand(Optional<Limits> limits, Optional<Uncertainty> uncertainty) {
        Written guardBand = keys.ifAny(
                        GUARD_BAND,
                        key -> keys.isText(key) && !keys.isAngle(key)
                                ? asUncertain(uncertainty)
                                : keys.figure(key, unit))
                .orElse(Written.of(BigDecimal.ZERO, unit));
        if (guardBand.figure().signum() < 0) {
            keys.problem(GUARD_BAND, "plan.guard-band.negative", guardBand);
        }
        limits.flatMap(Limits::width)
                .filter(width -> guardBand.figure().signum() > 0
                        && !guardBand.length().times(TWICE).isBelow(width))
                .ifPresent(width -> keys.problem(
                        GUARD_BAND, "plan.guard-band.too-wide", guardBand, Written.of(width.in(unit), unit)));
        return guardBand;
    }

    private Optional<Written> asUncertain(Optional<Uncertainty> uncertainty) {
        return keys.text(GUARD_BAND).flatMap(word -> {
            if (!word.equals(UncertaintyRules.KEY)) {
                keys.problem(GUARD_BAND, "plan.guard-band.word", word);
            } else if (!keys.has(UncertaintyRules.KEY)) {
                keys.problem(GUARD_BAND, "plan.guard-band.no-uncertainty");
            }
            return uncertainty.map(Uncertainty::expanded);
        });
    }
}
