package org.tenthwise.app.text;

import java.util.Optional;
import org.tenthwise.model.gauge.Uncertainty;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.words.Words;

/**
 * Whether a pass is proven by the uncertainty that the plan names: it is where the size lies inside its limits by that
 * at least (ISO 14253-1, conformity is shown only further inside than the uncertainty), and by what warmth may have
 * moved it besides. Only of a plain size of a place, and never while anything else speaks against the readings.
 */
final class Proof {

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
        return finding.verdict().margin().flatMap(margin -> said(margin, uncertainty.get(), uncorrected(finding)));
    }

    /** Nothing of what lies further inside than the uncertainty, and not by warmth as well. */
    private Optional<Weighed> said(Verdict.Margin margin, Uncertainty uncertainty, Length uncorrected) {
        Length expanded = uncertainty.expanded().length();
        boolean nearer = !margin.inside() || margin.distance().isBelow(expanded);
        boolean proven = !nearer && !margin.distance().isBelow(expanded.plus(uncorrected));
        return nearer || proven
                ? Optional.of(new Weighed(
                        proven ? Weighed.Weight.PROOF : Weighed.Weight.NEARER,
                        words.say(proven ? "proof.proven" : "proof.nearer", Figures.withUnit(uncertainty.expanded()))))
                : Optional.empty();
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
