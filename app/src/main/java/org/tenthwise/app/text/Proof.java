package org.tenthwise.app.text;

import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.words.Words;

/**
 * Whether a pass is proven by the uncertainty that the plan names: it is where the size lies inside its limits by that
 * at least (ISO 14253-1, conformity is shown only further inside than the uncertainty), and by what warmth may have
 * moved it besides. Where warmth is taken off, how sure its correction is belongs to the uncertainty (JCGM 100:2008,
 * 5.1.2); where it is not, all it can be is added (F.2.4.5). Only of a plain size of a place, and never while anything
 * else speaks against the readings.
 */
final class Proof {

    private static final MathContext TWO_FIGURES_UP = new MathContext(2, RoundingMode.UP);

    private final Words words;

    Proof(Words words) {
        this.words = words;
    }

    /** Absent where nothing passed, or the plan names no uncertainty of such a size. */
    Optional<Weighed> of(Finding finding) {
        Optional<Uncertainty> uncertainty = ofAPlace(finding.step()).flatMap(Check.Means::uncertainty);
        if (!finding.verdict().passed() || uncertainty.isEmpty() || isWarm(finding)) {
            return Optional.empty();
        }
        Length expanded = uncertainty.get().expandedWith(ofCorrection(finding));
        return finding.verdict()
                .margin()
                .flatMap(margin -> isProven(margin, expanded, uncorrected(finding)))
                .map(proven -> new Weighed(
                        proven ? Weighed.Weight.PROOF : Weighed.Weight.NEARER,
                        said(proven, uncertainty.get(), expanded)));
    }

    /** Absent of what lies further inside than the uncertainty, and not by warmth as well. */
    private static Optional<Boolean> isProven(Verdict.Margin margin, Length expanded, Length uncorrected) {
        boolean nearer = !margin.inside() || margin.distance().isBelow(expanded);
        boolean proven = !nearer && !margin.distance().isBelow(expanded.plus(uncorrected));
        return nearer || proven ? Optional.of(proven) : Optional.empty();
    }

    /** With that of a correction in it to two figures, rounded up (JCGM 100:2008, 7.2.6). */
    private String said(boolean proven, Uncertainty uncertainty, Length expanded) {
        Written alone = uncertainty.expanded();
        boolean larger = expanded.isAbove(alone.length());
        Written said = larger ? Written.of(expanded.in(alone.unit()).round(TWO_FIGURES_UP), alone.unit()) : alone;
        String key = proven ? "proof.proven" : "proof.nearer";
        return words.say(larger ? key + ".corrected" : key, Figures.withUnit(said));
    }

    /** How sure the correction for warmth is; zero where nothing is taken off. */
    private static Length ofCorrection(Finding finding) {
        return finding.warmth()
                .flatMap(warmth -> finding.value().map(warmth::correctionUncertainty))
                .orElse(Length.ZERO);
    }

    /** The most that warmth may have moved the size by and nobody takes off. */
    private static Length uncorrected(Finding finding) {
        return finding.warmth()
                .filter(warmth -> !warmth.needed())
                .map(warmth -> warmth.worst().worst())
                .orElse(Length.ZERO);
    }

    private static Optional<Check.Means> ofAPlace(Step step) {
        return step.check()
                .asSize()
                .filter(size -> size.combine() != Combine.RANGE && size.combine() != Combine.MEAN)
                .flatMap(size -> step.check().means());
    }

    /** Whether warmth may have moved the size by something that is not taken off. */
    private static boolean isWarm(Finding finding) {
        return finding.warmth()
                .filter(warmth -> warmth.needed() ? warmth.missing() > 0 : warmth.matters())
                .isPresent();
    }
}
