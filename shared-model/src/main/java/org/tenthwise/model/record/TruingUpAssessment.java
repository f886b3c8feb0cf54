package org.tenthwise.model.record;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.compute.roundness.Indicated;
import org.tenthwise.model.compute.roundness.TruingUp;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.verdict.VerdictKind;

/** What to do about a run-out that is over its limit, as far as its readings by angle tell. */
final class TruingUpAssessment {

    private TruingUpAssessment() {}

    static Optional<TruingUp> of(RunOutFinding finding) {
        if (finding.verdict().standing() != VerdictKind.FAIL || Plausible.spoils(finding)) {
            return Optional.empty();
        }
        Optional<Indicated> far =
                finding.sections().stream().skip(1).findFirst().flatMap(TruingUpAssessment::indicated);
        boolean nearAlone = far.isPresent() || finding.isOver(finding.near());
        return indicated(finding.near())
                .filter(near -> nearAlone)
                .map(near -> TruingUp.of(
                        finding.check().holding(),
                        finding.check().firstJaw(),
                        finding.check().limit().length(),
                        lastPlace(finding.sections().stream()
                                .map(AtSection::byAngle)
                                .flatMap(List::stream)),
                        near,
                        far))
                .filter(advice -> finding.stillToRead().isEmpty() || isSettled(advice));
    }

    /** Whether no further reading makes it move anything. */
    private static boolean isSettled(TruingUp advice) {
        return advice.state() == TruingUp.Case.FORM || advice.state() == TruingUp.Case.CONTRADICTION;
    }

    private static Optional<Indicated> indicated(AtSection at) {
        return at.fit()
                .map(fit -> new Indicated(
                        at.pointsMovement().orElseThrow(),
                        fit,
                        at.sweptMovement(),
                        lastPlace(at.byAngle().stream()).plus(lastPlace(at.swept().stream()))));
    }

    /**
     * The finest that any of them was written with; zeros at the end are often left away, and a bare zero tells nothing
     * of the indicator.
     */
    private static Length lastPlace(Stream<Measured> read) {
        return read.map(measured -> measured.reading().typed())
                .filter(typed -> typed.places() > 0)
                .map(TruingUpAssessment::lastPlace)
                .min(Comparator.naturalOrder())
                .orElse(Length.ZERO);
    }

    private static Length lastPlace(Written typed) {
        return Length.of(BigDecimal.ONE.movePointLeft(typed.places()), typed.unit());
    }
}
