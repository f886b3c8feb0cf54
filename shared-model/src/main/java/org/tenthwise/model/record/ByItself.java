package org.tenthwise.model.record;

import java.util.Optional;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/** One reading judged by itself, where every reading must be inside. */
final class ByItself {

    private ByItself() {}

    /**
     * @param open what the reading stands for is not known yet
     * @param untrusted the reading proves nothing
     * @param farOff a figure of the pass cannot well be, so that nothing is shown to be in or still to cut
     */
    static Optional<Verdict> of(
            CheckOfDimension asked, Measured measured, boolean open, boolean untrusted, boolean farOff) {
        if (asked.combine() != Combine.EACH) {
            return Optional.empty();
        }
        if (open || untrusted) {
            return Optional.of(Verdict.plain(open ? VerdictKind.OPEN : VerdictKind.UNPROVEN));
        }
        Verdict verdict = Combined.judge(asked).of(measured.value());
        boolean shown = verdict.passed() || verdict.standing() == VerdictKind.CUT_AGAIN;
        return Optional.of(farOff && shown ? Verdict.plain(VerdictKind.UNPROVEN) : verdict);
    }
}
